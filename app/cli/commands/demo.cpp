// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>
#include <QFile>

#include "app/cli/tell.hpp"
#include "app/demo/scenario.hpp"
#include "db/store.hpp"
#include "resources/resources.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;
using core::json::Array;
using core::json::Object;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

/// The day before, so that the whole of it lies in the past and its tools are still in date.
core::Result<QDate> dayOf(const Arguments &arguments, const Context &context)
{
    const auto text = arguments.textIfGiven(u"day"_s);
    if (!text)
        return context.clock().utcDate().addDays(-1);
    const QDate day = QDate::fromString(*text, Qt::ISODate);
    if (!day.isValid())
        return core::failure(core::ErrorCode::BadInput, tr("\"%1\" is no day such as 2026-03-02.").arg(*text));
    return day;
}

Answer answerOf(const demo::Played &played, const QString &path, demo::Until until)
{
    std::vector<std::vector<QString>> rows{{tr("Person"), tr("PIN"), tr("Name"), tr("Role")}};
    Array people;
    for (const demo::CastMember &member : played.cast) {
        rows.push_back({member.id.text(), member.pin, member.name, member.role});
        people.emplace_back(Object{{u"id"_s, member.id.text()}, {u"pin"_s, member.pin}, {u"name"_s, member.name}, {u"role"_s, member.role}});
    }
    const QString how = until == demo::Until::Closed ? tr("closed") : tr("in the middle of the second shift");
    const QString head = tr("Made %1: an engine change on an invented freighter, %2, %3 entries.").arg(path, how).arg(played.head.seq);
    return {Exit::Good, head + u"\n\n"_s + columns(rows),
            {{u"store"_s, path}, {u"job"_s, played.job.text()}, {u"entries"_s, played.head.seq}, {u"closed"_s, until == demo::Until::Closed},
             {u"head"_s, played.head.hash.hex()}, {u"people"_s, std::move(people)}}};
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto day = dayOf(arguments, context);
    if (!day)
        return core::failure(day.error());
    const auto kinds = resources::loadKinds();
    if (!kinds)
        return core::failure(kinds.error());
    auto store = db::Store::create(arguments.text(u"store"_s));
    if (!store)
        return core::failure(store.error());
    const auto until = arguments.has(u"closed"_s) ? demo::Until::Closed : demo::Until::SecondShift;
    const auto played = demo::play(**store, *kinds, *day, until);
    const QString path = (*store)->path();
    if (const auto closed = (*store)->close(); !closed)
        return core::failure(closed.error());
    if (!played) {
        QFile::remove(path);
        return core::failure(played.error());
    }
    return answerOf(*played, path, until);
}

} // namespace

Command demoCommand()
{
    return {"demo"_L1,
            QT_TRANSLATE_NOOP("Cli", "Make a store with the demo job, and print its invented people's PINs."),
            {position("store"_L1, "STORE", QT_TRANSLATE_NOOP("Cli", "The file to make.")),
             flag("closed"_L1, QT_TRANSLATE_NOOP("Cli", "Tell the story to its end; without it, it stops in the second shift.")),
             value("day"_L1, "DATE", QT_TRANSLATE_NOOP("Cli", "The day of the story (UTC); yesterday when left out."))},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
