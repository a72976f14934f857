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

/// What is wrong with how a body tells something, and the field in which to put it right.
struct FieldFault {
    QLatin1String field;
    QString sentence;
};

/// How lifting points are told: `points` is 1, and then neither `span` nor `centre` is given, or 2, and then both are. Asked by the rule
/// and by the calculator; nothing while `points` is missing, which the form says.
std::optional<FieldFault> faultOfLiftingPoints(const json::Object &body);

/// A lift on the day that the body names, not before the day it is signed, which is that of the lift where none is named. Nothing where
/// faultOfLiftingPoints has a word.
std::optional<measure::LiftPlan> liftIn(const json::Object &body, QDate signedOn);

struct ServicingFigure {
    Quantity quantity;
    Quantity least;
    Quantity most;
};
std::optional<ServicingFigure> servicingIn(const json::Object &body);

/// How the aircraft's balance is told: by moment or by centre of gravity, one of them. Asked by the rule and by the calculator.
std::optional<FieldFault> faultOfBalance(const json::Object &body);

/// Of moment and centre of gravity the one that is told; `mac` where it is given.
std::optional<measure::UnitSwap> swapIn(const json::Object &body);

/// The figures of one kind that stand, in the order of their entries.
std::vector<const JobFigure *> figuresOf(const JobState &job, QStringView kind);

} // namespace core
