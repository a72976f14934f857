// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/contents.hpp"

#include <QCoreApplication>
#include <QSet>
#include <QStringList>

#include <algorithm>
#include <numeric>

#include "app/picture/lift_of.hpp"
#include "app/record/index_of_persons.hpp"
#include "app/record/photos.hpp"
#include "core/acts/act.hpp"
#include "core/job/figures.hpp"
#include "core/job/loose_ends.hpp"
#include "core/job/stage.hpp"
#include "core/reports/figures.hpp"
#include "core/reports/release_counts.hpp"
#include "core/reports/report.hpp"
#include "core/reports/signatures.hpp"
#include "core/reports/timeline.hpp"
#include "core/value/counted.hpp"

namespace record {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Record", text); }
QString reportWord(const char *text) { return QCoreApplication::translate("Report", text); }

/// What names the entry, or says why it was struck, stays without a line through it.
Strike strikeOf(QLatin1String column)
{
    const bool isPlain = column == "entry"_L1 || column == "worth"_L1;
    return isPlain ? Strike::Not : Strike::Through;
}

/// Columns whose cells stand under the row, over the whole width: why it was struck, and a hash, which is long.
struct NoteColumn {
    QLatin1String name;
    Face face;
    QColor colour;
};

constexpr NoteColumn noteColumns[] = {
    {QLatin1String("standing"), Face::CellBold, ink::alarm},
    {QLatin1String("hash"), Face::Mono, ink::quiet},
};

/// Columns for which a page is too narrow: what of them is filled stands under the row, each after its title.
constexpr QLatin1String titledNotes[] = {
    QLatin1String("asked"),          QLatin1String("torque_type"), QLatin1String("graduation"), QLatin1String("deviation"),   QLatin1String("length"),
    QLatin1String("setting"),        QLatin1String("adapter"),   QLatin1String("at_fastener"), QLatin1String("drag"),   QLatin1String("nut"),
    QLatin1String("turn"),           QLatin1String("skip_reason"), QLatin1String("lead_zero"),   QLatin1String("unit_weight"),
    QLatin1String("rigging_weight"), QLatin1String("hoist_limit"), QLatin1String("hoist_due"),   QLatin1String("legs"),   QLatin1String("angle"),
    QLatin1String("shares"),         QLatin1String("sling_limit"), QLatin1String("sling_due"),   QLatin1String("centre_after"),
    QLatin1String("verdict"),        QLatin1String("sling"),       QLatin1String("maintenance_data"), QLatin1String("remarks"),
};

QString titledNote(const core::Report &report, const core::ReportRow &row)
{
    QStringList parts;
    for (std::size_t i = 0; i < report.columns.size(); ++i) {
        const core::ReportColumn &column = report.columns[i];
        const bool isNote = column.width == 0 && std::find(std::begin(titledNotes), std::end(titledNotes), column.name) != std::end(titledNotes);
        if (isNote && !row.cells[i].isEmpty())
            parts << tr("%1: %2").arg(reportWord(column.title), row.cells[i]);
    }
    return parts.join(tr("  ·  "));
}

std::vector<Note> notesOf(const core::Report &report, const core::ReportRow &row)
{
    std::vector<Note> notes;
    if (const QString titled = titledNote(report, row); !titled.isEmpty())
        notes.push_back({titled, Face::Cell, ink::quiet});
    for (const NoteColumn &note : noteColumns) {
        for (std::size_t i = 0; i < report.columns.size(); ++i) {
            if (report.columns[i].name == note.name && !row.cells[i].isEmpty())
                notes.push_back({row.cells[i], note.face, note.colour});
        }
    }
    return notes;
}

/// A report as a table of this record: its columns that go on paper.
Table tableOf(const core::Report &report, const std::vector<core::ReportRow> &rows)
{
    Table table;
    std::vector<std::size_t> shown;
    for (std::size_t i = 0; i < report.columns.size(); ++i) {
        const core::ReportColumn &column = report.columns[i];
        if (column.width == 0)
            continue;
        shown.push_back(i);
        table.columns.push_back({reportWord(column.title), static_cast<double>(column.width), Face::Cell, strikeOf(column.name)});
    }
    for (const core::ReportRow &row : rows) {
        TableRow laid{row.group, {}, row.standing == core::Standing::Stands ? Strike::Not : Strike::Through, notesOf(report, row)};
        for (const std::size_t i : shown)
            laid.cells.push_back(row.cells[i]);
        table.rows.push_back(std::move(laid));
    }
    return table;
}

/// Answers the page on which each of its rows begins, counted from 1.
std::vector<int> setReport(Flow &flow, const core::JobRecord &job, QStringView name, const QString &ifNone = {})
{
    const core::Report *report = core::findReport(name);
    const auto rows = report->rows(job);
    if (!rows.empty())
        return flow.table(reportWord(report->title), tableOf(*report, rows));
    if (!ifNone.isEmpty()) {
        flow.heading(reportWord(report->title));
        flow.paragraph(ifNone);
    }
    return {};
}

/// The lifts that stand, as they were planned.
void setLifts(Flow &flow, const core::JobRecord &job)
{
    setReport(flow, job, u"lifts");
    for (const core::JobFigure &figure : job.job().figures) {
        if (const auto lift = picture::liftOf(figure))
            flow.lift(tr("Entry %1: %2, hoist %3").arg(figure.mark.seq).arg(core::figureAbout(figure), lift->hoist), *lift);
    }
}

/// The weight changes that stand, as lines for the aircraft's own weight record.
void setWeight(Flow &flow, const core::JobRecord &job)
{
    setReport(flow, job, u"weight");
    for (const core::JobFigure &figure : job.job().figures) {
        const auto swap = figure.kind == u"weight.recorded" ? core::swapIn(figure.body) : std::nullopt;
        const auto lines = swap ? core::measure::weightRecordEntry(*swap) : core::measure::Measured<QStringList>(QStringList());
        if (!lines || lines->isEmpty())
            continue;
        flow.space(4 * point);
        flow.paragraph(tr("For the weight record, from entry %1").arg(figure.mark.seq), Face::Bold);
        flow.paragraph(lines->join(u'\n'));
    }
}

std::size_t placeOf(const core::Report &report, QLatin1String column)
{
    const auto at = std::find_if(report.columns.begin(), report.columns.end(), [&](const core::ReportColumn &c) { return c.name == column; });
    return static_cast<std::size_t>(at - report.columns.begin());
}

/// `E12 Bleed duct, forward`
QString nameOf(const core::JobRecord &job, const QString &interface)
{
    const auto id = core::InterfaceId::parse(interface);
    const core::InterfaceState *item = id ? job.job().item(*id) : nullptr;
    return item ? tr("%1 %2").arg(interface, item->listed.name) : interface;
}

/// One table a zone: whoever walks round the unit reads one side at a time.
void setLife(Flow &flow, const core::JobRecord &job)
{
    const core::Report *report = core::findReport(u"life");
    const auto rows = report->rows(job);
    const std::size_t zoneAt = placeOf(*report, "zone"_L1);
    const std::size_t itemAt = placeOf(*report, "interface"_L1);
    if (!rows.empty())
        flow.heading(reportWord(report->title));
    for (const core::Zone &zone : job.job().facts.zones) {
        std::vector<core::ReportRow> ofZone;
        std::copy_if(rows.begin(), rows.end(), std::back_inserter(ofZone), [&](const core::ReportRow &row) { return row.cells[zoneAt] == zone.name; });
        if (ofZone.empty())
            continue;
        Table table = tableOf(*report, ofZone);
        for (std::size_t i = 0; i < ofZone.size(); ++i)
            table.rows[i].bookmark = nameOf(job, ofZone[i].cells[itemAt]);
        flow.table(tr("Zone %1").arg(zone.name), table, 1);
    }
}

/// What was counted at the release; what no interface is stays away.
QString releasedText(const core::ReleaseCounts &counts)
{
    QStringList parts;
    const auto add = [&](qsizetype number, const QString &words) {
        if (number > 0)
            parts << words.arg(number);
    };
    add(counts.inspected, tr("%1 reconnected and inspected"));
    add(counts.undisturbed, tr("%1 confirmed undisturbed"));
    add(counts.notApplicable, tr("%1 not applicable"));
    add(counts.givenOver, tr("%1 given over to a linked job"));
    add(counts.open, tr("%1 OPEN"));
    const qsizetype all = counts.inspected + counts.undisturbed + counts.notApplicable + counts.givenOver + counts.open;
    return tr("%1: %2.").arg(core::counted(all, tr("1 interface"), tr("%1 interfaces")), parts.join(u", "_s));
}

void setVerdict(Flow &flow, const core::JobRecord &job)
{
    const auto &closed = job.job().closed;
    if (!closed) {
        const auto open = core::looseEnds(job.job(), job.reg());
        flow.box(tr("NOT CLOSED"), tr("This is a draft of a record and no release. Loose ends: %1.").arg(open.size()), ink::alarm);
        return;
    }
    const core::Entry *entry = job.entry(closed->seq);
    const QString statement = entry ? entry->said.body.text(u"statement") : QString();
    const QString remarks = entry ? entry->said.body.text(u"remarks") : QString();
    const QString limitation = entry ? entry->said.body.text(u"limitation") : QString();
    QString text = tr("Released by %1 on %2 with entry %3.").arg(job.registerAt(closed->seq).nameOf(closed->by), core::momentText(job.job(), closed->seq, closed->at)).arg(closed->seq);
    for (const QString &more : {statement, limitation, remarks}) {
        if (!more.isEmpty())
            text += u'\n' + more;
    }
    text += u'\n' + releasedText(core::releaseCounts(job.job()));
    if (core::findReport(u"still_due")->rows(job).empty())
        text += u'\n' + tr("This record leaves nothing due: no follow-up, no deferred finding.");
    const auto &findings = job.job().findings;
    const bool isLimited = std::any_of(findings.begin(), findings.end(), [](const core::Finding &finding) { return finding.disposition == u"deferred"; });
    flow.box(isLimited ? tr("CLOSED, LIMITED") : tr("CLOSED"), text, ink::text);
    setReport(flow, job, u"still_due");
}

/// Whoever reads the cover alone has to see that somebody else may have signed.
void setDoubts(Flow &flow, const core::JobRecord &job)
{
    QStringList entries;
    for (const qint64 seq : core::entriesInDoubt(job))
        entries << QString::number(seq);
    if (entries.isEmpty())
        return;
    flow.box(core::counted(entries.size(), tr("1 SIGNATURE IN DOUBT"), tr("%1 SIGNATURES IN DOUBT")),
             tr("Somebody else may have had the key. Entries: %1. Why stands beside the person among the signatures.").arg(entries.join(u", "_s)), ink::alarm);
}

/// An inspection that was not independent stands on the cover, so that nobody has to look for it.
/// Source: AMC4 145.A.48(b), paragraph (d): who and why is recorded before release.
void setReinspections(Flow &flow, const core::JobRecord &job)
{
    QStringList lines;
    for (const core::InterfaceState &item : job.job().items) {
        for (const core::Reinspection &one : item.reinspections) {
            const core::Register &reg = job.registerAt(one.mark.seq);
            lines << tr("%1 %2: %3, entry %4. %5 Allowed by %6.").arg(item.listed.id.text(), item.listed.name, reg.nameOf(one.mark.by)).arg(one.mark.seq).arg(one.cause, reg.nameOf(one.approver));
        }
    }
    if (!lines.isEmpty())
        flow.box(tr("INSPECTED BY ONE WHO HAD A HAND IN IT"), lines.join(u'\n'), ink::alarm);
}

void setLooseEnds(Flow &flow, const core::JobRecord &job)
{
    const auto open = job.isClosed() ? core::LooseEnds() : core::looseEnds(job.job(), job.reg());
    if (open.empty())
        return;
    Table table{{{tr("About"), 16}, {tr("What is loose"), 60}, {tr("Who can clear it"), 24}}, {}};
    for (const core::LooseEnd &end : open)
        table.rows.push_back({{}, {end.subject, end.sentence, end.clearedBy}});
    flow.heading(tr("Loose ends"));
    flow.table(table);
}

QString countsText(const core::JobRecord &job)
{
    constexpr core::Stage stages[] = {core::Stage::Connected, core::Stage::Disconnected, core::Stage::Reconnected, core::Stage::Secured, core::Stage::Inspected};
    const auto counts = core::stageCounts(job.job());
    QStringList parts;
    for (const core::Stage stage : stages)
        parts << tr("%1 %2").arg(core::stageWord(stage)).arg(counts[static_cast<std::size_t>(stage)]);
    const qsizetype all = std::accumulate(counts.begin(), counts.end(), qsizetype{0});
    return tr("%1 by stage: %2.").arg(core::counted(all, tr("1 interface"), tr("%1 interfaces")), parts.join(u", "_s));
}

/// What a reader needs to check this paper against the record it was made from.
void setRoots(Flow &flow, const core::JobRecord &job)
{
    const core::Register &reg = job.reg();
    Table table{{{tr("Proof"), 25}, {tr("Value"), 75, Face::Mono}}, {}};
    const auto add = [&](const QString &name, const QString &value) { table.rows.push_back({{}, {name, value}}); };
    add(tr("Organisation"), reg.organisation);
    add(tr("Root of the register"), reg.root ? reg.nameOf(*reg.root) : QString());
    add(tr("Fingerprint of the root"), reg.fingerprint.hex());
    add(tr("Register as last pinned"), tr("entry %1, %2").arg(reg.head.seq).arg(reg.head.hash.hex()));
    add(tr("Last entry of the job"), tr("entry %1, %2").arg(job.head().seq).arg(job.head().hash.hex()));
    flow.heading(tr("What this record rests on"));
    flow.table(table);
    flow.paragraph(tr("Each entry carries the hash of the one before it and its signer's signature, so the last hash fixes them all. "
                      "This paper shows what the entries say; the signed entries are the record."),
                   Face::Small, ink::quiet);
}

void setCautions(Flow &flow, const core::JobRecord &job)
{
    QSet<QString> kinds;
    for (const core::InterfaceState &item : job.job().items)
        kinds.insert(item.listed.kind);
    Table table{{{tr("Work on"), 25}, {tr("Caution"), 75}}, {}};
    for (const core::Kind &kind : job.kinds().all()) {
        if (kinds.contains(kind.id) && !kind.caution.isEmpty())
            table.rows.push_back({{}, {kind.name, kind.caution}});
    }
    QSet<QString> done;
    for (const core::Entry &entry : job.entries())
        done.insert(entry.said.kind);
    for (const core::Act &act : core::acts()) {
        const QStringList cautions = act.cautions();
        if (!cautions.isEmpty() && done.contains(act.kind))
            table.rows.push_back({{}, {QCoreApplication::translate("Act", act.verb), cautions.join(u' ')}});
    }
    flow.heading(tr("Cautions"));
    flow.paragraph(tr("The approved maintenance data governs: %1, revision %2. Where this record and the maintenance data, the local rules or "
                      "licensed practice differ, this record gives way.")
                       .arg(job.job().facts.maintenanceData, job.job().facts.revision),
                   Face::Bold);
    flow.table(table);
}

} // namespace

void setContents(Flow &flow, const core::JobRecord &job, const FetchAttachment &fetch)
{
    flow.title(tr("Record of a unit change"));
    flow.paragraph(job.job().facts.title, Face::Heading);
    flow.paragraph(job.reg().organisation);
    flow.space(4 * point);
    setVerdict(flow, job);
    setDoubts(flow, job);
    setReinspections(flow, job);
    setReport(flow, job, u"signatures");
    setReport(flow, job, u"facts");
    setReport(flow, job, u"linked_jobs");
    setReport(flow, job, u"handed_on");
    setRoots(flow, job);
    setCautions(flow, job);
    setLooseEnds(flow, job);
    setReport(flow, job, u"people", tr("Nobody the register knows took part."));
    setReport(flow, job, u"tools", tr("No measuring tool was used."));
    setReport(flow, job, u"unit");
    setReport(flow, job, u"hold_points");
    setReport(flow, job, u"temporary_items");
    setReport(flow, job, u"tools_issued");
    setReport(flow, job, u"tags");
    setReport(flow, job, u"interfaces", tr("No interface was listed."));
    flow.space(4 * point);
    flow.paragraph(countsText(job));
    setReport(flow, job, u"conditions");
    setReport(flow, job, u"off_the_list");
    setLife(flow, job);
    setPhotos(flow, job, fetch);
    setReport(flow, job, u"hardware");
    setReport(flow, job, u"seals");
    setReport(flow, job, u"torque", tr("No torque was recorded."));
    setReport(flow, job, u"bonding");
    setReport(flow, job, u"leaks");
    setLifts(flow, job);
    setReport(flow, job, u"servicing");
    setWeight(flow, job);
    setReport(flow, job, u"tests");
    setReport(flow, job, u"inspections", tr("No inspection was recorded."));
    setReport(flow, job, u"findings", tr("No finding was raised."));
    setReport(flow, job, u"follow_ups");
    setReport(flow, job, u"lessons");
    setReport(flow, job, u"handovers", tr("The job was not handed over."));
    setReport(flow, job, u"handed_over");
    setReport(flow, job, u"bursts");
    const std::vector<int> pages = setReport(flow, job, u"entries");
    setIndexOfPersons(flow, job, pages);
}

QString runningHead(const core::JobRecord &job)
{
    const core::JobFacts &facts = job.job().facts;
    return tr("Work order %1  ·  %2  ·  %3").arg(facts.workOrder, facts.aircraft, facts.unit);
}

QString runningFoot(const core::JobRecord &job)
{
    return tr("Entry %1  %2").arg(job.head().seq).arg(job.head().hash.hex());
}

} // namespace record
