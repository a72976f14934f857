// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/measure/torque_wrench.hpp"

namespace core::measure {

/// How a reading near the edge of its band is taken.
enum class DecisionRule {
    Simple,  ///< inside the band, edges included: no guard band
    Guarded, ///< inside the band by the tool's permissible deviation at least
};

/// A limit with a guard band: what a reading may be at most (of an upper limit) or at least (of a lower one).
/// Formula: A = TL − w, A = TL + w; w of 0 is simple acceptance. Source: ILAC-G8:09/2019 par. 4.1; JCGM 106:2012 (from memory).
Rational guardedUpper(const Rational &limit, const Rational &guard);
Rational guardedLower(const Rational &limit, const Rational &guard);

/// What a tool may be off at a reading: so many percent of it.
/// Source: ISO 6789:2003 and ISO 6789-1:2017 give the percents by class; a calibration certificate may give its own.
Rational permissibleDeviation(const Rational &reading, const Decimal &percent);

/// Why so many percent are no deviation of a tool, or nothing: 0 or less, for no tool is exact, and 100 or more. Common practice.
std::optional<QString> whyNoDeviation(const Decimal &percent);

/// A torque reading against its band.
struct TorqueJudgement {
    Rational applied;                  ///< at the fastener, N·m
    std::optional<Rational> deviation; ///< of the tool there; nothing when the register does not know it
    std::optional<QString> refused;    ///< why it is not accepted
    Working working;
};

/// Judges what the wrench showed. Guarded acceptance by a tool of unknown deviation is refused. The error is a lever that has no
/// answer.
Measured<TorqueJudgement> judgeTorque(const Quantity &indicated, const std::optional<Lever> &lever, const TorqueBand &band, const std::optional<Decimal> &deviationPercent,
                                      DecisionRule rule);

} // namespace core::measure
