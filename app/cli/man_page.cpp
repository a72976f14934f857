// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/man_page.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

/// Text as it is to be read: groff(7) takes a backslash for an escape and a plain minus for a hyphen.
QString escaped(QString text)
{
    text.replace(u'\\', u"\\e"_s).replace(u'-', u"\\-"_s);
    return text;
}

/// A line of text. One that began with a dot or an apostrophe would be a request.
QString line(const QString &text)
{
    const QString safe = escaped(text);
    return (safe.startsWith(u'.') || safe.startsWith(u'\'') ? u"\\&"_s : QString()) + safe + u'\n';
}

QString bold(const QString &text) { return u"\\fB"_s + escaped(text) + u"\\fR"_s; }
QString placeholder(const QString &text) { return u"\\fI"_s + escaped(text) + u"\\fR"_s; }

bool isPosition(const Option &option) { return option.sort == OptionSort::Position || option.sort == OptionSort::Positions; }
bool isRepeated(const Option &option) { return option.sort == OptionSort::Positions || option.sort == OptionSort::Values; }

/// `STORE`, or `--job JOB`.
QString nameOf(const Option &option)
{
    const QString place = placeholder(QString::fromLatin1(option.placeholder));
    if (isPosition(option))
        return place;
    const QString name = bold(u"--"_s + option.name);
    return option.sort == OptionSort::Flag ? name : name + u' ' + place;
}

QString inUsage(const Option &option)
{
    const QString dots = isRepeated(option) ? u" ..."_s : QString();
    return option.given == Given::Always ? nameOf(option) + dots : u'[' + nameOf(option) + u']' + dots;
}

QString section(const char *title) { return u".SH "_s + QString::fromLatin1(title) + u'\n'; }
QString tagged(const QString &tag, const QString &text) { return u".TP\n"_s + tag + u'\n' + line(text); }

QString commandText(const Command &command)
{
    // What has no dashes comes first, as the program takes it.
    std::vector<Option> options = command.options;
    std::stable_partition(options.begin(), options.end(), isPosition);
    QString usage = bold(u"remate-cli "_s + command.name);
    QString told;
    for (const Option &option : options) {
        usage += u' ' + inUsage(option);
        told += tagged(nameOf(option), tr(option.help));
    }
    return u".SS "_s + escaped(command.name) + u'\n' + line(tr(command.summary)) + u".PP\n"_s + usage + u'\n' + told;
}

} // namespace

QByteArray manPage(const std::vector<Command> &commands, const QString &version, const QString &released)
{
    QString page = u".\\\" SPDX-FileCopyrightText: The Remate authors\n.\\\" SPDX-License-Identifier: Apache-2.0\n"_s;
    page += u".TH REMATE\\-CLI 1 \"%1\" \"Remate %2\"\n"_s.arg(released, version);
    page += section("NAME") + line(tr("remate-cli - keep every loose end of an aircraft unit change, at the command line"));
    page += section("SYNOPSIS") + bold(u"remate-cli"_s) + u' ' + placeholder(u"COMMAND"_s) + u" [\\fIOPTION\\fR ...]\n.br\n"_s;
    page += bold(u"remate-cli --help"_s) + u"\n.br\n"_s + bold(u"remate-cli --version"_s) + u'\n';
    page += section("DESCRIPTION") + line(tr("The same jobs, rules and signatures as in the windows of remate(1), for scripts.")) + line(tr("Every command tells what it takes with --help."));
    page += u".PP\n"_s + line(tr("The approved maintenance data governs: the program records work, and does not say how work is done."));
    page += section("OPTIONS") + line(tr("For every command:"));
    page += tagged(bold(u"--json"_s), tr("Print the answer as one JSON object."));
    page += tagged(bold(u"-h"_s) + u", "_s + bold(u"--help"_s), tr("Print this help message and exit."));
    page += section("COMMANDS");
    for (const Command &command : commands)
        page += commandText(command);
    page += section("EXIT STATUS");
    for (const ExitRow &row : exitRows())
        page += tagged(bold(QString::number(static_cast<int>(row.exit))), tr(row.meaning));
    page += section("FILES") + tagged(placeholder(u"~/.local/state/remate/"_s), tr("The log, in $XDG_STATE_HOME where that is set. It holds no PIN and no key."));
    page += section("SEE ALSO") + bold(u"remate"_s) + u"(1)\n"_s;
    return page.toUtf8();
}

} // namespace cli
