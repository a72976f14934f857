// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <span>

#include "app/session/nothing_found.hpp"
#include "app/session/session.hpp"
#include "app/session/where_used_question.hpp"
#include "core/reports/audit_table.hpp"
#include "db/where_used.hpp"

namespace session {

/// One entry of the store that names what was looked for.
struct UseOf {
    std::optional<QString> workOrder; ///< of its job; nothing: an entry of the register
    core::Statement said;
    QString aircraft{};
    bool isClosed = false; ///< the job is
    core::Digest hash{};
    QString moment{};                       ///< with who called it in doubt
    QString doubt{};                        ///< why the signature is in doubt, as the register has it now; empty where it is not
    std::optional<core::Line> line{};       ///< how the job counts it; nothing in the register, and beyond the damage of a job
};

/// What one job, or the register, has of it.
struct UsesInJob {
    core::LedgerId ledger;
    std::optional<QString> workOrder;
    QString aircraft;
    bool isClosed;
    std::vector<std::size_t> uses; ///< indices, by their moments
};

/// The sorts of things that can be looked for: `person`, `tool`, `part`, `batch`, `serial`, `certificate`.
const std::vector<QLatin1String> &wantedSorts();

/// Every entry of every job, open or closed, and of the register, that names the thing, by their moments.
/// Errors: those of db::WhereUsed::forEach; Damaged where an entry cannot be read.
core::Result<std::vector<UseOf>> whereUsed(Session &session, const db::Wanted &wanted);

/// What was asked, and what the store has of it.
struct UsesAnswer {
    db::Wanted wanted;
    std::vector<UseOf> uses;
    LookedAt looked;
    std::optional<NothingFound> nothing; ///< where there are no uses
};

/// Errors: BadInput of wantedBy; those of whereUsed.
core::Result<UsesAnswer> answerTo(Session &session, const UsesQuestion &question);

/// The same, job by job, in the order in which each names it first.
std::vector<UsesInJob> byJob(std::span<const UseOf> uses);

/// `stands`, `struck`, `fell`; `not known` beyond the damage of a job. Entries of the register are never struck.
QString standingOf(const UseOf &use, const core::Register &reg);
/// The same for a person, translated; nothing for what stands.
QString standingWordOf(const UseOf &use, const core::Register &reg);

/// All of it for paper and CSV, job by job: what was asked, of which store, when and by which version of this program; or why nothing was found.
core::AuditTable usesTable(const Session &session, const UsesAnswer &answer);

} // namespace session
