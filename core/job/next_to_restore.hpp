// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/job/state.hpp"
#include "core/register/register.hpp"

namespace core {

/// An interface that is off, and what keeps it from going on.
struct NextToRestore {
    InterfaceId item;
    QString zone;
    std::optional<PersonId> technician; ///< who looks after the zone
    std::vector<QString> inTheWay;      ///< a sentence each; empty: it may go on now
};

/// What is off, in the order in which it goes on again: what may go on first, and each of these parts in the reverse of its removal, so that
/// what came off last goes on first. What stands in the way, the rules of a reconnection say.
/// Source: installation is the reverse of removal: common practice.
std::vector<NextToRestore> nextToRestore(const JobState &job, const Register &reg);

} // namespace core
