// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/sheet_parts.hpp"

#include <algorithm>

#include "core/reports/timeline.hpp"

namespace core::sheets {

using namespace Qt::StringLiterals;

std::vector<AuditFact> factsOf(const JobState &job, const Register &reg, Instant printed)
{
    std::vector<AuditFact> facts{{inWords(QT_TRANSLATE_NOOP("Sheet", "Job")), shortened(inWords(QT_TRANSLATE_NOOP("Sheet", "%1, %2")).arg(job.facts.workOrder, job.facts.title), mostOfATitle)},
                                 {inWords(QT_TRANSLATE_NOOP("Sheet", "Aircraft")), shortened(job.facts.aircraft, mostOfATitle)},
                                 {inWords(QT_TRANSLATE_NOOP("Sheet", "State")), job.closed ? inWords(QT_TRANSLATE_NOOP("Sheet", "CLOSED")) : inWords(QT_TRANSLATE_NOOP("Sheet", "OPEN"))},
                                 {inWords(QT_TRANSLATE_NOOP("Sheet", "Leads")), job.lead ? shortened(reg.nameOf(*job.lead), mostOfATitle) : inWords(QT_TRANSLATE_NOOP("Sheet", "nobody"))}};
    if (const Handover *pending = job.pendingHandover())
        facts.push_back({inWords(QT_TRANSLATE_NOOP("Sheet", "Handover")), shortened(inWords(QT_TRANSLATE_NOOP("Sheet", "given to %1, NOT ACCEPTED yet")).arg(reg.nameOf(pending->to)), mostOfATitle)});
    if (!job.lines.empty())
        facts.push_back({inWords(QT_TRANSLATE_NOOP("Sheet", "As it was at")), inWords(QT_TRANSLATE_NOOP("Sheet", "%1, entry %2")).arg(momentText(job, job.lines.back().seq, job.lines.back().at)).arg(job.lines.back().seq)});
    facts.push_back({inWords(QT_TRANSLATE_NOOP("Sheet", "Printed")), momentText(printed)});
    return facts;
}

QString footOf(const JobState &job)
{
    const std::vector<Digest> hashes = hashesOf(job.said);
    return hashes.empty() ? QString() : inWords(QT_TRANSLATE_NOOP("Sheet", "Entry %1  %2")).arg(hashes.size()).arg(hashes.back().hex());
}

void sortByZone(std::vector<SheetThing> &things, const JobState &job)
{
    const auto &zones = job.facts.zones;
    const auto placeOf = [&](const SheetThing &thing) { return std::find_if(zones.begin(), zones.end(), [&](const Zone &zone) { return zone.name == thing.under; }) - zones.begin(); };
    std::stable_sort(things.begin(), things.end(), [&](const SheetThing &a, const SheetThing &b) { return placeOf(a) < placeOf(b); });
}

QString zoneText(const QString &zone) { return zone.isEmpty() ? inWords(QT_TRANSLATE_NOOP("Sheet", "no zone")) : zone; }

SheetPart appliedPart(const JobState &job, const Register &reg)
{
    SheetPart part{inWords(QT_TRANSLATE_NOOP("Sheet", "On, and must come off")),
                   {inWords(QT_TRANSLATE_NOOP("Sheet", "What is on")), inWords(QT_TRANSLATE_NOOP("Sheet", "which, its tag, and whose it is"))},
                   {},
                   inWords(QT_TRANSLATE_NOOP("Sheet", "Nothing is on.")),
                   SheetSetting::LineAHeading};
    for (const TemporaryItem &item : job.temporaries) {
        if (item.removed)
            continue;
        QString what = inWords(QT_TRANSLATE_NOOP("Sheet", "%1 %2")).arg(item.id.text(), item.name);
        if (!item.tag.isEmpty())
            what = inWords(QT_TRANSLATE_NOOP("Sheet", "%1, tag %2")).arg(what, item.tag);
        if (isLockout(item.sort))
            what = inWords(QT_TRANSLATE_NOOP("Sheet", "%1, lockout of %2")).arg(shortened(what, mostOfATitle), shortened(reg.nameOf(item.owner), mostOfAName));
        const QString state = inWords(QT_TRANSLATE_NOOP("Sheet", "%1 ON")).arg(temporarySortText(item.sort));
        part.things.push_back({zoneText(item.zone), state, shortened(what, mostOfAThing)});
    }
    sortByZone(part.things, job);
    return part;
}

} // namespace core::sheets
