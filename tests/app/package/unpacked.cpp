// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/package/unpacked.hpp"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "app/package/zip_reader.hpp"
#include "app/package/zip_writer.hpp"
#include "core/package/bag.hpp"
#include "core/package/signature_line.hpp"

using namespace Qt::StringLiterals;

QByteArray contentOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

Unpacked Unpacked::of(const QString &package)
{
    const auto zip = package::ZipReader::open(package);
    if (!zip)
        qFatal("%s", qPrintable(zip.error().message));
    Unpacked files;
    for (const auto &entry : (*zip)->entries()) {
        files.m_folder = entry.name.section(u'/', 0, 0);
        const QString path = entry.name.mid(files.m_folder.size() + 1);
        files.m_order << path;
        files.m_files[path] = (*zip)->bytes(entry, entry.size).value();
    }
    return files;
}

QStringList Unpacked::names() const
{
    QStringList names;
    for (const QString &path : m_order)
        names << m_folder + u'/' + path;
    return names;
}

QByteArray Unpacked::bytes(const QString &name) const { return m_files.at(name.mid(m_folder.size() + 1)); }

void Unpacked::put(const QString &path, const QByteArray &bytes)
{
    if (!m_files.contains(path))
        m_order << path;
    m_files[path] = bytes;
}

void Unpacked::replace(const QString &path, const QByteArray &from, const QByteArray &to)
{
    QByteArray &bytes = m_files.at(path);
    const qsizetype at = bytes.indexOf(from);
    if (at < 0)
        qFatal("%s does not stand in %s", from.constData(), qPrintable(path));
    bytes.replace(at, from.size(), to);
}

void Unpacked::append(const QString &path, const QByteArray &bytes) { m_files.at(path) += bytes; }

void Unpacked::removeAll(const QString &start)
{
    for (const QString &path : QStringList(m_order)) {
        if (!path.startsWith(start))
            continue;
        m_order.removeAll(path);
        m_files.erase(path);
    }
}

void Unpacked::dropLastLine(const QString &path)
{
    QByteArray &bytes = m_files.at(path);
    bytes.truncate(bytes.lastIndexOf('\n', bytes.size() - 2) + 1);
}

void Unpacked::doubleLine(const QString &ledger, int line)
{
    for (const QString &path : {ledger + u".entries.jsonl"_s, ledger + u".signatures.jsonl"_s}) {
        QList<QByteArray> lines = m_files.at(path).split('\n');
        lines.insert(line, lines.at(line));
        m_files[path] = lines.join('\n');
    }
}

void Unpacked::swapAttachments()
{
    QStringList attachments = m_order.filter(u"data/attachments/"_s);
    if (attachments.size() < 2)
        qFatal("there are no two attachments to swap");
    std::swap(m_files.at(attachments[0]), m_files.at(attachments[1]));
}

void Unpacked::rehash(const QString &ledger)
{
    const QList<QByteArray> entries = m_files.at(ledger + u".entries.jsonl"_s).split('\n');
    const QList<QByteArray> signatures = m_files.at(ledger + u".signatures.jsonl"_s).split('\n');
    QByteArray text;
    for (qsizetype i = 0; i + 1 < entries.size(); ++i) {
        auto line = core::parseSignatureLine(signatures.at(i)).value();
        line.hash = core::Digest::of(entries.at(i));
        text += core::signatureLine(line) + '\n';
    }
    m_files[ledger + u".signatures.jsonl"_s] = text;
}

void Unpacked::repair()
{
    std::vector<core::bag::Listed> payload;
    qsizetype size = 0;
    for (const auto &[path, bytes] : m_files) {
        if (!path.startsWith(u"data/"_s))
            continue;
        payload.push_back({path, core::Digest::of(bytes)});
        size += bytes.size();
    }
    auto labels = core::bag::parseInfo(m_files.at(u"bag-info.txt"_s), {}).value();
    for (core::bag::Label &label : labels) {
        if (label.first == u"Payload-Oxum")
            label.second = u"%1.%2"_s.arg(size).arg(payload.size());
    }
    put(u"bag-info.txt"_s, core::bag::info(labels));
    put(u"manifest-sha256.txt"_s, core::bag::manifest(payload));
    std::vector<core::bag::Listed> tags;
    for (const QString &name : {u"bagit.txt"_s, u"bag-info.txt"_s, u"manifest-sha256.txt"_s})
        tags.push_back({name, core::Digest::of(m_files.at(name))});
    put(u"tagmanifest-sha256.txt"_s, core::bag::manifest(tags));
}

bool Unpacked::pack(const QString &path) const
{
    auto zip = package::ZipWriter::create(path);
    if (!zip)
        return false;
    for (const QString &name : m_order) {
        const bool isStored = name.startsWith(u"data/attachments/"_s) || name.endsWith(u".pdf"_s);
        if (!zip->addBytes(m_folder + u'/' + name, m_files.at(name), isStored ? package::Packing::Stored : package::Packing::Deflated))
            return false;
    }
    return zip->finish({}).has_value();
}

bool Unpacked::writeTo(const QString &folder) const
{
    for (const auto &[path, bytes] : m_files) {
        const QString name = folder + u'/' + m_folder + u'/' + path;
        QFile file(name);
        if (!QDir().mkpath(QFileInfo(name).path()) || !file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size())
            return false;
    }
    return true;
}
