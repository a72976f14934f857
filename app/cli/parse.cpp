// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

// The only file that includes the command-line library: it takes long to compile.
#include "app/cli/parse.hpp"

#include <QCoreApplication>

#include <CLI/CLI.hpp>

#include <memory>
#include <sstream>

namespace cli {

namespace {

using namespace Qt::StringLiterals;

std::string words(const char *text) { return QCoreApplication::translate("Cli", text).toStdString(); }

bool isPosition(const Option &option) { return option.sort == OptionSort::Position || option.sort == OptionSort::Positions; }

std::string nameOf(const Option &option)
{
    // A position is told of, also when it is missing, as it stands in the usage line: STORE.
    if (isPosition(option))
        return option.placeholder;
    return "--" + std::string(option.name.data(), static_cast<std::size_t>(option.name.size()));
}

/// One command with what was typed for it.
struct Row {
    const Command *command;
    CLI::App *app;
    std::map<QString, std::vector<std::string>> typed;
    std::map<QString, bool> flags;
    bool asJson = false;
};

void addOption(Row &row, const Option &option)
{
    const QString name = option.name;
    if (option.sort == OptionSort::Flag) {
        row.app->add_flag(nameOf(option), row.flags[name], words(option.help));
        return;
    }
    CLI::Option *added = row.app->add_option(nameOf(option), row.typed[name], words(option.help));
    added->option_text(isPosition(option) ? " " : option.placeholder)->required(option.given == Given::Always)->allow_extra_args(option.sort == OptionSort::Positions);
    if (option.sort == OptionSort::Positions)
        added->expected(-1)->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    else if (option.sort == OptionSort::Values)
        added->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    else
        added->expected(1)->multi_option_policy(CLI::MultiOptionPolicy::Throw);
}

std::unique_ptr<Row> addCommand(CLI::App &app, const Command &command)
{
    auto row = std::make_unique<Row>();
    row->command = &command;
    row->app = app.add_subcommand(std::string(command.name.data(), static_cast<std::size_t>(command.name.size())), words(command.summary));
    for (const Option &option : command.options)
        addOption(*row, option);
    row->app->add_flag("--json", row->asJson, words(QT_TRANSLATE_NOOP("Cli", "Print the answer as one JSON object.")));
    return row;
}

Arguments argumentsOf(const Row &row)
{
    Arguments arguments;
    for (const auto &[name, given] : row.typed) {
        QStringList list;
        for (const std::string &one : given)
            list << QString::fromLocal8Bit(one.data(), static_cast<qsizetype>(one.size()));
        if (!list.isEmpty())
            arguments.set(name, list);
    }
    for (const auto &[name, isSet] : row.flags) {
        if (isSet)
            arguments.set(name, {});
    }
    return arguments;
}

std::string exitCodes()
{
    QStringList rows;
    for (const ExitRow &row : exitRows())
        rows << QStringLiteral("%1 %2").arg(static_cast<int>(row.exit)).arg(QCoreApplication::translate("Cli", row.meaning));
    return QCoreApplication::translate("Cli", "Exit codes: %1.").arg(rows.join(u", "_s)).toStdString();
}

/// The library says of a command that it does not know only that one is required.
std::optional<Told> unknownCommand(int argc, const char *const *argv)
{
    if (argc < 2 || argv[1][0] == '-')
        return std::nullopt;
    const QString name = QString::fromLocal8Bit(argv[1]);
    if (findCommand(name))
        return std::nullopt;
    return Told{Exit::Misused, QCoreApplication::translate("Cli", "There is no command \"%1\". remate-cli --help lists them.").arg(name)};
}

Told toldBy(const CLI::App &app, const CLI::ParseError &error)
{
    std::ostringstream out;
    std::ostringstream err;
    const bool good = app.exit(error, out, err) == 0;
    return {good ? Exit::Good : Exit::Misused, QString::fromStdString(good ? out.str() : err.str()).trimmed()};
}

} // namespace

std::variant<Invocation, Told> parse(int argc, const char *const *argv)
{
    if (const auto told = unknownCommand(argc, argv))
        return *told;
    CLI::App app(words(QT_TRANSLATE_NOOP("Cli", "Remate at the command line: the same jobs, rules and signatures as on the screen.")) + '\n' + exitCodes(), "remate-cli");
    app.set_version_flag("--version", "remate-cli " REMATE_VERSION);
    app.require_subcommand(1);
    std::vector<std::unique_ptr<Row>> rows;
    for (const Command &command : commands())
        rows.push_back(addCommand(app, command));
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError &error) {
        return toldBy(app, error);
    }
    for (const auto &row : rows) {
        if (row->app->parsed())
            return Invocation{row->command, argumentsOf(*row), row->asJson};
    }
    return Told{Exit::Misused, QString::fromStdString(app.help())};
}

} // namespace cli
