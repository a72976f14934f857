// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/tamper/zip_parts.hpp"

#include <QtEndian>

namespace battery {

namespace {

constexpr qsizetype endLength = 22;
constexpr qsizetype endFilesHere = 8;
constexpr qsizetype endFiles = 10;
constexpr qsizetype endSize = 12;
constexpr qsizetype endAt = 16;

void replaceName(QByteArray &header, qsizetype lengthAt, qsizetype nameAt, const QByteArray &name)
{
    header.replace(nameAt, ZipParts::two(header, lengthAt), name);
    ZipParts::setTwo(header, lengthAt, static_cast<quint16>(name.size()));
}

} // namespace

quint16 ZipParts::two(QByteArrayView bytes, qsizetype at) { return qFromLittleEndian<quint16>(bytes.data() + at); }
quint32 ZipParts::four(QByteArrayView bytes, qsizetype at) { return qFromLittleEndian<quint32>(bytes.data() + at); }
void ZipParts::setTwo(QByteArray &bytes, qsizetype at, quint16 value) { qToLittleEndian(value, bytes.data() + at); }
void ZipParts::setFour(QByteArray &bytes, qsizetype at, quint32 value) { qToLittleEndian(value, bytes.data() + at); }

void ZipParts::setTwo(File &file, At at, quint16 value)
{
    setTwo(file.local, at.local, value);
    setTwo(file.central, at.central, value);
}

void ZipParts::setFour(File &file, At at, quint32 value)
{
    setFour(file.local, at.local, value);
    setFour(file.central, at.central, value);
}

void ZipParts::rename(File &file, const QByteArray &to)
{
    replaceName(file.local, nameLength.local, name.local, to);
    replaceName(file.central, nameLength.central, name.central, to);
}

ZipParts ZipParts::of(QByteArrayView zip)
{
    ZipParts parts;
    parts.end = zip.last(endLength).toByteArray();
    qsizetype central = four(parts.end, endAt);
    for (int file = 0; file < two(parts.end, endFiles); ++file) {
        const qsizetype length = name.central + two(zip, central + nameLength.central);
        const qsizetype local = four(zip, central + centralOffset);
        const qsizetype header = name.local + two(zip, local + nameLength.local);
        parts.files.push_back({zip.sliced(local, header).toByteArray(), zip.sliced(local + header, four(zip, local + packed.local)).toByteArray(), zip.sliced(central, length).toByteArray()});
        central += length;
    }
    return parts;
}

QByteArray ZipParts::zip() const
{
    QByteArray all = before;
    QByteArray directory;
    for (const File &file : files) {
        QByteArray line = file.central;
        if (!keepsOffsets && !line.isEmpty())
            setFour(line, centralOffset, static_cast<quint32>(all.size()));
        all += file.local + file.data + file.behind;
        directory += line;
    }
    all += afterFiles;
    QByteArray last = end;
    if (!keepsOffsets) {
        setFour(last, endAt, static_cast<quint32>(all.size()));
        setFour(last, endSize, static_cast<quint32>(directory.size()));
        setTwo(last, endFilesHere, static_cast<quint16>(files.size()));
        setTwo(last, endFiles, static_cast<quint16>(files.size()));
    }
    return all + directory + afterDirectory + last;
}

} // namespace battery
