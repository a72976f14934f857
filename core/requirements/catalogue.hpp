// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QAnyStringView>
#include <QLatin1String>
#include <QString>

#include <optional>
#include <vector>

#include "core/job/state.hpp"

namespace core {

/// One thing that restoring an interface must show.
struct Requirement {
    QLatin1String name;  ///< stable text in lists and entries: `torque`
    const char *title;   ///< for screens, marked for translation
    QLatin1String shownBy; ///< the act that shows it: `torque.applied`
    /// Why an interface list may not ask for it as it stands, or nothing: torque without a specification cannot be shown.
    std::optional<QString> (*unmet)(const Listing &);
    /// What is still missing, in words, or nothing when it has been shown. Asked only of a reconnected item.
    std::optional<QString> (*missing)(const InterfaceState &);
};

/// All requirements. A new one is a file beside this one and its line in catalogue.cpp.
const std::vector<Requirement> &requirements();
const Requirement *findRequirement(QStringView name);

bool asksFor(const Listing &listed, QAnyStringView requirement);

/// True when a reconnected item has shown all that its listing asks for.
bool isEverythingShown(const InterfaceState &item);

/// What a reconnected item still has to show, one sentence each.
std::vector<std::pair<const Requirement *, QString>> stillToShow(const InterfaceState &item);

} // namespace core
