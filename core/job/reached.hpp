// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"

namespace core {

/// The last entry on which it rests that an interface has come so far, or nothing where it has not. What was looked at with that entry is
/// no longer what is there once this number has grown.
/// What is not applicable has come as far as is asked; what was confirmed undisturbed as well, but for being off.
using Reached = std::optional<qint64>;

Reached disconnectedWith(const InterfaceState &item); ///< off, and neither found still attached nor held for a trial
Reached walkedRoundWith(const InterfaceState &item);  ///< and confirmed free by a second person
Reached reconnectedWith(const InterfaceState &item);
Reached torquedWith(const InterfaceState &item); ///< reconnected, and torqued where that is asked for
/// All that is shown before the system is filled and run: everything but the leak check.
Reached restoredWith(const InterfaceState &item);
Reached inspectedWith(const InterfaceState &item);

} // namespace core
