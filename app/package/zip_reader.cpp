// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/package/zip_reader.hpp"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>

#include <algorithm>

#include <zlib.h>

namespace package {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Package", text); }

tl::unexpected<core::Error> notRead(const QString &name, const QString &why)
{
    return core::failure(core::ErrorCode::Damaged, tr("%1 cannot be read: %2").arg(name, why));
}

Bytef *raw(QByteArray &bytes) { return reinterpret_cast<Bytef *>(bytes.data()); }

} // namespace

/// Read by position each time, since several streams of one file take turns.
struct ZipStream::Unpacking {
    Unpacking(std::shared_ptr<QFile> from, PackedFile what) : file(std::move(from)), entry(std::move(what)) { isReady = inflateInit2(&inflater, -MAX_WBITS) == Z_OK; }
    ~Unpacking() { (void)inflateEnd(&inflater); }
    Q_DISABLE_COPY_MOVE(Unpacking)

    core::Result<QByteArray> packedBytes(qint64 most)
    {
        const qint64 wanted = std::min(most, entry.packed - taken);
        QByteArray bytes = file->seek(entry.at + taken) ? file->read(wanted) : QByteArray();
        if (bytes.size() != wanted)
            return notRead(entry.name, tr("it breaks off."));
        taken += wanted;
        return bytes;
    }

    core::Result<QByteArray> inflated(qsizetype most)
    {
        QByteArray piece(most, Qt::Uninitialized);
        inflater.next_out = raw(piece);
        inflater.avail_out = static_cast<uInt>(most);
        while (inflater.avail_out > 0 && !hasEnded) {
            if (inflater.avail_in == 0 && taken < entry.packed) {
                constexpr qint64 mouthful = 1 << 16;
                auto more = packedBytes(mouthful);
                if (!more)
                    return more;
                packed = *std::move(more);
                inflater.next_in = raw(packed);
                inflater.avail_in = static_cast<uInt>(packed.size());
            }
            const int status = inflate(&inflater, Z_NO_FLUSH);
            hasEnded = status == Z_STREAM_END;
            if (!hasEnded && status != Z_OK)
                return notRead(entry.name, tr("it does not unpack."));
        }
        piece.truncate(most - static_cast<qsizetype>(inflater.avail_out));
        return piece;
    }

    core::Result<QByteArray> next(qsizetype most)
    {
        if (!isReady)
            return notRead(entry.name, tr("there is no memory to unpack it."));
        auto piece = entry.isDeflated ? inflated(most) : packedBytes(most);
        if (!piece)
            return piece;
        done += piece->size();
        sum = crc32(sum, raw(*piece), static_cast<uInt>(piece->size()));
        if (done > entry.size || (piece->isEmpty() && done < entry.size))
            return notRead(entry.name, tr("it does not unpack to the length that it states."));
        if (piece->isEmpty() && sum != entry.crc)
            return notRead(entry.name, tr("it is not what its check sum says."));
        if (piece->isEmpty() && (inflater.avail_in > 0 || taken < entry.packed))
            return notRead(entry.name, tr("something stands behind the end of what it unpacks to."));
        return piece;
    }

    std::shared_ptr<QFile> file;
    PackedFile entry;
    z_stream inflater{};
    QByteArray packed;  ///< what the inflater reads
    qint64 taken = 0;   ///< of the packed bytes
    qint64 done = 0;    ///< unpacked
    uLong sum = crc32(0, nullptr, 0);
    bool isReady = false;
    bool hasEnded = false;
};

ZipStream::ZipStream(std::unique_ptr<Unpacking> unpacking) : m_unpacking(std::move(unpacking)) {}
ZipStream::ZipStream(ZipStream &&) noexcept = default;
ZipStream &ZipStream::operator=(ZipStream &&) noexcept = default;
ZipStream::~ZipStream() = default;

core::Result<QByteArray> ZipStream::read(qsizetype most) { return m_unpacking->next(most); }

ZipReader::ZipReader(std::shared_ptr<QFile> file, std::vector<Entry> entries) : m_file(std::move(file)), m_entries(std::move(entries))
{
    for (std::size_t at = 0; at < m_entries.size(); ++at)
        m_byName.insert(m_entries[at].name, at);
}

core::Result<std::unique_ptr<ZipReader>> ZipReader::open(const QString &path)
{
    const core::Where where{path, std::nullopt, std::nullopt};
    if (!QFileInfo(path).isFile())
        return core::failure(core::ErrorCode::NotFound, tr("There is no file of that name."), where);
    auto file = std::make_shared<QFile>(path);
    if (!file->open(QIODevice::ReadOnly))
        return core::failure(core::ErrorCode::Io, tr("The file cannot be read (%1).").arg(file->errorString()), where);
    if (file->size() == 0)
        return core::failure(core::ErrorCode::Damaged, tr("The file is empty."), where);
    uchar *bytes = file->map(0, file->size());
    if (!bytes)
        return core::failure(core::ErrorCode::Io, tr("The file cannot be read (%1).").arg(file->errorString()), where);
    auto files = readLayout(QByteArrayView(bytes, file->size()));
    file->unmap(bytes); // whoever cut the file short while it is mapped would stop the program
    if (!files)
        return core::failure(core::ErrorCode::Damaged, files.error().message, where);
    return std::unique_ptr<ZipReader>(new ZipReader(std::move(file), *std::move(files)));
}

const ZipReader::Entry *ZipReader::find(const QString &name) const
{
    const auto at = m_byName.constFind(name);
    return at == m_byName.constEnd() ? nullptr : &m_entries[*at];
}

ZipStream ZipReader::stream(const Entry &entry) const { return ZipStream(std::make_unique<ZipStream::Unpacking>(m_file, entry)); }

core::Result<QByteArray> ZipReader::bytes(const Entry &entry, qint64 most) const
{
    if (entry.size > most)
        return notRead(entry.name, tr("it is longer than such a file can be."));
    ZipStream from = stream(entry);
    QByteArray all;
    for (;;) {
        constexpr qsizetype piece = 1 << 20;
        auto next = from.read(std::min<qsizetype>(piece, std::max<qsizetype>(1, static_cast<qsizetype>(entry.size - all.size() + 1))));
        if (!next)
            return core::failure(next.error());
        if (next->isEmpty())
            return all;
        all += *next;
    }
}

} // namespace package
