// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QProcessEnvironment>
#include <QString>

namespace logging {

/// Where the log lies: `remate` in $XDG_STATE_HOME, or in ~/.local/state when that is not set or not absolute.
/// Source: XDG Base Directory Specification 0.8.
QString stateFolder(const QProcessEnvironment &environment);

} // namespace logging
