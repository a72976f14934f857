// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/acts/act.hpp"
#include "core/tables/look_up_tables.hpp"

class QWidget;

namespace desktop {

class Ask;
class TableDialog;

/// Opens the look-up table of a field over `parent`; where the field has several, the one that the person chooses, and nullptr
/// when they choose none.
TableDialog *lookUp(const core::LookUpTables &tables, const std::vector<core::FromTable> &lines, const core::Field &field, Ask &ask, QWidget *parent);

} // namespace desktop
