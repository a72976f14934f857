// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/job/hold_point.hpp"

namespace desktop {

/// `Holds back: Release (every mount), Remove (hoist, sling)`
QString heldBackInWords(const core::HoldPoint &hold);

/// All that a hold point says: what it asks for, what is to be seen, what it holds back; a line each.
QStringList holdInWords(const core::HoldPoint &hold);

} // namespace desktop
