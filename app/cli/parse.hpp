// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <variant>

#include "app/cli/command.hpp"

namespace cli {

/// A command that may be run.
struct Invocation {
    const Command *command;
    Arguments arguments;
    bool asJson;
};

/// Nothing to run: help or the version was asked for, or the command line is wrong.
struct Told {
    Exit exit;
    QString text;
};

/// Reads the command line.
std::variant<Invocation, Told> parse(int argc, const char *const *argv);

} // namespace cli
