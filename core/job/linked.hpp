// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <set>

#include "core/job/reached.hpp"
#include "core/job/state.hpp"

namespace core {

// Jobs that are parts of one piece of work: linked records, one set of people, items handed on with acceptance at both ends, and
// closure together. Common practice where one change is worked in two places.

/// The job of that ledger as this one sees it, or nullptr when it cannot be seen.
const JobState *seenJob(const JobState &job, const LedgerId &ledger);
/// Whether the job names that ledger as linked.
bool isLinkedWith(const JobState &job, const LedgerId &ledger);
/// The jobs that this one names and that name it.
std::vector<const JobState *> linkedBothWays(const JobState &job);
/// The other job as it would see itself now: this job and the others beside it.
JobState asItSees(const JobState &job, const JobState &other);
/// The ledgers whose heads are pinned by an entry that this job takes next: all that it is linked with, and the one that a link names.
std::set<LedgerId> ledgersPinnedBy(const JobState &job, QStringView kind, const json::Object &body);
/// "WO-2 (Build-up of the incoming engine)".
QString jobInWords(const JobState &job);
/// The same of a linked job, by its work order alone when it cannot be seen.
QString jobInWords(const JobState &job, const LedgerId &ledger);

/// Whether the item was given over to a linked job, so that nothing is done with it in this one.
inline bool isElsewhere(const InterfaceState &item) { return item.sent.has_value(); }
/// An item in the job that has it.
struct Placed {
    const JobState *job;
    const InterfaceState *item;
};
/// Where an item that was given over was taken on; nothing while nobody took it on, or for an item that is here.
std::optional<Placed> whereTakenOn(const JobState &job, const InterfaceState &item);
/// The item as it is now, wherever it is: what is still on its way is as it was sent.
const InterfaceState &asItIsNow(const JobState &job, const InterfaceState &item);
/// The same for an item that another job, which this one sees, lists.
const InterfaceState &asItIsNow(const JobState &job, const JobState &in, const InterfaceState &item);
/// How far the item has come, wherever it is, as a number of this job's entries: for an item that is elsewhere the first number after all
/// entries of this job that were signed before its last one there.
Reached reachedNow(const JobState &job, const InterfaceState &item, Reached (*reached)(const InterfaceState &));
/// An interface that another one names: of this job, or of the job that `item` came from.
const InterfaceState *itemNamedBy(const JobState &job, const InterfaceState &item, const InterfaceId &id);
/// Every item that a linked job sent to this one and that was not taken on yet.
std::vector<Placed> sentHere(const JobState &job);
/// "It is with WO-2 (Build-up of the incoming engine)."; empty for an item that is here.
QString whereInWords(const JobState &job, const InterfaceState &item);

/// A hand that somebody had in an item, and where: the actor set is one over all linked jobs, and items of one id in linked jobs are each
/// other's like, the same item handed on or the same place on the other engine.
struct Hand {
    const JobState *job; ///< the job itself, or a linked one
    const InterfaceState *item;
    bool isElsewhere; ///< in a linked job
};
std::optional<Hand> handOf(const JobState &job, const InterfaceState &item, const PersonId &person);
inline bool hadAHand(const JobState &job, const InterfaceState &item, const PersonId &person) { return handOf(job, item, person).has_value(); }
/// An item of the same independence group or twin group, here or in a linked job, that the person had a hand in.
std::optional<Hand> handInGroupOf(const JobState &job, const InterfaceState &item, const PersonId &person);
/// "F1", or "F1 of WO-2 (…)" in a linked job.
QString itemInWords(const Hand &hand);

} // namespace core
