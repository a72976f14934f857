// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/measure/leak.hpp"
#include "core/tables/look_up_tables.hpp"

namespace core {

/// The schemes of the look-up table of leak classes, each once, in its order.
QStringList leakSchemesIn(const LookUpTables &tables);

/// A scheme of that table as measure::classOf takes it. The table tells sizes, not to which class an edge belongs: both ends are taken as
/// included, so that an edge falls to the worse of two classes, and classOf says so.
/// Nothing when the table has no scheme of that name.
std::optional<measure::LeakScheme> leakSchemeNamed(const QString &name, const LookUpTables &tables);

} // namespace core
