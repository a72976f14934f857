// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/measure/torque_wrench.hpp"

namespace core::measure {

/// The drag of a self-locking nut against the least with which it may be used again, shown; judged by whyNotReused.
struct NutDrag {
    std::optional<QString> refused;
    Working working;
};

/// Refuses a drag below 0 and a least that is not above 0: a nut that locks with nothing does not lock.
/// Source: AC 43.13-1B (9/8/98) par. 7-40 and table 7-2. The table begins at 7/16 in; for smaller sizes the maintenance data alone gives
/// a least.
Measured<NutDrag> nutDrag(const Quantity &prevailing, const Quantity &least);

/// Why a figure is no drag that could be added to this torque, or nothing: below 0, or as much as the least torque itself, which says
/// that the thread is damaged or that something else was written down. Common practice.
std::optional<QString> whyNoDragToAdd(const Quantity &drag, const Quantity &leastTorque);

/// Why a drag is too much, or nothing: above the greatest that the maintenance data gives.
std::optional<QString> whyTooMuchDrag(const Quantity &drag, const Quantity &greatest);

} // namespace core::measure
