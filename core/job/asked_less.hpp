// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/value/id.hpp"

namespace core {

struct InterfaceState;
struct Listing;

/// What one listing asks for and another does not, in words for a sentence: "a requirement (bonding), the torque band". Empty when the
/// other asks for as much or more. A limit that lets through what the other one would have refused is less, whatever else it refuses;
/// so is another kind or zone, by which hold points may pass it over. Name, reference and note ask for nothing.
QString whatIsAskedLess(const Listing &before, const Listing &after);

/// Remembers who made the list ask less of an interface than one of its rows that were struck.
void noteAskedLess(InterfaceState &item, const PersonId &by);

} // namespace core
