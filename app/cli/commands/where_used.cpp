// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/administer.hpp"
#include "app/cli/opened.hpp"
#include "app/cli/tell.hpp"
#include "app/session/where_used.hpp"
#include "core/reports/timeline.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

/// What is looked for: the one sort that was given, within its days.
core::Result<db::Wanted> wantedOf(const Arguments &arguments)
{
    std::optional<db::Wanted> wanted;
    for (const QLatin1String sort : session::wantedSorts()) {
        if (!arguments.has(QString(sort)))
            continue;
        if (wanted)
            return core::failure(core::ErrorCode::BadInput, tr("Look for one thing at a time: --%1 or --%2.").arg(wanted->sort, sort));
        wanted = db::Wanted{sort, arguments.text(QString(sort))};
    }
    if (!wanted)
        return core::failure(core::ErrorCode::BadInput, tr("Say what is looked for: --person, --tool, --part, --batch, --serial or --certificate."));
    wanted->kind = arguments.textIfGiven(u"kind"_s);
    if (!arguments.has(u"from"_s) && !arguments.has(u"until"_s))
        return *wanted;
    const auto from = dayIn(arguments.has(u"from"_s) ? arguments.text(u"from"_s) : u"1970-01-01"_s);
    const auto until = dayIn(arguments.has(u"until"_s) ? arguments.text(u"until"_s) : u"9998-12-31"_s);
    if (!from || !until)
        return core::failure(from ? until.error() : from.error());
    const auto start = [](QDate day) { return core::Instant::fromMilliseconds(day.startOfDay(Qt::UTC).toMSecsSinceEpoch()); };
    wanted->between = db::Between{start(*from), core::Instant::fromMilliseconds(start(until->addDays(1)).milliseconds() - 1)};
    return *wanted;
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto wanted = wantedOf(arguments);
    if (!wanted)
        return core::failure(wanted.error());
    auto opened = openStore(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    const auto found = session::whereUsed(*opened->session, *wanted);
    if (!found)
        return core::failure(found.error());
    std::vector<std::vector<QString>> rows;
    core::json::Array uses;
    for (const auto &[workOrder, said] : *found) {
        const QString job = workOrder.value_or(tr("register"));
        rows.push_back({job, QString::number(said.seq), core::momentText(said.at), said.subject.value_or(QString()), core::describe(said, opened->session->reg(), nullptr)});
        uses.emplace_back(core::json::Object{{u"ledger"_s, said.ledger.text()}, {u"work_order"_s, job}, {u"seq"_s, said.seq}, {u"at"_s, said.at.text()}, {u"kind"_s, said.kind},
                                             {u"subject"_s, said.subject.value_or(QString())}, {u"author"_s, said.author.text()}});
    }
    const QString count = tr("Entries: %1").arg(rows.size());
    return Answer{Exit::Good, rows.empty() ? count : columns(rows) + u'\n' + count, {{u"uses"_s, std::move(uses)}}};
}

} // namespace

Command whereUsedCommand()
{
    return {"where-used"_L1,
            QT_TRANSLATE_NOOP("Cli", "List every entry of every job, open or closed, that names a person, tool, part, batch, serial number or certificate."),
            {storeOption(), value("person"_L1, "ID", QT_TRANSLATE_NOOP("Cli", "A person.")), value("tool"_L1, "ID", QT_TRANSLATE_NOOP("Cli", "A tool, as marked on it.")),
             value("part"_L1, "NUMBER", QT_TRANSLATE_NOOP("Cli", "A part number.")), value("batch"_L1, "NUMBER", QT_TRANSLATE_NOOP("Cli", "A batch.")),
             value("serial"_L1, "NUMBER", QT_TRANSLATE_NOOP("Cli", "A serial number.")), value("certificate"_L1, "NUMBER", QT_TRANSLATE_NOOP("Cli", "A certificate.")),
             value("kind"_L1, "KIND", QT_TRANSLATE_NOOP("Cli", "Only entries of this kind, such as torque.applied.")), value("from"_L1, "DATE", QT_TRANSLATE_NOOP("Cli", "From this day on.")),
             value("until"_L1, "DATE", QT_TRANSLATE_NOOP("Cli", "Up to this day."))},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
