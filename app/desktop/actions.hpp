// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>
#include <QString>

#include <vector>

#include "app/desktop/deeds.hpp"
#include "core/kinds/kinds.hpp"

namespace desktop {

/// What an action needs to be chosen before.
enum class Over {
    Items, ///< one interface or several: one entry each
    Item,  ///< exactly one interface
    Job,
    Subject, ///< what the page names: a finding, an entry
};

/// What an action must be given besides a form.
enum class Brings { Nothing, File };

/// Whose hand the entry may be in.
enum class Signs {
    Anybody,
    WhoLooked, ///< the person at the computer, where they are known: what their eyes saw nobody else signs for
};

/// One thing that a person can do on a job, in one line: its words come from the act's row in core's catalogue.
struct ActionLine {
    QLatin1String kind; ///< of the entries that it makes
    Over over;
    const char *shortcut; ///< as QKeySequence reads it; empty for none
    /// The entries to be, one for each signature line.
    std::vector<Seed> (*seeds)(const Situation &);
    /// Fields that are asked for each entry by itself: each fastener has its own reading.
    std::vector<QLatin1String> each;
    Brings brings;
    /// Whether the action is about such an item at all: nobody is offered to torque what has no torque.
    bool (*concerns)(const core::InterfaceState &);
    QLatin1String manual;  ///< the page of the manual that tells of it
    QLatin1String section; ///< the section there, as manual::sectionName has it; empty where the page has none for it
    Signs signs = Signs::Anybody;
};

/// All actions, in the order in which the card shows them.
const std::vector<ActionLine> &actions();
/// The action that makes entries of that kind. It exists, or the program is wrong.
const ActionLine &actionFor(QLatin1String kind);

/// The words on the button: the kind's own verb where all chosen items share one ("Release"), or the temporary item has one ("Pull"), the act's
/// otherwise.
QString actionText(const ActionLine &action, const core::Kinds &kinds, const core::JobState &job, const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject = {});

/// The icon, named after the kind of entry.
QString iconPath(const ActionLine &action);

/// Whether the action is about what is chosen at all; whether it may be signed is for the rules.
bool comesIntoQuestion(const ActionLine &action, const core::JobState &job, const std::vector<core::InterfaceId> &items, bool hasSubject);

/// The one act that leads this item on towards closure, or nothing.
std::optional<QString> nextAct(const core::InterfaceState &item);

/// The body of a seed with a likely value in each field that is still empty and must not be, so that the rules beyond the
/// form can be asked before anybody typed.
core::json::Object probeOf(QLatin1String kind, const Seed &seed, const Situation &situation);

} // namespace desktop
