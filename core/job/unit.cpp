// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/unit.hpp"

#include "core/job/state.hpp"

namespace core {

const QString &serialToPutUp(const JobState &job) { return job.reversed ? job.facts.outgoingSerial : job.facts.incomingSerial; }

} // namespace core
