// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/unit.hpp"

#include "core/job/state.hpp"

namespace core {

const QString &serialToPutUp(const JobState &job) { return job.reversed ? job.facts.outgoingSerial : job.facts.incomingSerial; }

qint64 blanksOfTheUnitToPutUp(const JobState &job)
{
    if (job.reversed)
        return job.unit.off ? job.unit.off->openingsBlanked : 0;
    return job.unit.in ? job.unit.in->shippingBlanks : 0;
}

} // namespace core
