// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDate>

#include "core/job/state.hpp"
#include "core/measure/lifting.hpp"
#include "core/measure/weight_change.hpp"

namespace core {

// The bodies of figures of the whole job as core/measure takes them. Nothing where a member is missing or of another form: the form
// says so when it is asked.

/// A lift on the day that the body names, not before the day it is signed, which is that of the lift where none is named. One of `span` and `centre` alone is for a rule to refuse.
std::optional<measure::LiftPlan> liftIn(const json::Object &body, QDate signedOn);

struct ServicingFigure {
    Quantity quantity;
    Quantity least;
    Quantity most;
};
std::optional<ServicingFigure> servicingIn(const json::Object &body);

/// Of moment and centre of gravity the one that is told; both or none are for a rule to refuse.
std::optional<measure::UnitSwap> swapIn(const json::Object &body);

} // namespace core
