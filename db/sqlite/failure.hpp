// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/value/result.hpp"

namespace db {

/// An SQLite result code, told to a technician: what happened and what to do next. `extendedCode` is SQLite's extended result
/// code, `systemError` the errno behind it or 0. Must not be called with SQLITE_OK, SQLITE_ROW or SQLITE_DONE.
core::Error errorFrom(int extendedCode, int systemError);

} // namespace db
