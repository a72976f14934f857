// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/packages.hpp"

#include <QCoreApplication>

#include "db/sqlite/connection.hpp"
#include "db/stored.hpp"
#include "db/write_gate.hpp"

namespace db {

using core::Digest;
using core::ErrorCode;
using core::failure;
using core::Result;

namespace {

constexpr qint64 partSize = 1024 * 1024;

QString tr(const char *text) { return QCoreApplication::translate("Store", text); }

tl::unexpected<core::Error> damaged(qint64 number)
{
    return failure(ErrorCode::Damaged, tr("The imported package %1 is damaged: it is not what it was when it came. Import it again from where it came from.").arg(number));
}

} // namespace

Result<qint64> Packages::put(QIODevice &from, const KeptPackage &package)
{
    const QByteArray digest = package.digest.bytes();
    const QByteArray head = package.head.hash.bytes();
    const QByteArray root = package.root.bytes();
    return m_gate.write([&]() -> Result<qint64> {
        const auto there = m_connection.query("SELECT id FROM packages WHERE digest = ?").with(QByteArrayView(digest)).one([](const Statement &row) { return row.integer(0); });
        if (!there)
            return failure(there.error());
        if (*there)
            return failure(ErrorCode::BadInput, tr("This very package was imported before; it has number %1.").arg(**there));
        const auto highest = m_connection.query("SELECT coalesce(max(id), 0) FROM packages").one([](const Statement &row) { return row.integer(0); });
        if (!highest)
            return failure(highest.error());
        const qint64 number = highest->value_or(0) + 1;
        return m_connection.query("INSERT INTO packages (id, digest, size, ledger, head_seq, head_hash, root, work_order, aircraft, title, is_closed, taken_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
            .with(number)
            .with(QByteArrayView(digest))
            .with(package.size)
            .with(package.ledger.text())
            .with(package.head.seq)
            .with(QByteArrayView(head))
            .with(QByteArrayView(root))
            .with(package.workOrder)
            .with(package.aircraft)
            .with(package.title)
            .with(qint64{package.isClosed ? 1 : 0})
            .with(package.takenAt.milliseconds())
            .run()
            .and_then([&] { return putParts(from, number, package); })
            .map([&] { return number; });
    });
}

Result<void> Packages::putParts(QIODevice &from, qint64 number, const KeptPackage &package)
{
    core::DigestStream digest;
    qint64 size = 0;
    for (qint64 part = 0;; ++part) {
        const QByteArray bytes = from.read(partSize);
        if (bytes.isEmpty())
            break;
        digest.add(bytes);
        size += bytes.size();
        const auto kept = m_connection.query("INSERT INTO package_parts (package, part, bytes) VALUES (?, ?, ?)").with(number).with(part).with(QByteArrayView(bytes)).run();
        if (!kept)
            return failure(kept.error());
    }
    if (size != package.size || digest.soFar() != package.digest)
        return failure(ErrorCode::Damaged, tr("The package changed while it was read. Import it again."));
    return {};
}

Result<std::vector<KeptPackage>> Packages::list()
{
    std::vector<KeptPackage> all;
    bool isSound = true;
    auto done = m_connection.query("SELECT id, digest, size, ledger, head_seq, head_hash, root, work_order, aircraft, title, is_closed, taken_at FROM packages ORDER BY id").each([&](Statement &row) {
        const auto digest = Digest::fromBytes(row.bytes(1));
        const auto ledger = core::LedgerId::parse(row.text(3));
        const auto head = Digest::fromBytes(row.bytes(5));
        const auto root = Digest::fromBytes(row.bytes(6));
        isSound = digest && ledger && head && root;
        if (isSound)
            all.push_back({row.integer(0), *digest, row.integer(2), *ledger, {row.integer(4), *head}, *root, row.text(7), row.text(8), row.text(9), row.integer(10) == 1, core::Instant::fromMilliseconds(row.integer(11))});
        return isSound ? Walk::On : Walk::Stop;
    });
    if (!done)
        return failure(done.error());
    if (!isSound)
        return failure(ErrorCode::Damaged, tr("The list of imported packages is damaged. Verify the store, and go on with the last backup."));
    return all;
}

Result<void> Packages::writeTo(QIODevice &to, qint64 number)
{
    const auto named = m_connection.query("SELECT digest FROM packages WHERE id = ?").with(number).one([](Statement &row) { return Digest::fromBytes(row.bytes(0)); });
    if (!named)
        return failure(named.error());
    if (!*named)
        return failure(ErrorCode::NotFound, tr("No imported package has the number %1.").arg(number));
    core::DigestStream digest;
    qint64 part = 0;
    bool isInOrder = true;
    bool isWritten = true;
    auto read = m_connection.query("SELECT part, bytes FROM package_parts WHERE package = ? ORDER BY part").with(number).each([&](Statement &row) {
        isInOrder = row.integer(0) == part++;
        const QByteArrayView bytes = row.bytes(1);
        digest.add(bytes);
        isWritten = to.write(bytes.data(), bytes.size()) == bytes.size();
        return isInOrder && isWritten ? Walk::On : Walk::Stop;
    });
    if (!read)
        return failure(read.error());
    if (!isWritten)
        return failure(ErrorCode::Io, tr("The file cannot be written (%1). Make room, or choose another folder.").arg(to.errorString()));
    if (!isInOrder || digest.soFar() != **named)
        return damaged(number);
    return {};
}

} // namespace db
