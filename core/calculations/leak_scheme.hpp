// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/measure/leak.hpp"
#include "core/tables/look_up_tables.hpp"

namespace core {

/// The schemes of the look-up table of leak classes, each once, in its order.
QStringList leakSchemesIn(const LookUpTables &tables);

/// A scheme of that table as measure::classOf takes it. The table tells of each end whether exactly that size belongs to the class, as
/// its source prints it; where a source gives one size to two classes, both have it, and classOf takes the worse and says so.
/// Nothing when the table has no scheme of that name.
std::optional<measure::LeakScheme> leakSchemeNamed(const QString &name, const LookUpTables &tables);

} // namespace core
