// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Jobs that are parts of one piece of work. Linked records, one set of people, items handed on with acceptance at both ends, and closure
// together: common practice.

/// What rests on a linked job is judged when that job can be seen.
std::optional<Refusal> linkedJobsAreSeen(const Case &c);
/// A link names another job that can be seen, is open, and is of the work order that is said.
std::optional<Refusal> linkNamesAnOpenJob(const Case &c);
std::optional<Refusal> isNotLinkedYet(const Case &c);
/// While the other job has not answered, a link that was a mistake can be struck; what both leads signed stays.
std::optional<Refusal> struckLinkIsUnanswered(const Case &c);
/// Once one of them is closed, the others were complete and take nothing but their own closure. A job that has come to a loose end of its
/// own since (a tool found out of tolerance) may still clear it.
std::optional<Refusal> noLinkedJobIsClosed(const Case &c);
/// An item that was given over is worked on where it was taken on.
std::optional<Refusal> itemIsHere(const Case &c);
/// Sent is what is off, or was never touched, with nothing half done about it.
std::optional<Refusal> itemCanGo(const Case &c);
/// Twins, and items of which one depends on the other, stay in one job: what voids one must reach the other.
std::optional<Refusal> nothingIsTiedToIt(const Case &c);
/// It goes to a job that names this one.
std::optional<Refusal> goesToALinkedJob(const Case &c);
/// The other job sent this item to this one, and nobody took it on yet.
std::optional<Refusal> itemWasSentHere(const Case &c);
/// It is taken on as the other job has it: what restoring it must show, and how it was left. The zone alone is this job's.
std::optional<Refusal> isTakenOnAsItIs(const Case &c);
/// The tag that stays on it must not be one that this job has or could hang.
std::optional<Refusal> tagIsNobodyElses(const Case &c);
/// While an item is given over, what was said of it before stays; and a sending is struck only until the other job took it on.
std::optional<Refusal> struckLeavesItWhereItIs(const Case &c);

extern const Rule linkSeen, linkNamed, linkOnce, strikeLink, closedTogether, notElsewhere, sendable, sendTied, sendTo, takenOnSent, takenOnSame, takenOnTag, strikeSent;

} // namespace core::rules
