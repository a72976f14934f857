// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/job/state.hpp"

namespace core {

/// The next tag number that no interface of this job has had: the first that is left of the blocks that are out, else one more than the
/// greatest number so far.
QString nextTag(const JobState &job);
/// So many of them, for several interfaces at once.
std::vector<QString> nextTags(const JobState &job, std::size_t count);

/// The next finding number: `F1`, `F2` …
QString nextFinding(const JobState &job);

/// A number for a temporary item that the job has not used: `T3`.
QString nextTemporary(const JobState &job);

/// The same for an accessory: `AC1`, `AC2` …
QString nextAccessory(const JobState &job);

/// The same for a test: `R1`, `R2` …
QString nextTest(const JobState &job);
/// An id for an interface that is on no list: `X1`, `X2` …
QString nextUnlisted(const JobState &job);


/// The body of `interface.taken_on` for an item of a linked job, as that job has it: how it was listed, and how it was left. The zone is the
/// one of that name here, else the first.
json::Object takenOnAs(const JobState &job, const JobState &from, const InterfaceState &item);

} // namespace core
