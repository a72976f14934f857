// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/measure/acceptance.hpp"

namespace core::measure {

/// What a torque tool may show at a torque, or give at a setting, in N·m.
struct ToolPoint {
    Rational torque;
    Rational least;
    Rational most;
    bool operator==(const ToolPoint &) const = default;
};

/// A torque with what the tool may be off there on both sides: T − T · p / 100 to T + T · p / 100. `percent` is not below 0.
ToolPoint toolPoint(const Rational &torque, const Decimal &percent);

/// The torques at which a tool is verified: the lowest point, 60 % and 100 % of its greatest torque. The lowest is 20 % of the greatest,
/// or the lowest marked value where it is given.
/// Source: ISO 6789:2003 (20, 60 and 100 %); ISO 6789-1:2017 (lowest marked value, from memory).
std::vector<Rational> verificationTorques(const Quantity &greatest, const std::optional<Quantity> &lowestMark);

/// A setting and the verification points, shown. Refuses a greatest torque or a setting that is not above 0, a lowest mark that is not
/// above 0 or leaves no range, a percent below 0 or of 100 and more, and a setting outside the range from the lowest point to the
/// greatest torque.
Measured<Working> toolCheckWorking(const Quantity &greatest, const std::optional<Quantity> &lowestMark, const Quantity &setting, const Decimal &percent);

} // namespace core::measure
