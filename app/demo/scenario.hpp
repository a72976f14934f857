// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDate>

#include "app/demo/cast.hpp"
#include "core/kinds/kinds.hpp"
#include "core/ledger/wrapped_key.hpp"
#include "db/store.hpp"

/// An engine change on a fictional twin-turboprop freighter: invented people, parts and numbers, two shifts, one day; and the
/// build-up of the incoming engine in the shop, a job linked with it.
/// The story is in resources/demo, one line an act.
namespace demo {

/// How far the story is told.
enum class Until {
    SecondShift, ///< in the middle of the second shift, with loose ends of every sort
    Closed,      ///< to the release
};

/// What came of it.
struct Played {
    core::LedgerId job;
    core::LedgerId shop; ///< the build-up of the incoming engine, linked with it
    core::LedgerId reg;
    std::vector<CastMember> cast;
    core::Head head;       ///< of the job
    core::Instant endedAt; ///< the moment of its last entry
};

/// Plays the scenario into an empty store, as of `day` (UTC). Each entry is admitted, signed with its author's own key and
/// appended, as if typed in. Fails when the store has a register already.
core::Result<Played> play(db::Store &store, const core::Kinds &kinds, QDate day, Until until, core::WrapCost cost = core::everydayCost);

} // namespace demo
