// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/value/result.hpp"

namespace db {

/// Waits until the disk holds a file's content. Not for a file that SQLite has open: see readFileHeader.
core::Result<void> syncFile(const QString &path);
/// Waits until the disk holds a folder's names: a new or renamed file is not durable before.
core::Result<void> syncFolder(const QString &path);

} // namespace db
