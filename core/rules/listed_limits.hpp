// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// What a list may ask for beside the torque band: what is asked for here is what readings are held against.

/// Passes rise to 100 % of the final torque, ten at most; a last one round the ring repeats it.
/// A member of a listing that is missing beside others which say nothing without it.
struct MissingPart {
    QLatin1String member;
    QString sentence;
};
/// What is missing of torque and bond where they are told by half. Where the requirement itself is asked for it tells of its parts.
std::vector<MissingPart> missingParts(const json::Object &body);
std::optional<Refusal> specsAreWhole(const Case &c);
std::optional<Refusal> passesAreSound(const Case &c);
/// The order names each fastener once, or is `cross`.
std::optional<Refusal> orderIsSound(const Case &c);
/// A turn runs from less to more, and the least drag of a nut is not below zero.
std::optional<Refusal> turnAndDragAreSound(const Case &c);
/// One or two bonding readings.
std::optional<Refusal> bondingReadingsAreSound(const Case &c);
/// Drops to the millilitre belong to a rate, and lie where measure::whyNoDropSize() has them.
std::optional<Refusal> dropSizeIsSound(const Case &c);
/// A rate of leak is not below zero.
std::optional<Refusal> leakRateIsSound(const Case &c);
/// A leak's worst class is one of the job's, and not the worst of them unless a rate limits it besides.
std::optional<Refusal> leakClassIsSound(const Case &c);
/// All three.
std::optional<Refusal> leakLimitIsSound(const Case &c);

extern const Rule specsWhole, passesSound, orderSound, turnAndDragSound, bondingReadingsSound, leakLimitSound;

} // namespace core::rules
