// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/session/session.hpp"
#include "db/where_used.hpp"

namespace session {

/// One entry of the store that names what was looked for.
struct UseOf {
    std::optional<QString> workOrder; ///< of its job; nothing: an entry of the register
    core::Statement said;
};

/// The sorts of things that can be looked for: `person`, `tool`, `part`, `batch`, `serial`, `certificate`.
const std::vector<QLatin1String> &wantedSorts();

/// Every entry of every job, open or closed, and of the register, that names the thing, by their moments.
/// Errors: those of db::WhereUsed::forEach; Damaged where an entry cannot be read.
core::Result<std::vector<UseOf>> whereUsed(Session &session, const db::Wanted &wanted);

} // namespace session
