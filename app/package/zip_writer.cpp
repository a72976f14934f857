// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/package/zip_writer.hpp"

#include <QCoreApplication>
#include <QFile>

#include <cerrno>

#include <zip.h>

#include "app/package/zip_layout.hpp"

namespace package {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Package", text); }

tl::unexpected<core::Error> failed(zip *archive, const QString &path)
{
    zip_error_t *error = zip_get_error(archive);
    const core::Where where{path, std::nullopt, std::nullopt};
    if (zip_error_code_zip(error) == ZIP_ER_CANCELLED)
        return core::failure(core::ErrorCode::Cancelled, tr("The export was cancelled; no file was written."));
    if (zip_error_code_system(error) == ENOSPC)
        return core::failure(core::ErrorCode::NoSpace, tr("The disk is full. Make room and export again."), where);
    return core::failure(core::ErrorCode::Io, tr("The package cannot be written (%1). Choose another folder, or ask who looks after it.").arg(QString::fromUtf8(zip_error_strerror(error))), where);
}

constexpr zip_int32_t bestCompression = 9;

} // namespace

void ZipWriter::Discard::operator()(zip *archive) const { zip_discard(archive); }

core::Result<ZipWriter> ZipWriter::create(const QString &path)
{
    int code = 0;
    zip *archive = zip_open(QFile::encodeName(path).constData(), ZIP_CREATE | ZIP_EXCL, &code);
    if (!archive)
        return core::failure(core::ErrorCode::Io, tr("The package cannot be begun. Choose another folder."), {path, std::nullopt, std::nullopt});
    return ZipWriter(archive, path);
}

core::Result<void> ZipWriter::add(const QString &name, void *source, Packing packing)
{
    auto *data = static_cast<zip_source_t *>(source);
    if (!data)
        return failed(m_archive.get(), m_path);
    const zip_int64_t index = zip_file_add(m_archive.get(), name.toUtf8().constData(), data, ZIP_FL_ENC_UTF_8);
    if (index < 0) {
        zip_source_free(data);
        return failed(m_archive.get(), m_path);
    }
    const auto at = static_cast<zip_uint64_t>(index);
    const bool isSet = zip_set_file_compression(m_archive.get(), at, packing == Packing::Stored ? ZIP_CM_STORE : ZIP_CM_DEFLATE, packing == Packing::Stored ? 0U : static_cast<zip_uint32_t>(bestCompression)) == 0 &&
                       zip_file_set_dostime(m_archive.get(), at, plain::dosTime, plain::dosDate, 0) == 0 &&
                       zip_file_set_external_attributes(m_archive.get(), at, 0, ZIP_OPSYS_UNIX, plain::attributes) == 0;
    if (!isSet)
        return failed(m_archive.get(), m_path);
    return {};
}

core::Result<void> ZipWriter::addFile(const QString &name, const QString &path, Packing packing)
{
    return add(name, zip_source_file(m_archive.get(), QFile::encodeName(path).constData(), 0, 0), packing);
}

core::Result<void> ZipWriter::addBytes(const QString &name, QByteArray bytes, Packing packing)
{
    const auto &kept = m_bytes.emplace_back(std::make_unique<QByteArray>(std::move(bytes)));
    return add(name, zip_source_buffer(m_archive.get(), kept->constData(), static_cast<zip_uint64_t>(kept->size()), 0), packing);
}

core::Result<void> ZipWriter::finish(const Going &going)
{
    struct State {
        const Going &going;
        bool isStopped;
    } state{going, false};
    constexpr double precision = 0.002;
    zip_register_progress_callback_with_state(
        m_archive.get(), precision,
        [](zip_t *, double part, void *data) {
            auto *now = static_cast<State *>(data);
            constexpr qint64 all = 1000;
            if (now->going && !now->isStopped)
                now->isStopped = !now->going(static_cast<qint64>(part * static_cast<double>(all)), all);
        },
        nullptr, &state);
    zip_register_cancel_callback_with_state(m_archive.get(), [](zip_t *, void *data) { return static_cast<State *>(data)->isStopped ? 1 : 0; }, nullptr, &state);
    if (zip_close(m_archive.get()) != 0)
        return failed(m_archive.get(), m_path); // discarded with this
    (void)m_archive.release();
    return {};
}

} // namespace package
