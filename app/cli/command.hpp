// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>
#include <QString>

#include <vector>

#include "app/cli/arguments.hpp"
#include "app/logging/log.hpp"
#include "app/session/clock.hpp"
#include "core/value/json.hpp"
#include "core/value/result.hpp"

namespace cli {

/// What the program ends with. Stable: scripts test it.
enum class Exit {
    Good = 0,
    No = 1,     ///< the answer is no: refused, loose, faulty, wrong secret
    Misused = 2, ///< the command line or a file handed over is not as it must be
    World = 3,  ///< something could not be read or written
    Partly = 4, ///< as far as it was looked at all is good, but not all could be: the answer says what
};

Exit exitOf(core::ErrorCode code);

struct ExitRow {
    Exit exit;
    const char *meaning; ///< marked for translation in context "Cli"
};

/// What each means, for the help and the manual.
const std::vector<ExitRow> &exitRows();

/// What a command found out, in words and for programs. One of the two is printed on the standard output.
struct Answer {
    Exit exit = Exit::Good;
    QString text; ///< lines, without the last line's end; empty prints nothing
    core::json::Object json;
    QString trouble{}; ///< for the standard error, beside the answer
};

enum class OptionSort {
    Position, ///< `STORE`
    Positions, ///< the same, any number of times, after the others
    Value,    ///< `--job WO-1`
    Values,   ///< the same, any number of times
    Flag,     ///< `--closed`
};

enum class Given { Always, MayBe };

/// One thing that a command can be told.
struct Option {
    QLatin1String name; ///< without dashes
    OptionSort sort;
    Given given;
    const char *placeholder; ///< in the help: `FILE`; empty for a flag
    const char *help;        ///< marked for translation in context "Cli"
};

struct Context {
    session::Clock clock;
    const logging::Log &log;
};

enum class Fonts { NotNeeded, Needed };

/// One command. Its file is in commands/, its line in commands.cpp.
struct Command {
    QLatin1String name;
    const char *summary; ///< marked for translation in context "Cli"
    std::vector<Option> options;
    Fonts fonts; ///< whether it lays out pages
    core::Result<Answer> (*run)(const Arguments &, const Context &);
};

const std::vector<Command> &commands();
const Command *findCommand(QStringView name);

// Shorthand for rows.
Option position(QLatin1String name, const char *placeholder, const char *help, Given given = Given::Always);
Option positions(QLatin1String name, const char *placeholder, const char *help);
Option value(QLatin1String name, const char *placeholder, const char *help, Given given = Given::MayBe);
Option values(QLatin1String name, const char *placeholder, const char *help);
Option flag(QLatin1String name, const char *help);

// Options that many commands share.
Option storeOption();
Option jobOption();
Option pinFileOption();
Option administratorOption();

} // namespace cli
