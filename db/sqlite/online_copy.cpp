// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/sqlite/online_copy.hpp"

#include <QCoreApplication>

#include <sqlite3.h>

#include "db/sqlite/connection.hpp"
#include "db/sqlite/failure.hpp"

namespace db {

using core::failure;
using core::Result;

namespace {

/// About 1 MB: a cancel is heeded within milliseconds.
constexpr int pagesAStep = 256;

int copySteps(sqlite3_backup *copy, const BackupProgress &progress, bool &isStopped)
{
    int status = SQLITE_OK;
    while (status == SQLITE_OK && !isStopped) {
        status = sqlite3_backup_step(copy, pagesAStep);
        const qint64 all = sqlite3_backup_pagecount(copy);
        isStopped = progress && progress(all - sqlite3_backup_remaining(copy), all) == Walk::Stop;
    }
    return status;
}

} // namespace

Result<void> copyOnline(Connection &source, Connection &target, const BackupProgress &progress)
{
    sqlite3_backup *copy = sqlite3_backup_init(target.handle(), "main", source.handle(), "main");
    if (!copy)
        return failure(target.error());
    bool isStopped = false;
    const int status = copySteps(copy, progress, isStopped);
    const int finished = sqlite3_backup_finish(copy);
    if (status != SQLITE_DONE && status != SQLITE_OK)
        return failure(errorFrom(status, target.systemError()));
    if (finished != SQLITE_OK)
        return failure(errorFrom(finished, target.systemError()));
    if (status != SQLITE_DONE)
        return failure(core::ErrorCode::Cancelled, QCoreApplication::translate("Store", "The backup was cancelled; no file was made."));
    return {};
}

} // namespace db
