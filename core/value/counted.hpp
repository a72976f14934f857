// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

namespace core {

/// How many of something, in words: `one` where there is one, else `many` with the number in its place %1.
/// For sentences that need no catalogue of plural forms to be right as they are written.
inline QString counted(qsizetype number, const QString &one, const QString &many) { return number == 1 ? one : many.arg(number); }

} // namespace core
