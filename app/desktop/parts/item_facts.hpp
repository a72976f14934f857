// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/job/state.hpp"
#include "core/kinds/kinds.hpp"
#include "core/register/register.hpp"

namespace desktop {

/// One thing that was recorded or is asked for, as a row: what, the value, who and when.
struct Fact {
    QString title;
    QString value;
    QString by;
};

/// Everything recorded about an item since it was last undone, in the order in which it happens.
std::vector<Fact> recordedAbout(const core::InterfaceState &item, const core::JobState &job, const core::Register &reg);

/// What the list says about it: limits, seal, halves, reference, groups.
std::vector<Fact> listedAbout(const core::InterfaceState &item, const core::Kinds &kinds);

/// Requirement by requirement: its title, whether it has been shown, and what is missing.
struct Shown {
    QString title;
    bool isShown;
    QString missing;
};
std::vector<Shown> requirementsOf(const core::InterfaceState &item);

} // namespace desktop
