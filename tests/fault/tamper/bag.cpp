// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/tamper/bag.hpp"

#include <QFile>
#include <QTemporaryDir>

#include <algorithm>

#include "app/package/contents.hpp"
#include "app/package/zip_reader.hpp"

namespace battery {

namespace {

using namespace Qt::StringLiterals;

const QString payload = u"data/"_s;

core::bag::Listed listedAs(const Bag::File &file) { return {file.path, core::Digest::of(file.bytes)}; }

} // namespace

Bag Bag::of(const QString &package)
{
    const auto zip = package::ZipReader::open(package);
    if (!zip)
        qFatal("the package cannot be read");
    Bag bag;
    for (const package::ZipReader::Entry &entry : (*zip)->entries()) {
        const auto bytes = (*zip)->bytes(entry, entry.size);
        bag.folder = entry.name.section(u'/', 0, 0);
        const QString path = entry.name.section(u'/', 1);
        const bool isStored = path.startsWith(package::names::attachments) || path == package::names::pdf;
        bag.files.push_back({path, *bytes, isStored ? package::Packing::Stored : package::Packing::Deflated});
    }
    return bag;
}

QByteArray &Bag::bytes(const QString &path)
{
    const auto at = std::find_if(files.begin(), files.end(), [&](const File &file) { return file.path == path; });
    if (at == files.end())
        qFatal("no %s in the bag", qPrintable(path));
    return at->bytes;
}

const QByteArray &Bag::bytes(const QString &path) const { return const_cast<Bag *>(this)->bytes(path); }

void Bag::remove(const QString &path)
{
    files.erase(std::remove_if(files.begin(), files.end(), [&](const File &file) { return file.path == path; }), files.end());
}

void Bag::rename(const QString &from, const QString &to)
{
    for (File &file : files) {
        if (file.path == from)
            file.path = to;
    }
}

void Bag::setLabel(const QString &label, const QString &value)
{
    const auto info = std::find_if(files.begin(), files.end(), [](const File &file) { return file.path == package::names::info; });
    if (info == files.end())
        return;
    QList<QByteArray> lines = info->bytes.split('\n');
    for (QByteArray &line : lines) {
        if (line.startsWith(label.toUtf8() + ": "))
            line = (label + u": "_s + value).toUtf8();
    }
    info->bytes = lines.join('\n');
}

void Bag::repairTagManifest()
{
    std::vector<core::bag::Listed> tags;
    for (const File &file : files) {
        if (!file.path.startsWith(payload) && file.path != package::names::tagManifest)
            tags.push_back(listedAs(file));
    }
    for (File &file : files) {
        if (file.path == package::names::tagManifest)
            file.bytes = core::bag::manifest(tags);
    }
}

void Bag::repairDigests()
{
    std::vector<core::bag::Listed> listed;
    qint64 size = 0;
    for (const File &file : files) {
        if (!file.path.startsWith(payload))
            continue;
        listed.push_back(listedAs(file));
        size += file.bytes.size();
    }
    setLabel(u"Payload-Oxum"_s, u"%1.%2"_s.arg(size).arg(listed.size()));
    for (File &file : files) {
        if (file.path == package::names::manifest)
            file.bytes = core::bag::manifest(listed);
    }
    repairTagManifest();
}

QByteArray Bag::zip() const
{
    static const QTemporaryDir scratch;
    const QString path = scratch.filePath(u"packed.zip"_s);
    QFile::remove(path);
    auto writer = package::ZipWriter::create(path);
    for (const File &file : files) {
        if (const auto added = writer->addBytes(folder + u'/' + file.path, file.bytes, file.packing); !added)
            qFatal("%s", qPrintable(added.error().message));
    }
    if (const auto finished = writer->finish({}); !finished)
        qFatal("%s", qPrintable(finished.error().message));
    QFile packed(path);
    if (!packed.open(QIODevice::ReadOnly))
        qFatal("the packed file is gone");
    return packed.readAll();
}

} // namespace battery
