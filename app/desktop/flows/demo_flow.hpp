// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "app/desktop/ask.hpp"
#include "core/kinds/kinds.hpp"
#include "core/ledger/wrapped_key.hpp"

class QWidget;

namespace desktop {

/// Asks where, makes the demo store there, and tells everybody's PIN. The path, or nothing when it was not made.
std::optional<QString> makeDemo(const core::Kinds &kinds, core::WrapCost cost, Ask &ask, QWidget *window);

} // namespace desktop
