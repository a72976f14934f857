// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/unit.hpp"

#include <algorithm>

#include "core/job/state.hpp"

namespace core {

namespace {

/// At the unit's ends, since an entry: fitted, less those that went missing.
qint64 blankedSince(const JobState &job, qint64 seq)
{
    qint64 blanks = 0;
    for (const InterfaceState &item : job.items) {
        if (!item.removal)
            continue;
        if (item.removal->mark.seq > seq)
            blanks += item.removal->unitBlanksFitted;
        for (const MissingBlanks &missing : item.removal->blanksMissing) {
            if (missing.end == End::Unit && missing.mark.seq > seq)
                blanks -= missing.count;
        }
    }
    return blanks;
}

} // namespace

const QString &serialToPutUp(const JobState &job) { return job.reversed ? job.facts.outgoingSerial : job.facts.incomingSerial; }

qint64 blanksOfTheUnitToPutUp(const JobState &job)
{
    if (job.reversed)
        return job.unit.off ? std::max<qint64>(0, job.unit.off->openingsBlanked + blankedSince(job, job.unit.off->mark.seq)) : 0;
    return job.unit.in ? job.unit.in->shippingBlanks : 0;
}

} // namespace core
