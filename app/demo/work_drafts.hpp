// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "app/demo/play.hpp"
#include "app/demo/step.hpp"

namespace demo {

using Drafts = core::Result<std::vector<core::Draft>>;

/// Disconnections of everything the step names, each with the next tag and, where the item asks for it, its blanks.
Drafts undoDrafts(const Play &play, const Step &step);

/// Reconnections: tag and blanks recovered, halves read, a new seal by part and batch.
Drafts joinDrafts(const Play &play, const Step &step);

/// All that can be shown at once: torque on every fastener in all of its passes, bonding, safetying. A length as the step's choice is
/// an adapter in line on the wrench.
Drafts secureDrafts(const Play &play, const Step &step);

/// Leak checks that find everything dry, told as the step's words say.
Drafts leakDrafts(const Play &play, const Step &step);

/// Torque on the fasteners that the step's choice names.
Drafts torqueDrafts(const Play &play, const Step &step);

/// The item of that id, or nothing when the story names one that the list does not have.
core::Result<const core::InterfaceState *> itemOf(const Play &play, const QString &id);

} // namespace demo
