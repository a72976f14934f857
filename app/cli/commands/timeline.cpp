// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "app/cli/opened.hpp"
#include "core/acts/act.hpp"
#include "core/reports/audit_table.hpp"
#include "core/reports/timeline.hpp"
#include "core/reports/timeline_filter.hpp"
#include "resources/resources.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

/// What is looked for. BadInput for a kind that is none, a person whom the register does not know, and a zone that the job does not
/// have: nothing found would look like an answer.
core::Result<core::TimelineFilter> filterIn(const Arguments &arguments, const core::JobState &job, const core::Register &reg)
{
    core::TimelineFilter filter{.kind = arguments.textIfGiven(u"kind"_s), .zone = arguments.textIfGiven(u"zone"_s), .words = arguments.text(u"words"_s)};
    if (arguments.has(u"struck"_s))
        filter.which = core::WhichStand::StruckOnly;
    if (arguments.has(u"person"_s)) {
        const auto person = personIn(arguments, u"person"_s);
        if (!person)
            return core::failure(person.error());
        if (!reg.person(*person))
            return core::failure(core::ErrorCode::BadInput, tr("The register knows no person %1.").arg(person->text()));
        filter.person = *person;
    }
    if (filter.kind && !core::findAct(*filter.kind))
        return core::failure(core::ErrorCode::BadInput, tr("There is no kind of entry \"%1\".").arg(*filter.kind));
    const auto &zones = job.facts.zones;
    if (filter.zone && std::none_of(zones.begin(), zones.end(), [&](const core::Zone &zone) { return zone.name == *filter.zone; }))
        return core::failure(core::ErrorCode::BadInput, tr("The job has no zone \"%1\".").arg(*filter.zone));
    return filter;
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto kinds = resources::loadKinds();
    if (!kinds)
        return core::failure(kinds.error());
    auto opened = openJob(arguments, context, db::Access::ReadOnly, IfDamaged::Show);
    if (!opened)
        return core::failure(opened.error());
    const auto job = opened->session->state();
    const core::Register &reg = opened->session->reg();
    const auto filter = filterIn(arguments, *job, reg);
    if (!filter)
        return core::failure(filter.error());
    QStringList lines;
    core::json::Array entries;
    for (const core::Statement &said : job->said) {
        const core::Line &line = job->lines[static_cast<std::size_t>(said.seq - 1)];
        const auto id = core::InterfaceId::parse(said.subject.value_or(QString()));
        const core::InterfaceState *item = id ? job->item(*id) : nullptr;
        const QString standing = core::standingWord(line);
        const QString shown = u"%1  %2  %3: %4%5"_s.arg(said.seq, 4).arg(core::momentText(*job, said.seq, said.at), reg.nameOf(said.author), standing.isEmpty() ? QString() : u'[' + standing + u"] "_s,
                                                        core::describe(said, reg, item ? kinds->find(item->listed.kind) : nullptr));
        if (!core::fits(*filter, *job, said, shown))
            continue;
        lines << shown;
        entries.emplace_back(core::json::Object{{u"seq"_s, said.seq}, {u"at"_s, said.at.text()}, {u"author"_s, said.author.text()}, {u"kind"_s, said.kind}, {u"subject"_s, said.subject.value_or(QString())},
                                                {u"body"_s, said.body}, {u"standing"_s, core::standingName(line.standing)}});
    }
    lines << tr("%1 of %2 entries").arg(entries.size()).arg(job->said.size());
    core::json::Object json{{u"all"_s, static_cast<qint64>(job->said.size())}, {u"entries"_s, std::move(entries)}};
    const auto damage = opened->session->trouble();
    if (damage)
        json.set(u"damage"_s, damage->message);
    return Answer{damage ? Exit::World : Exit::Good, lines.join(u'\n'), std::move(json), damage ? damage->message : QString()};
}

} // namespace

Command timelineCommand()
{
    return {"timeline"_L1,
            QT_TRANSLATE_NOOP("Cli", "List the entries of a job that fit all that is asked for, the earliest first."),
            {storeOption(), jobOption(), value("person"_L1, "ID", QT_TRANSLATE_NOOP("Cli", "Signed by that person, or naming them.")),
             value("kind"_L1, "KIND", QT_TRANSLATE_NOOP("Cli", "Only entries of this kind, such as torque.applied.")), value("zone"_L1, "ZONE", QT_TRANSLATE_NOOP("Cli", "About something in that zone.")),
             flag("struck"_L1, QT_TRANSLATE_NOOP("Cli", "Only what was struck, or fell with what it rested on.")), value("words"_L1, "WORDS", QT_TRANSLATE_NOOP("Cli", "With these words, capitals or not."))},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
