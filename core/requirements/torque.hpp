// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>

#include "core/job/state.hpp"

namespace core {

/// One fastener in one pass, both from 1.
struct TorqueStep {
    qint64 pass;
    qint64 fastener;
    bool operator==(const TorqueStep &) const = default;
};

/// How many passes the specification has; 1 where it names none.
qint64 passesOf(const TorqueSpec &spec);

/// Everything that tightening an interface takes, pass after pass, each in the given order, or by number where there is none.
std::vector<TorqueStep> torqueSteps(const TorqueSpec &spec);
/// What of it has no reading since the item was last reconnected or disturbed.
std::vector<TorqueStep> torqueStepsLeft(const InterfaceState &item);

/// True when every fastener has its readings of this pass and those before it.
bool isPassDone(const InterfaceState &item, qint64 pass);

/// The steps that may come next without a word: of the pass that is not finished, those that were passed over, and the one after
/// the furthest; any of it where no order is given.
/// Source: a tightening sequence is kept, pass by pass: common practice.
std::vector<TorqueStep> nextTorqueSteps(const InterfaceState &item);

/// Which fasteners have not all their readings; ascending.
std::vector<qint64> fastenersWithoutTorque(const InterfaceState &item);

/// "Torque is missing on fastener 3, 4 of 4", or nothing when all have theirs or none is asked for.
std::optional<QString> missingTorque(const InterfaceState &item);

/// True when the item's torque was begun by somebody else, is unfinished, and was not taken over by this person's signature.
bool isHalfDoneByAnother(const InterfaceState &item, const PersonId &person);

/// True when a reading by this person starts the item's torque again: half done by another, first fastener of the first pass.
/// Source: an interrupted torque sequence is not resumed by another pair of hands: common practice.
bool startsTorqueAgain(const InterfaceState &item, const PersonId &person, const TorqueStep &step);

} // namespace core
