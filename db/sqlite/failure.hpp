// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/value/result.hpp"

namespace db {

/// An SQLite result code, told to a technician: what happened and what to do next. `extendedCode` is SQLite's extended result
/// code, `systemError` the errno behind it or 0. Must not be called with SQLITE_OK, SQLITE_ROW or SQLITE_DONE.
core::Error errorFrom(int extendedCode, int systemError);

/// The same for a COMMIT. When the disk did not confirm what was written, the entry may be found after the next start or not,
/// and nobody may be told that it was not recorded.
core::Error errorOfCommit(int extendedCode, int systemError);

/// The same for writing the side file back: no word about recording, which was done before.
core::Error errorOfWritingBack(int extendedCode, int systemError);

} // namespace db
