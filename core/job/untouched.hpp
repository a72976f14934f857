// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>

#include "core/job/mark.hpp"

namespace core {

struct InterfaceState;

/// That an interface of the list is not there on this unit, or not part of this job.
struct NotApplicable {
    Mark mark;
    QString reason;
    std::optional<Mark> agreed; ///< by a second person
    bool operator==(const NotApplicable &) const = default;
};

/// True when it was said that the interface is not applicable, and a second person has to agree: it is critical; or it was said to be
/// undone, which was struck, and then that person is an inspector.
bool waitsForAgreement(const InterfaceState &item);

/// True when nothing of the interface is asked for: said, and agreed to where that is asked for.
/// Source: a step that does not apply is marked so at the time, never left blank: common practice.
bool isNotApplicable(const InterfaceState &item);

/// True when the interface was never touched in this job and somebody who looked at it said so.
bool isConfirmedUndisturbed(const InterfaceState &item);

/// The last entry on which it rests that nothing is asked for of an interface that was never undone, or nothing where that is not so.
std::optional<qint64> letAloneWith(const InterfaceState &item);

} // namespace core
