// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <set>

#include "core/job/state.hpp"
#include "core/register/register.hpp"
#include "core/rules/refusal.hpp"

namespace core {

/// Everything that stops closure, in the order of the list, then findings, then the handover, then the linked jobs that are neither closed
/// nor ready. Empty means: may be closed.
LooseEnds looseEnds(const JobState &job, const Register &reg);

/// The same without what only waits for linked jobs to become ready. Empty means: the job is ready, and waits for closing together at most.
LooseEnds ownLooseEnds(const JobState &job, const Register &reg);

/// Or it is about a finding, a test, a tool or another thing, which may have the id of an interface by chance.
bool isAboutInterface(const LooseEnd &end);

/// Those of the interface.
LooseEnds looseEndsOf(const LooseEnds &all, const InterfaceId &item);

/// The interfaces that one of them is about.
std::set<InterfaceId> looseItems(const LooseEnds &all);

/// What the outgoing lead signs: every interface that is open or half done, as the body of `handover.given` holds it.
/// Each record has `interface`, `stage` and, where something is missing, `missing`.
json::Array openAtHandover(const JobState &job);

} // namespace core
