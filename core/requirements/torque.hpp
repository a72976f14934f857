// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>

#include "core/job/state.hpp"

namespace core {

/// Which fasteners have no reading since the item was last reconnected or disturbed; ascending.
std::vector<qint64> fastenersWithoutTorque(const InterfaceState &item);

/// "Fasteners 3, 4 of 4 have no torque reading", or nothing when all have one or none is asked for.
std::optional<QString> missingTorque(const InterfaceState &item);

/// True when the item's torque was begun by somebody else, is unfinished, and was not taken over by this person's signature.
bool isHalfDoneByAnother(const InterfaceState &item, const PersonId &person);

/// True when a reading by this person on this fastener starts the item's torque again: half done by another, first fastener.
/// Source: an interrupted torque sequence is not resumed by another pair of hands: common practice.
bool startsTorqueAgain(const InterfaceState &item, const PersonId &person, qint64 fastener);

} // namespace core
