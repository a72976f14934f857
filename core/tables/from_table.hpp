// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>

namespace core {

/// A look-up table that helps with a field of a form. Nothing is taken from a table unasked.
struct FromTable {
    QLatin1String field;
    QLatin1String table;
    QLatin1String column{}; ///< whose cell fits the field and may be taken over; empty: the table is there to be read
};

} // namespace core
