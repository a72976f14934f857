// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"
#include "core/measure/acceptance.hpp"
#include "core/register/register.hpp"
#include "core/requirements/torque.hpp"

namespace core {

/// What a torque entry amounts to, put together from the list, the job, the register and its own body: what rules, sheets and
/// records ask core/measure with.
struct TorquePlan {
    TorqueStep step;
    measure::AskedTorque asked;
    measure::TorqueBand band; ///< of `asked`: of this pass, with the drag where it is added
    std::optional<measure::Lever> lever;
    std::optional<measure::WrenchScale> scale; ///< of the tool, when the register knows it
    std::optional<Decimal> deviation;          ///< of the tool, in percent of the reading
    measure::DecisionRule rule;
};

/// The pass that a body names; 1 where it names none.
TorqueStep torqueStepOf(const json::Object &body);

/// Members that are missing or make no sense are passed over: form and rules say so when they are asked.
TorquePlan torquePlan(const TorqueSpec &spec, const JobFacts &facts, const Tool *tool, QDate day, const json::Object &body);

/// The day on which an entry's work was done, UTC: of its `done_at`, else of the entry itself. Whether a tool was in date, and what it
/// may have been off, is asked for that day.
QDate dayOfWork(const json::Object &body, Instant at);

/// The adapter that a body tells of; nothing while any of its members is missing.
std::optional<measure::Lever> leverIn(const json::Object &body);

/// A lever is told with all of its members or none.
bool isLeverHalfTold(const json::Object &body);

} // namespace core
