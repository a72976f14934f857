// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <chrono>
#include <functional>

#include "core/value/result.hpp"
#include "db/stored.hpp"

namespace db {

enum class Overwrite { No, Yes };

struct BackupReport {
    qint64 ledgers; ///< how many were compared with the original's
    qint64 entries; ///< how many entries the copy holds
    qint64 bytes;   ///< size of the copy
    bool operator==(const BackupReport &) const = default;
};

/// Told after each step how many pages are done, of how many. Walk::Stop cancels.
using BackupProgress = std::function<Walk(qint64 pagesDone, qint64 pagesOfAll)>;

/// Copies the store file `source` to `target`; see Store::backUp.
core::Result<BackupReport> copyStore(const QString &source, const QString &target, Overwrite overwrite,
                                     std::chrono::milliseconds patience, const BackupProgress &progress);

} // namespace db
