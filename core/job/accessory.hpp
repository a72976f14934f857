// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>
#include <vector>

#include "core/job/mark.hpp"

namespace core {

/// A part that is on the outgoing unit and moves to the incoming one, or leaves with the outgoing one; it is in exactly one place.
struct Accessory {
    AccessoryId id;
    Mark listed;
    QString name;
    QString part;
    QString serial;
    std::vector<InterfaceId> interfaces; ///< by which it is joined to its surroundings
    std::optional<Mark> moved;           ///< to the incoming unit; back to the outgoing one where the change was given up since
    std::optional<Mark> left;            ///< with the outgoing unit
    QString leftBecause;
    QString replacement; ///< serial number of what is on the incoming unit in its place; may be empty
    bool operator==(const Accessory &) const = default;
};

struct JobState;

/// True when it was said where the accessory is at the end of the job. Where the change was given up, one that nobody has touched is where it
/// was, and one that had moved has to move back.
bool isPlaced(const JobState &job, const Accessory &accessory);

} // namespace core
