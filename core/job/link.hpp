// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <map>
#include <memory>

#include "core/job/mark.hpp"
#include "core/ledger/entry.hpp"

namespace core {

struct JobState;

/// Another job that is a part of the same piece of work, as the lead named it.
struct Link {
    LedgerId ledger;
    QString workOrder; ///< of that job
    Mark mark;
    bool operator==(const Link &) const = default;
};

/// An interface that was given over to a linked job. From then on nothing is done with it in this one.
struct Sent {
    LedgerId to;
    Mark mark;
    bool operator==(const Sent &) const = default;
};

/// An interface that came from a linked job.
struct TakenOn {
    LedgerId from;
    Mark mark;
    bool operator==(const TakenOn &) const = default;
};

/// Another job as it stood at one of its heads. It knows no further jobs of its own.
struct SeenJob {
    Head head;
    std::shared_ptr<const JobState> job;
};

/// The other jobs that a job can see, each as it stood at the head that was pinned last. They are no part of what the job's ledger says:
/// an entry is taken in without them, and two states that differ in them alone are equal.
struct SeenJobs {
    std::map<LedgerId, SeenJob> byLedger;
    bool operator==(const SeenJobs &) const { return true; }
};

} // namespace core
