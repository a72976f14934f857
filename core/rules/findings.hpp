// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

std::optional<Refusal> findingIsNew(const Case &c);
std::optional<Refusal> findingsInterfaceIsListed(const Case &c);
std::optional<Refusal> findingIsOpen(const Case &c);
/// A finding is closed by an authorised inspector who had no hand in the interface that it is on.
std::optional<Refusal> findingIsClosedByInspector(const Case &c);

/// What is deferred has a last day that is still to come, and nothing else has one.
std::optional<Refusal> deferralHasALimit(const Case &c);

/// A photo that is said to be of a finding shows the item that it is on.
std::optional<Refusal> photosFindingIsOnTheItem(const Case &c);

extern const Rule findingOfPhoto, findingDeferral, findingNew, findingItem, findingOpen, findingCloser;

} // namespace core::rules
