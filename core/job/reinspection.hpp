// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>

#include "core/job/mark.hpp"

namespace core {

/// An acceptance by somebody who had a hand in the work, since nobody else was there.
struct Reinspection {
    Mark mark;
    QString cause;     ///< why it was not foreseen
    PersonId approver; ///< who allowed it
    bool operator==(const Reinspection &) const = default;
};

struct InterfaceState;
struct JobState;

/// The re-inspection behind an acceptance, or nullptr where an independent person made it.
const Reinspection *reinspectionBehind(const InterfaceState &item, const Mark &acceptance);

/// The last entry by which somebody worked on the interface, or nothing.
std::optional<Mark> lastWorkOn(const InterfaceState &item);

} // namespace core
