// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/attachments.hpp"

#include <QCoreApplication>

#include "db/sqlite/connection.hpp"
#include "db/write_gate.hpp"

namespace db {

using core::Digest;
using core::ErrorCode;
using core::failure;
using core::Result;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Store", text); }

Result<void> checkSize(const QByteArray &bytes)
{
    constexpr qint64 mebibyte = 1024 * 1024;
    if (bytes.isEmpty())
        return failure(ErrorCode::BadInput, tr("The attachment is empty. Choose another file."));
    if (bytes.size() > Attachments::largest)
        return failure(ErrorCode::BadInput, tr("The attachment has %1 MiB; at most %2 MiB can be kept. Make it smaller, or cut it "
                                               "into parts.")
                                                .arg((bytes.size() + mebibyte - 1) / mebibyte)
                                                .arg(Attachments::largest / mebibyte));
    return {};
}

} // namespace

Result<Digest> Attachments::put(const QByteArray &bytes, const QString &mediaType)
{
    if (auto fits = checkSize(bytes); !fits)
        return failure(fits.error());
    if (!core::isIdText(mediaType))
        return failure(ErrorCode::BadInput, tr("The attachment does not say what sort of file it is."));
    const Digest digest = Digest::of(bytes);
    const auto present = exists(digest);
    if (!present || *present)
        return present.map([&](bool) { return digest; });
    const QByteArray name = digest.bytes();
    return m_gate.write([&]() -> Result<Digest> {
        const auto meanwhile = exists(digest);
        if (!meanwhile || *meanwhile)
            return meanwhile.map([&](bool) { return digest; });
        return m_connection.query("INSERT INTO attachments (digest, media_type, size, bytes) VALUES (?, ?, ?, ?)")
            .with(QByteArrayView(name))
            .with(mediaType)
            .with(qint64{bytes.size()})
            .with(QByteArrayView(bytes))
            .run()
            .map([&] { return digest; });
    });
}

Result<QByteArray> Attachments::get(const Digest &digest)
{
    const QByteArray name = digest.bytes();
    auto bytes = m_connection.query("SELECT bytes FROM attachments WHERE digest = ?")
                     .with(QByteArrayView(name))
                     .one([](Statement &row) { return row.bytes(0).toByteArray(); });
    if (!bytes)
        return failure(bytes.error());
    if (!*bytes)
        return failure(ErrorCode::NotFound, tr("The attachment %1 is not in this store.").arg(digest.hex()));
    if (Digest::of(**bytes) != digest)
        return failure(ErrorCode::Damaged, tr("The attachment %1 is damaged: its content was changed after it was recorded. Look "
                                              "for it in the last backup.")
                                               .arg(digest.hex()));
    return **std::move(bytes);
}

Result<bool> Attachments::exists(const Digest &digest)
{
    const QByteArray name = digest.bytes();
    auto found = m_connection.query("SELECT 1 FROM attachments WHERE digest = ?")
                     .with(QByteArrayView(name))
                     .one([](const Statement &row) { return row.integer(0); });
    return found.map([](std::optional<qint64> row) { return row.has_value(); });
}

Result<std::vector<Attachment>> Attachments::list()
{
    std::vector<Attachment> all;
    std::optional<core::Error> damaged;
    auto done = m_connection.query("SELECT digest, media_type, size FROM attachments ORDER BY id").each([&](Statement &row) {
        if (const auto digest = Digest::fromBytes(row.bytes(0)))
            all.push_back({*digest, row.text(1), row.integer(2)});
        else
            damaged = core::Error{ErrorCode::Damaged, tr("The list of attachments is damaged. Verify the store, and go on with "
                                                         "the last backup.")};
        return damaged ? Walk::Stop : Walk::On;
    });
    if (!done || damaged)
        return failure(done ? *damaged : done.error());
    return all;
}

} // namespace db
