// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/job/state.hpp"

namespace core {

/// Where a job went otherwise than its list.
struct Lesson {
    InterfaceId item;
    qint64 entry; ///< that says so
    QString what; ///< a few words: `undone, and on no list`
    bool operator==(const Lesson &) const = default;
};

/// All that differed, in the order of the entries that stand: what was on no list or listed after work had begun, what was listed and not
/// there or never touched, what was found open or still attached, rejected, disturbed again, and what findings were raised on.
std::vector<Lesson> lessonsOf(const JobState &job);

/// The list for the next job of this sort: the interfaces of this one, each with what was learnt of it at the end of its note. What
/// is not applicable stays, since another unit may have it.
std::vector<Listing> listForNextJob(const JobState &job);

} // namespace core
