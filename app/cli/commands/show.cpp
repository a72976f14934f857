// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/opened.hpp"
#include "app/cli/tell.hpp"
#include "core/job/linked.hpp"
#include "core/job/loose_ends.hpp"
#include "core/job/stage.hpp"
#include "core/job/twins.hpp"
#include "core/reports/timeline.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/reports/left_in_words.hpp"
#include "resources/resources.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;
using core::json::Array;
using core::json::Object;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

QString standingName(core::Standing standing)
{
    switch (standing) {
    case core::Standing::Stands: return u"stands"_s;
    case core::Standing::Struck: return u"struck"_s;
    case core::Standing::Fallen: return u"fallen"_s;
    }
    Q_UNREACHABLE();
}

QString standingMark(core::Standing standing) { return standing == core::Standing::Stands ? QString() : u"["_s + standingName(standing) + u"] "_s; }

/// What a show is about: the whole job, or one interface of it.
struct Shown {
    const session::Session &session;
    const core::Kinds &kinds;
    const core::InterfaceState *item;

    const core::JobState &job() const { return *session.state(); }
    bool covers(const core::Statement &said) const
    {
        if (!item || said.subject == item->listed.id.text())
            return true;
        const std::vector<core::InterfaceId> twins = core::twinsReadIn(job(), said);
        return std::find(twins.begin(), twins.end(), item->listed.id) != twins.end();
    }
};

Object itemJson(const core::InterfaceState &item)
{
    Array open;
    for (const auto &[requirement, sentence] : core::stillToShow(item))
        open.emplace_back(Object{{u"requirement"_s, QString(requirement->name)}, {u"sentence"_s, sentence}});
    return {{u"id"_s, item.listed.id.text()}, {u"name"_s, item.listed.name}, {u"kind"_s, item.listed.kind}, {u"zone"_s, item.listed.zone},
            {u"stage"_s, core::stageName(core::stageOf(item))}, {u"tag"_s, item.removal ? item.removal->tag : QString()},
            {u"still_to_show"_s, item.restoration ? std::move(open) : Array()},
            {u"sent_to"_s, item.sent ? item.sent->to.text() : QString()}, {u"taken_on_from"_s, item.takenOn ? item.takenOn->from.text() : QString()}};
}

/// The loose ends of a linked job by itself, as it stands with this one.
core::LooseEnds endsOf(const Shown &shown, const core::JobState &other) { return core::ownLooseEnds(core::asItSees(shown.job(), other), shown.session.reg()); }

Array linkedJson(const Shown &shown)
{
    Array linked;
    for (const core::Link &link : shown.job().links) {
        const core::JobState *other = core::seenJob(shown.job(), link.ledger);
        Object object{{u"ledger"_s, link.ledger.text()}, {u"work_order"_s, link.workOrder}, {u"seen"_s, other != nullptr}};
        if (other) {
            object.set(u"title"_s, other->facts.title);
            object.set(u"names_this_job"_s, core::isLinkedWith(*other, *shown.job().ledger));
            object.set(u"closed"_s, other->closed.has_value());
            object.set(u"loose_ends"_s, static_cast<qint64>(endsOf(shown, *other).size()));
        }
        linked.emplace_back(std::move(object));
    }
    return linked;
}

QString linkedStateText(const Shown &shown, const core::JobState *other)
{
    if (!other)
        return tr("cannot be seen from here");
    if (!core::isLinkedWith(*other, *shown.job().ledger))
        return tr("does not name this job");
    if (other->closed)
        return tr("closed on %1").arg(core::momentText(other->closed->at));
    const core::LooseEnds ends = endsOf(shown, *other);
    return ends.empty() ? tr("ready to close") : tr("%1; the first: %2").arg(core::looseEndsInWords(std::ssize(ends)), ends.front().sentence);
}

/// Empty for a job without links.
QString linkedText(const Shown &shown)
{
    if (shown.job().links.empty())
        return {};
    std::vector<std::vector<QString>> rows{{tr("Linked job"), tr("State"), tr("Title"), tr("Ledger")}};
    for (const core::Link &link : shown.job().links) {
        const core::JobState *other = core::seenJob(shown.job(), link.ledger);
        rows.push_back({link.workOrder, linkedStateText(shown, other), other ? other->facts.title : QString(), link.ledger.text()});
    }
    return u"\n\n"_s + columns(rows);
}

Object factsJson(const core::JobState &job)
{
    const core::JobFacts &facts = job.facts;
    return {{u"ledger"_s, job.ledger->text()},           {u"title"_s, facts.title},
            {u"work_order"_s, facts.workOrder},          {u"aircraft"_s, facts.aircraft},
            {u"aircraft_type"_s, facts.aircraftType},    {u"maintenance_data"_s, facts.maintenanceData},
            {u"revision"_s, facts.revision},             {u"unit"_s, facts.unit},
            {u"outgoing_serial"_s, facts.outgoingSerial}, {u"incoming_serial"_s, facts.incomingSerial},
            {u"lead"_s, job.lead ? job.lead->text() : QString()}, {u"closed"_s, job.closed.has_value()}};
}

Array entriesJson(const Shown &shown)
{
    Array entries;
    for (const core::Statement &said : shown.session.said()) {
        const core::Line &line = shown.job().lines[static_cast<std::size_t>(said.seq - 1)];
        if (shown.covers(said)) {
            entries.emplace_back(Object{{u"seq"_s, said.seq}, {u"at"_s, said.at.text()}, {u"author"_s, said.author.text()}, {u"kind"_s, said.kind},
                                        {u"subject"_s, said.subject.value_or(QString())}, {u"body"_s, said.body}, {u"standing"_s, standingName(line.standing)}});
        }
    }
    return entries;
}

QString factsText(const Shown &shown)
{
    const core::JobState &job = shown.job();
    const core::JobFacts &facts = job.facts;
    return columns({{tr("Job"), facts.title},
                    {tr("Work order"), facts.workOrder},
                    {tr("Aircraft"), facts.aircraft + u", "_s + facts.aircraftType},
                    {tr("Unit"), facts.unit},
                    {tr("Serial numbers"), tr("outgoing %1, incoming %2").arg(facts.outgoingSerial, facts.incomingSerial)},
                    {tr("Maintenance data"), tr("%1, revision %2 (it governs)").arg(facts.maintenanceData, facts.revision)},
                    {tr("Lead"), job.lead ? shown.session.reg().nameOf(*job.lead) : QString()},
                    {tr("State"), job.closed ? tr("closed on %1").arg(core::momentText(job.closed->at)) : tr("open")},
                    {tr("Ledger"), job.ledger->text()}});
}

QString itemsText(const Shown &shown)
{
    std::vector<std::vector<QString>> rows{{tr("Id"), tr("Stage"), tr("Tag"), tr("Zone"), tr("Kind"), tr("Name")}};
    for (const core::InterfaceState &item : shown.job().items) {
        if (!shown.item || shown.item == &item) {
            rows.push_back({item.listed.id.text(), item.sent ? tr("Sent to %1").arg(core::jobInWords(shown.job(), item.sent->to)) : core::stageWord(core::stageOf(item)), item.removal ? item.removal->tag : QString(),
                            item.listed.zone, shown.kinds.nameOf(item.listed.kind), item.listed.name});
        }
    }
    return columns(rows);
}

QString entriesText(const Shown &shown)
{
    QStringList lines;
    for (const core::Statement &said : shown.session.said()) {
        if (!shown.covers(said))
            continue;
        const core::Line &line = shown.job().lines[static_cast<std::size_t>(said.seq - 1)];
        const auto id = core::InterfaceId::parse(said.subject.value_or(QString()));
        const core::InterfaceState *about = id ? shown.job().item(*id) : nullptr;
        lines << u"%1  %2  %3: %4%5"_s.arg(said.seq, 4).arg(core::momentText(shown.job(), said.seq, said.at), shown.session.reg().nameOf(said.author), standingMark(line.standing),
                                             core::describe(said, shown.session.reg(), about ? shown.kinds.find(about->listed.kind) : nullptr));
    }
    return lines.join(u'\n');
}

core::Result<const core::InterfaceState *> itemMeant(const core::JobState &job, const Arguments &arguments)
{
    const auto text = arguments.textIfGiven(u"interface"_s);
    if (!text)
        return nullptr;
    const auto id = core::InterfaceId::parse(*text);
    const core::InterfaceState *item = id ? job.item(*id) : nullptr;
    if (!item)
        return core::failure(core::ErrorCode::BadInput, tr("The job lists no interface \"%1\".").arg(*text));
    return item;
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto kinds = resources::loadKinds();
    if (!kinds)
        return core::failure(kinds.error());
    auto opened = openJob(arguments, context, db::Access::ReadOnly, IfDamaged::Show);
    if (!opened)
        return core::failure(opened.error());
    const auto state = opened->session->state();
    const auto item = itemMeant(*state, arguments);
    if (!item)
        return core::failure(item.error());
    const Shown shown{*opened->session, *kinds, *item};
    const bool withEntries = arguments.has(u"entries"_s) || shown.item;
    Array items;
    for (const core::InterfaceState &one : state->items) {
        if (!shown.item || shown.item == &one)
            items.emplace_back(itemJson(one));
    }
    Object json{{u"job"_s, factsJson(*state)}, {u"linked"_s, linkedJson(shown)}, {u"interfaces"_s, std::move(items)}};
    if (withEntries)
        json.set(u"entries"_s, entriesJson(shown));
    const QString text = factsText(shown) + linkedText(shown) + u"\n\n"_s + itemsText(shown);
    const auto damage = opened->session->trouble();
    if (damage)
        json.set(u"damage"_s, damage->message);
    return Answer{damage ? Exit::World : Exit::Good, withEntries ? text + u"\n\n"_s + entriesText(shown) : text, std::move(json), damage ? damage->message : QString()};
}

} // namespace

Command showCommand()
{
    return {"show"_L1,
            QT_TRANSLATE_NOOP("Cli", "Show a job: its facts, how linked jobs stand, its interfaces, and what was said."),
            {storeOption(), jobOption(),
             value("interface"_L1, "ID", QT_TRANSLATE_NOOP("Cli", "Show one interface alone, with its entries.")),
             flag("entries"_L1, QT_TRANSLATE_NOOP("Cli", "Show every entry, struck ones too."))},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
