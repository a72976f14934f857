// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/package/zip_layout.hpp"

#include <QCoreApplication>
#include <QSet>
#include <QtEndian>

#include "core/package/bag.hpp"

namespace package {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Package", text); }

tl::unexpected<core::Error> wrong(const QString &what) { return core::failure(core::ErrorCode::Damaged, what); }

/// Reads little-endian numbers one after the other; beyond the end it reads zeros and says so.
class Numbers {
public:
    explicit Numbers(QByteArrayView bytes) : m_bytes(bytes) {}
    quint16 two() { return number<quint16>(); }
    quint32 four() { return number<quint32>(); }
    QByteArrayView text(qsizetype length)
    {
        m_isShort = m_isShort || length > m_bytes.size();
        const QByteArrayView head = m_bytes.first(std::min(length, m_bytes.size()));
        m_bytes = m_bytes.sliced(head.size());
        return head;
    }
    bool isShort() const { return m_isShort; }
    QByteArrayView rest() const { return m_bytes; }

private:
    template <class T>
    T number()
    {
        const QByteArrayView bytes = text(sizeof(T));
        return bytes.size() == sizeof(T) ? qFromLittleEndian<T>(bytes.data()) : T(0);
    }
    QByteArrayView m_bytes;
    bool m_isShort = false;
};

/// What local header and directory say alike.
struct Common {
    quint16 needed = 0;
    quint16 flags = 0;
    quint16 method = 0;
    quint16 time = 0;
    quint16 date = 0;
    quint32 crc = 0;
    quint32 packed = 0;
    quint32 size = 0;
    quint16 nameLength = 0;
    quint16 extraLength = 0;
    bool operator==(const Common &) const = default;
};

Common readCommon(Numbers &numbers)
{
    Common common;
    common.needed = numbers.two();
    common.flags = numbers.two();
    common.method = numbers.two();
    common.time = numbers.two();
    common.date = numbers.two();
    common.crc = numbers.four();
    common.packed = numbers.four();
    common.size = numbers.four();
    common.nameLength = numbers.two();
    common.extraLength = numbers.two();
    return common;
}

constexpr quint32 localSignature = 0x04034b50;
constexpr quint32 directorySignature = 0x02014b50;
constexpr quint32 endSignature = 0x06054b50;
constexpr quint16 stored = 0;
constexpr quint16 deflated = 8;

/// Two forms, as libzip writes them: stored, and deflated with its strongest setting, which the flags tell (APPNOTE 4.4.4).
bool isPlain(const Common &common)
{
    const bool isStored = common.method == stored && common.needed == 10 && common.flags == 0 && common.packed == common.size;
    const bool isDeflated = common.method == deflated && common.needed == 20 && common.flags == 2;
    return (isStored || isDeflated) && common.time == plain::dosTime && common.date == plain::dosDate && common.extraLength == 0;
}

struct End {
    quint16 files;
    quint32 directorySize;
    quint32 directoryAt;
};

core::Result<End> readEnd(QByteArrayView zip)
{
    constexpr qsizetype endLength = 22;
    if (zip.size() < endLength)
        return wrong(tr("It is no ZIP file: it is too short."));
    Numbers numbers(zip.last(endLength));
    if (numbers.four() != endSignature)
        return wrong(tr("It is no ZIP file, or something stands behind its end."));
    const quint16 disk = numbers.two();
    const quint16 directoryDisk = numbers.two();
    const quint16 filesHere = numbers.two();
    End end{numbers.two(), numbers.four(), numbers.four()};
    const quint16 comment = numbers.two();
    if (disk != 0 || directoryDisk != 0 || filesHere != end.files || comment != 0)
        return wrong(tr("The end of the ZIP file is not as this program writes it."));
    if (qint64{end.directoryAt} + end.directorySize + endLength != zip.size())
        return wrong(tr("Something stands before, between or behind the parts of the ZIP file."));
    return end;
}

/// One line of the directory and the local header that it points to.
core::Result<PackedFile> readFile(QByteArrayView zip, Numbers &directory, qsizetype at, QSet<QString> &names)
{
    const quint32 signature = directory.four();
    const quint16 made = directory.two();
    const Common common = readCommon(directory);
    const quint16 comment = directory.two();
    const quint16 disk = directory.two();
    const quint16 internal = directory.two();
    const quint32 external = directory.four();
    const quint32 offset = directory.four();
    const QByteArray name = directory.text(common.nameLength).toByteArray();
    if (directory.isShort() || signature != directorySignature)
        return wrong(tr("The directory of the ZIP file breaks off."));
    const QString shown = QString::fromUtf8(name);
    if (!core::bag::isSafePath(shown) || shown.toUtf8() != name)
        return wrong(tr("The ZIP file holds a file with a name that leads elsewhere: \"%1\".").arg(shown));
    if (names.contains(shown.toCaseFolded()))
        return wrong(tr("The ZIP file holds \"%1\" twice.").arg(shown));
    names.insert(shown.toCaseFolded());
    if (made != plain::madeBy || comment != 0 || disk != 0 || internal != 0 || external != plain::attributes || !isPlain(common))
        return wrong(tr("\"%1\" is not packed as this program packs: link, folder, encryption, moment or remark.").arg(shown));
    Numbers local(zip.sliced(at));
    const bool isSame = offset == at && local.four() == localSignature && readCommon(local) == common && local.text(common.nameLength) == name;
    if (!isSame || local.isShort() || common.packed > local.rest().size())
        return wrong(tr("Where \"%1\" should begin in the ZIP file stands something else.").arg(shown));
    return PackedFile{shown, zip.size() - local.rest().size(), common.packed, common.size, common.crc, common.method == deflated};
}

} // namespace

core::Result<std::vector<PackedFile>> readLayout(QByteArrayView zip)
{
    const auto end = readEnd(zip);
    if (!end)
        return core::failure(end.error());
    Numbers directory(zip.sliced(end->directoryAt, end->directorySize));
    QSet<QString> names;
    std::vector<PackedFile> files;
    qsizetype at = 0;
    for (int count = 0; count < end->files; ++count) {
        auto file = readFile(zip, directory, at, names);
        if (!file)
            return core::failure(file.error());
        at = file->at + file->packed;
        files.push_back(*std::move(file));
    }
    if (at != end->directoryAt || !directory.rest().isEmpty())
        return wrong(tr("Something stands before, between or behind the parts of the ZIP file."));
    return files;
}

} // namespace package
