// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/job/loose_ends.hpp"
#include "core/reports/open_items.hpp"
#include "core/reports/sheet_parts.hpp"
#include "core/reports/timeline.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace sheets;

/// The words of a whole shift; more is read in the program.
constexpr qsizetype mostOfRemarks = 700;

std::array<QString, 2> columns(const char *state, const char *what) { return {inWords(state), inWords(what)}; }

QString standingOf(const Handover &handover, const Register &reg)
{
    if (handover.accepted)
        return inWords(QT_TRANSLATE_NOOP("Sheet", "accepted by %1")).arg(reg.nameOf(handover.accepted->by));
    return handover.refused ? inWords(QT_TRANSLATE_NOOP("Sheet", "REFUSED: %1")).arg(handover.refusedBecause) : inWords(QT_TRANSLATE_NOOP("Sheet", "NOT ACCEPTED yet"));
}

SheetPart wordsPart(const JobState &job, const Register &reg)
{
    SheetPart part{inWords(QT_TRANSLATE_NOOP("Sheet", "The last handover")), columns(QT_TRANSLATE_NOOP("Sheet", "From whom to whom, when"), QT_TRANSLATE_NOOP("Sheet", "in their words")), {},
                   inWords(QT_TRANSLATE_NOOP("Sheet", "No shift has been handed over in this job."))};
    if (job.handovers.empty())
        return part;
    const Handover &last = job.handovers.back();
    const QString who = inWords(QT_TRANSLATE_NOOP("Sheet", "%1 to %2, %3")).arg(reg.nameOf(last.given.by), reg.nameOf(last.to), momentText(job, last.given.seq, last.given.at));
    part.things.push_back({shortened(standingOf(last, reg), mostOfATitle), shortened(who, mostOfATitle), last.remarks.isEmpty() ? inWords(QT_TRANSLATE_NOOP("Sheet", "no remarks")) : shortened(last.remarks, mostOfRemarks)});
    return part;
}

SheetPart stoppedPart(const JobState &job, const Register &reg)
{
    SheetPart part{inWords(QT_TRANSLATE_NOOP("Sheet", "Stopped half done")), columns(QT_TRANSLATE_NOOP("Sheet", "Who stopped, when"), QT_TRANSLATE_NOOP("Sheet", "where they stopped")), {},
                   inWords(QT_TRANSLATE_NOOP("Sheet", "Nobody stopped in the middle of something."))};
    for (const InterfaceState &item : job.items) {
        if (!item.stopped)
            continue;
        QString what = inWords(QT_TRANSLATE_NOOP("Sheet", "%1 %2: %3")).arg(item.listed.id.text(), item.listed.name, item.stopped->word);
        if (item.stopped->fastener && item.stopped->pass)
            what = inWords(QT_TRANSLATE_NOOP("Sheet", "%1; next is fastener %2, pass %3")).arg(what).arg(*item.stopped->fastener).arg(*item.stopped->pass);
        const QString who = inWords(QT_TRANSLATE_NOOP("Sheet", "%1, %2")).arg(reg.nameOf(item.stopped->mark.by), momentText(job, item.stopped->mark.seq, item.stopped->mark.at));
        part.things.push_back({zoneText(item.listed.zone), shortened(who, mostOfATitle), shortened(what, mostOfAThing)});
    }
    sortByZone(part.things, job);
    return part;
}

SheetPart loosePart(const JobState &job)
{
    SheetPart part{inWords(QT_TRANSLATE_NOOP("Sheet", "Loose, by zone")), columns(QT_TRANSLATE_NOOP("Sheet", "How it stands"), QT_TRANSLATE_NOOP("Sheet", "which")), {},
                   inWords(QT_TRANSLATE_NOOP("Sheet", "No interface is open or half done."))};
    for (const json::Value &value : openAtHandover(job)) {
        const auto id = InterfaceId::parse(value.object()->text(u"interface"));
        const InterfaceState *item = id ? job.item(*id) : nullptr;
        if (!item)
            continue;
        const OpenItem open = openItemOf(*value.object());
        // Alike in one line: a shift takes a zone over by what is to be done next in it.
        const SheetThing thing{zoneText(item->listed.zone), shortened(open.state, mostOfAThing), open.name};
        const auto last = std::find_if(part.things.rbegin(), part.things.rend(), [&](const SheetThing &other) { return other.under == thing.under && other.state == thing.state; });
        part.things.insert(last == part.things.rend() ? part.things.end() : last.base(), thing);
    }
    sortByZone(part.things, job);
    return part;
}

SheetPart toolsPart(const JobState &job, const Register &reg)
{
    SheetPart part{inWords(QT_TRANSLATE_NOOP("Sheet", "Tools and tags out")), columns(QT_TRANSLATE_NOOP("Sheet", "What is out"), QT_TRANSLATE_NOOP("Sheet", "which")), {},
                   inWords(QT_TRANSLATE_NOOP("Sheet", "Nothing is out."))};
    for (const JobTool *tool : job.tools.out()) {
        const QString who = tool->holder ? reg.nameOf(*tool->holder) : inWords(QT_TRANSLATE_NOOP("Sheet", "not said"));
        const QString what = tool->name.isEmpty() ? tool->marking.text() : inWords(QT_TRANSLATE_NOOP("Sheet", "%1 %2")).arg(tool->marking.text(), tool->name);
        part.things.push_back({shortened(who, mostOfATitle), inWords(QT_TRANSLATE_NOOP("Sheet", "tool OUT")), shortened(what, mostOfAThing)});
    }
    std::stable_sort(part.things.begin(), part.things.end(), [](const SheetThing &a, const SheetThing &b) { return a.under < b.under; });
    for (const TagBlock &block : job.tags.blocks) {
        if (!block.returned)
            part.things.push_back({shortened(inWords(QT_TRANSLATE_NOOP("Sheet", "issued by %1")).arg(reg.nameOf(block.issued.by)), mostOfATitle), inWords(QT_TRANSLATE_NOOP("Sheet", "tags OUT")), blockText(block)});
    }
    return part;
}

SheetPart findingsPart(const JobState &job)
{
    SheetPart part{inWords(QT_TRANSLATE_NOOP("Sheet", "Findings open")), columns(QT_TRANSLATE_NOOP("Sheet", "How it stands"), QT_TRANSLATE_NOOP("Sheet", "what was found")), {},
                   inWords(QT_TRANSLATE_NOOP("Sheet", "No finding is open."))};
    for (const Finding &finding : job.findings) {
        if (finding.closed)
            continue;
        const QString on = finding.item ? finding.item->text() : inWords(QT_TRANSLATE_NOOP("Sheet", "the job"));
        part.things.push_back({on, inWords(QT_TRANSLATE_NOOP("Sheet", "OPEN")), shortened(inWords(QT_TRANSLATE_NOOP("Sheet", "%1 %2")).arg(finding.id.text(), finding.description), mostOfAThing)});
    }
    return part;
}

/// What a handover names and no other part tells of: hold points that became void, tests to be made again, accessories without a place.
SheetPart restPart(const JobState &job)
{
    SheetPart part{inWords(QT_TRANSLATE_NOOP("Sheet", "Else open")), columns(QT_TRANSLATE_NOOP("Sheet", "How it stands"), QT_TRANSLATE_NOOP("Sheet", "which")), {},
                   inWords(QT_TRANSLATE_NOOP("Sheet", "Nothing else is open."))};
    for (const json::Value &value : openAtHandover(job)) {
        const QStringView member = openMember(*value.object());
        if (member != u"hold_point" && member != u"test" && member != u"accessory")
            continue;
        const OpenItem open = openItemOf(*value.object());
        const auto id = member == u"hold_point" ? HoldId::parse(open.name) : std::nullopt;
        const HoldPoint *hold = id ? job.hold(*id) : nullptr;
        const QString what = hold ? inWords(QT_TRANSLATE_NOOP("Sheet", "%1 %2")).arg(hold->id.text(), hold->title) : open.name;
        part.things.push_back({inWords(QT_TRANSLATE_NOOP("Sheet", "the job")), shortened(open.state, mostOfATitle), shortened(what, mostOfAThing)});
    }
    return part;
}

} // namespace

OnePage handoverSheet(const JobState &job, const Register &reg, Instant printed)
{
    OnePage page{inWords(QT_TRANSLATE_NOOP("Sheet", "Handover sheet")), factsOf(job, reg, printed),
                 {wordsPart(job, reg), stoppedPart(job, reg), loosePart(job), appliedPart(job, reg), toolsPart(job, reg), findingsPart(job), restPart(job)},
                 footOf(job)};
    // Seven parts on one page: what is read once need not stand in columns.
    for (SheetPart &part : page.parts)
        part.setting = SheetSetting::LineAHeading;
    return page;
}

} // namespace core
