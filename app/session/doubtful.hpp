// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/session/where_used.hpp"

namespace session {

/// Everything that was signed with keys which somebody else may have had at the time: of one person or of all, in every job and the
/// register, oldest first within a doubt. It stands and stays valid; it is for people to ask after.
core::Result<std::vector<UseOf>> doubtfulSignatures(Session &session, const std::optional<core::PersonId> &person = {});

} // namespace session
