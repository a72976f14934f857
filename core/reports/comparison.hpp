// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/acts/voids.hpp"
#include "core/job/stage.hpp"
#include "core/register/register.hpp"
#include "core/reports/audit_table.hpp"
#include "core/rules/refusal.hpp"
#include "core/value/result.hpp"

namespace core {

/// An interface whose stage, or whose conditions, are not what they were.
struct ItemChange {
    InterfaceId id;
    QString name;
    std::optional<Stage> stageBefore; ///< nothing: it was not on the list
    std::optional<Stage> stageAfter;  ///< nothing: it is not on the list any more
    QString conditionBefore;          ///< in words; empty for none
    QString conditionAfter;
    bool operator==(const ItemChange &) const = default;
};

/// What became of a job between two of its entries. Both states are judged by the register, and beside the linked jobs, as they are now: what is
/// told is what this job's own entries changed.
struct Comparison {
    Head from;
    Head to;
    std::vector<qint64> added;      ///< after `from`, up to `to`
    std::vector<qint64> noLonger;   ///< entries that counted at `from`, and were struck or fell since
    std::vector<ItemChange> items;  ///< in the order of the list, then those that left it
    std::vector<Voided> voided;     ///< readings, inspections, tests and hold points that do not count any more
    LooseEnds gone;                 ///< as they were told at `from`
    LooseEnds appeared;
    bool operator==(const Comparison &) const = default;
};

/// The entry that is meant by its number or by its hash in 64 hex digits. BadInput: neither; a number that the job does not have; "the
/// record with that hash is not part of this job's history".
Result<Head> headMeant(const JobState &job, const QString &text);

/// `from` must not be later than `to`; both are heads of the job.
Comparison compareHeads(const JobState &job, const Register &reg, const Head &from, const Head &to);

/// The same for paper and CSV, part by part.
AuditTable comparisonTable(const JobState &job, const Register &reg, const Comparison &comparison);

} // namespace core
