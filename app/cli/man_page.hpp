// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QString>

#include <vector>

#include "app/cli/command.hpp"

namespace cli {

/// The manual page of remate-cli in man(7), made of the commands' own rows, so that it tells of every command and option and of no other.
/// `released` is the day of the version, as YYYY-MM-DD.
QByteArray manPage(const std::vector<Command> &commands, const QString &version, const QString &released);

} // namespace cli
