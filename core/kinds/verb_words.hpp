// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/kinds/kind.hpp"

namespace core {

/// One of a kind's verbs as it is said to a person: translated. English has one form for several uses ("set up" is the order and what was
/// done), so translations are told which of the four it is: the member's name in resources/kinds.
QString verbInWords(const Verbs &verbs, QString Verbs::*which);

} // namespace core
