// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <set>
#include <vector>

#include "core/job/hardware.hpp"
#include "core/job/listed.hpp"
#include "core/job/mark.hpp"

namespace core {

struct JobState;
struct Statement;

/// What entries about an interface leave behind that do not count any more: a strike takes back what was said, not whose hands were there,
/// nor what was counted. A strike that says that nothing of it ever was so leaves nothing; that takes authority to overrule.
struct LeftByStrikes {
    std::set<PersonId> hands{};             ///< had a hand in it
    std::set<PersonId> joiners{};           ///< of these, who joined or loosened it since it was last undone
    std::optional<Mark> undoing{};          ///< it was said to be undone, and no inspector has looked since
    qint64 blanks = 0;                      ///< said to be on the aircraft's end then
    qint64 unitBlanks = 0;                  ///< and on the unit's end
    std::vector<HardwareRemoved> hardware{}; ///< said to have come off then
    std::vector<Listing> listed{};          ///< what its rows that were struck asked it to show
    std::set<PersonId> askedLessBy{};       ///< who made the list ask less of it, by whatever entry
    bool operator==(const LeftByStrikes &) const = default;
};

/// Keeps what an entry that was struck, or that fell with one, leaves behind.
void keepWhatIsLeft(JobState &job, const Statement &said);

/// For an interface that has just come onto the list: what was left of it under the same id.
void takeUpWhatWasLeft(JobState &job, const InterfaceId &id);

/// For when it is undone anew, or an inspector found it untouched: what was counted then has been counted again.
void forgetTheUndoing(LeftByStrikes &left);

/// What is left of an interface, on the list or not; nullptr where nothing is.
const LeftByStrikes *leftOf(const JobState &job, const InterfaceId &id);

} // namespace core
