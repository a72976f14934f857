// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// How a fastener is tightened: its pass and turn, its nut, and what the wrench was set to.

/// Where there are several passes, the entry names one of them.
std::optional<Refusal> passExists(const Case &c);
/// Fasteners in their order, passes one after the other. Where the job lets fasteners be skipped, a reason lifts the order within a
/// pass, never the passes.
std::optional<Refusal> fastenerIsNext(const Case &c);
/// Drag that is added to the band is measured, and never below zero.
std::optional<Refusal> dragIsMeasured(const Case &c);
/// A self-locking nut that is used again has its least drag.
/// A drag that was measured in the first pass is the one of the later passes.
std::optional<Refusal> dragIsTheOneMeasured(const Case &c);
std::optional<Refusal> nutLocks(const Case &c);
/// An adapter is told whole, on the wrench's own length, and its setting with it.
std::optional<Refusal> adapterIsTold(const Case &c);
/// What the wrench was set to is one of its marks and gives a torque of the band.
std::optional<Refusal> settingServes(const Case &c);
/// The turn after the torque lies in its band.
std::optional<Refusal> turnIsInBand(const Case &c);

extern const Rule torquePass, torqueOrder, torqueDrag, torqueDragKept, torqueNut, wrenchAdapter, wrenchSetting, torqueTurn;

} // namespace core::rules
