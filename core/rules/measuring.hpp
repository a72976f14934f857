// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Torque, bonding, safetying, and the tools they are made with.

std::optional<Refusal> torqueIsAskedFor(const Case &c);
std::optional<Refusal> fastenerExists(const Case &c);
std::optional<Refusal> fastenerHasNoReading(const Case &c);
/// What arrives at the fastener lies in the band, with the drag where it is added; exact, across units. Where the job asks for a
/// guard band, inside it by the tool's deviation. See core/measure/acceptance.hpp.
std::optional<Refusal> torqueIsInBand(const Case &c);
/// Torque half done by another starts again from the first fastener, unless it was taken over by signature.
std::optional<Refusal> torqueIsNotHalfDoneByAnother(const Case &c);
std::optional<Refusal> thereIsTorqueToTakeOver(const Case &c);
std::optional<Refusal> bondingIsWithinLimit(const Case &c);
/// A second reading where the list asks for two.
std::optional<Refusal> bondIsReadAsOftenAsAsked(const Case &c);
/// The recorded zero of the leads is not more than the reading.
/// Source: AC 43.13-1B (9/8/98) par. 11-188 j: the resistance is measured when the connection is made.
std::optional<Refusal> bondIsMeasuredAfterTorque(const Case &c);
std::optional<Refusal> leadsWereZeroed(const Case &c);
/// The tool is registered, not withdrawn, and in calibration on the day of the entry.
std::optional<Refusal> toolIsInCalibration(const Case &c);
std::optional<Refusal> readingIsInToolRange(const Case &c);
std::optional<Refusal> safetyingIsAskedFor(const Case &c);
/// Safetied after torque: lockwire on an untorqued fastener looks finished.
std::optional<Refusal> torqueIsComplete(const Case &c);

extern const Rule torqueAsked, fastener, fastenerOnce, torqueBand, torqueTakenOver, takeOver, bondingLimit, bondedAfterTorque, bondingTwice, bondingZero, toolCalibrated, toolRange, safetyingAsked, safetiedAfterTorque;

} // namespace core::rules
