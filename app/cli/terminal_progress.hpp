// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <functional>

namespace cli {

/// Tells on the standard error how far a long work has come, in one line that is written over, where that is a terminal; elsewhere nothing.
/// Ctrl+C ends the program: nothing is half written.
std::function<bool(qint64 done, qint64 all)> terminalProgress(const QString &what);

} // namespace cli
