// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <chrono>
#include <memory>

#include "core/value/result.hpp"
#include "db/sqlite/connection.hpp"

namespace db {

/// Says in the file's header that it is a store of this program ("RMTE"). Never changes.
constexpr qint64 applicationId = 0x524d5445;

/// Makes an empty file with mode 0600, whatever the umask; BadInput when the name is taken, also by what another store left.
core::Result<void> makeEmptyFile(const QString &path);
/// Takes away a file that makeEmptyFile made and its side files.
void removeWithSideFiles(const QString &path);
/// Writes an empty store of the newest version into an empty file.
core::Result<void> fillNewStore(const QString &path, std::chrono::milliseconds patience);

/// Opens a store for writing or reading: refuses whatever is no store, newer, damaged, held or not permitted, without touching
/// it; brings an older one up to date when it may write. The connection is ready to use.
core::Result<std::unique_ptr<Connection>> openForWriting(const QString &path, std::chrono::milliseconds patience);
core::Result<std::unique_ptr<Connection>> openForReading(const QString &path, std::chrono::milliseconds patience);

} // namespace db
