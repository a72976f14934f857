// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/session/session.hpp"
#include "db/where_used.hpp"

namespace session {

/// How much of the store was looked through.
struct LookedAt {
    qint64 jobs = 0;
    qint64 entriesOfJobs = 0;
    qint64 entriesOfRegister = 0;
    QStringList damaged{}; ///< work orders, and the register: an entry that cannot be read names nothing, so it is not found
};

core::Result<LookedAt> lookedAt(Session &session);

/// Why nothing was found, so that nobody takes a slip of the pen for an all-clear.
struct NothingFound {
    std::optional<bool> isRegistered; ///< of a person or tool; nothing for what stands in no register
    std::vector<QString> speltAlike;  ///< what somebody may have meant, of all that the register and the entries name
    qint64 without = 0;               ///< entries that name it when neither days nor kind are asked for
    QString sentences;                ///< all of it for a person, translated
};

/// Called when nothing was found. Errors: those of db::WhereUsed.
core::Result<NothingFound> whyNothing(Session &session, const db::Wanted &wanted, const LookedAt &looked);

} // namespace session
