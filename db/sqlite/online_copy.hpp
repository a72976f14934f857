// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/value/result.hpp"
#include "db/backup.hpp"

namespace db {

class Connection;

/// Copies everything that `source` sees into the empty file behind `target`, step by step. Call it within a reading
/// transaction on `source`: then others may write meanwhile and the copy is of one moment. Cancelled when told to stop.
core::Result<void> copyOnline(Connection &source, Connection &target, const BackupProgress &progress);

} // namespace db
