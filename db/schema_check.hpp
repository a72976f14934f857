// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/value/result.hpp"

namespace db {

class Connection;

/// How the store's own guard differs from what this version made it: a table, index or trigger of the record that is missing or another, and
/// any trigger, view, table or index that this version knows nothing of; one sentence each, none when all is as it was made. Without its triggers a store
/// lets entries be changed; what was changed is for the verification of the entries to say.
core::Result<std::vector<QString>> schemaDifferences(Connection &connection);

} // namespace db
