// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/command.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace cli {

using namespace Qt::StringLiterals;

Exit exitOf(core::ErrorCode code)
{
    switch (code) {
    case core::ErrorCode::Refused:
    case core::ErrorCode::WrongSecret: return Exit::No;
    case core::ErrorCode::BadInput: return Exit::Misused;
    case core::ErrorCode::NotFound:
    case core::ErrorCode::NotAStore:
    case core::ErrorCode::StoreNewer:
    case core::ErrorCode::ReadOnly:
    case core::ErrorCode::Damaged:
    case core::ErrorCode::Locked:
    case core::ErrorCode::HeadMoved:
    case core::ErrorCode::NoSpace:
    case core::ErrorCode::Io:
    case core::ErrorCode::Crypto:
    case core::ErrorCode::Cancelled: return Exit::World;
    }
    Q_UNREACHABLE();
}

const std::vector<ExitRow> &exitRows()
{
    static const std::vector<ExitRow> all = {
        {Exit::Good, QT_TRANSLATE_NOOP("Cli", "good")},
        {Exit::No, QT_TRANSLATE_NOOP("Cli", "the answer is no")},
        {Exit::Misused, QT_TRANSLATE_NOOP("Cli", "used wrongly")},
        {Exit::World, QT_TRANSLATE_NOOP("Cli", "cannot read or write")},
        {Exit::Partly, QT_TRANSLATE_NOOP("Cli", "good as far as it could be looked at")},
    };
    return all;
}

const Command *findCommand(QStringView name)
{
    const auto &all = commands();
    const auto at = std::find_if(all.begin(), all.end(), [&](const Command &command) { return command.name == name; });
    return at == all.end() ? nullptr : &*at;
}

Option position(QLatin1String name, const char *placeholder, const char *help, Given given)
{
    return {name, OptionSort::Position, given, placeholder, help};
}

Option positions(QLatin1String name, const char *placeholder, const char *help)
{
    return {name, OptionSort::Positions, Given::MayBe, placeholder, help};
}

Option value(QLatin1String name, const char *placeholder, const char *help, Given given)
{
    return {name, OptionSort::Value, given, placeholder, help};
}

Option values(QLatin1String name, const char *placeholder, const char *help)
{
    return {name, OptionSort::Values, Given::MayBe, placeholder, help};
}

Option flag(QLatin1String name, const char *help) { return {name, OptionSort::Flag, Given::MayBe, "", help}; }

Option storeOption() { return position("store"_L1, "STORE", QT_TRANSLATE_NOOP("Cli", "The store's file.")); }

Option jobOption()
{
    return value("job"_L1, "JOB", QT_TRANSLATE_NOOP("Cli", "The job: its ledger or its work order. May be left out when there is only one."));
}

Option pinFileOption()
{
    return value("pins"_L1, "FILE", QT_TRANSLATE_NOOP("Cli", "A file with a person's id and PIN on each line, instead of being asked."));
}

Option administratorOption()
{
    return value("by"_L1, "PERSON", QT_TRANSLATE_NOOP("Cli", "The administrator who signs."), Given::Always);
}

} // namespace cli
