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

extern const Rule findingNew, findingItem, findingOpen, findingCloser;

} // namespace core::rules
