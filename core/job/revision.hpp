// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/job/mark.hpp"

namespace core {

/// The maintenance data went to another revision while the job was under way. What it asks of the interfaces that are named waits until
/// somebody has looked it up.
struct Revision {
    Mark mark;
    QString before;
    QString revision;
    QString changed; ///< what is new in it
    std::vector<InterfaceId> items{}; ///< to be looked up again
    bool operator==(const Revision &) const = default;
};

/// Entries whose moments somebody does not trust. They stay as they were signed; their order is that of the ledger.
struct TimeInDoubt {
    Mark mark;
    qint64 first; ///< sequence number of the first entry in doubt
    qint64 last;
    QString reason;
    QString difference; ///< as it was found, where anybody knows
    bool covers(qint64 seq) const { return seq >= first && seq <= last; }
    bool operator==(const TimeInDoubt &) const = default;
};

struct JobState;
struct Listing;

/// The interfaces that a revision named, by the sequence number of its entry; none where that is no revision.
std::vector<InterfaceId> revisedBy(const JobState &job, qint64 seq);

/// Who called the time of an entry in doubt, or nullptr.
const TimeInDoubt *doubtOfTime(const JobState &job, qint64 seq);

/// What cannot change under a joint that is made: its seal, its halves, its hardware. Empty where none differs.
QString whatIsBuiltIn(const Listing &before, const Listing &after);

} // namespace core
