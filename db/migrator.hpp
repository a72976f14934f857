// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/value/result.hpp"

namespace db {

class Connection;

/// The version of a store that this program writes: the number of its last migration.
qint64 newestVersion();

/// The version of the store that is open.
core::Result<qint64> storeVersion(Connection &connection);

/// Runs the migrations that the store has not had, one transaction each. Safe while another program does the same. Call it
/// before foreign keys are switched on: a migration that makes a table anew must not have them.
core::Result<void> migrate(Connection &connection);

/// The same, up to `version` alone: how the stores of the upgrade test are made.
core::Result<void> migrateTo(Connection &connection, qint64 version);

} // namespace db
