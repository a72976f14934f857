// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QStringList>

#include <algorithm>

#include "core/reports/open_items.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

/// What the outgoing lead signed as open, one by one.
std::vector<const json::Object *> openIn(const JobRecord &record, const Handover &handover)
{
    const Entry *given = record.entry(handover.given.seq);
    const json::Value *open = given ? given->said.body.find(u"open") : nullptr;
    std::vector<const json::Object *> items;
    if (const json::Array *array = open ? open->array() : nullptr) {
        for (const json::Value &element : *array) {
            if (const json::Object *item = element.object())
                items.push_back(item);
        }
    }
    return items;
}

/// The same in one sentence: `E12 disconnected; E13 reconnected, still to show: torque, safetying`.
QString openText(const JobRecord &record, const Handover &handover)
{
    QStringList parts;
    for (const json::Object *item : openIn(record, handover))
        parts << openItemInWords(*item);
    return parts.isEmpty() ? inWords(QT_TRANSLATE_NOOP("Report", "nothing")) : parts.join(u"; "_s);
}

QString crewText(const JobRecord &record, const Handover &handover)
{
    QStringList names{record.reg().nameOf(handover.to)};
    for (const PersonId &member : handover.crew)
        names << record.reg().nameOf(member);
    names.removeDuplicates();
    return names.join(u", "_s);
}

std::vector<ReportRow> handoverRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const Handover &handover : record.job().handovers) {
        const QString accepted = handover.accepted  ? signedText(record, *handover.accepted)
                                 : handover.refused ? inWords(QT_TRANSLATE_NOOP("Report", "REFUSED by %1: %2")).arg(signedText(record, *handover.refused), handover.refusedBecause)
                                                    : inWords(QT_TRANSLATE_NOOP("Report", "NOT ACCEPTED"));
        rows.push_back({{},
                        {signedText(record, handover.given), crewText(record, handover), openText(record, handover), handover.remarks, accepted}});
    }
    return rows;
}

/// As the list has it now; empty where it is of no zone.
QString zoneOf(const JobState &job, const json::Object &item)
{
    const auto interface = InterfaceId::parse(item.text(u"interface"));
    const InterfaceState *listed = interface ? job.item(*interface) : nullptr;
    const auto temporary = TemporaryId::parse(item.text(u"temporary"));
    const TemporaryItem *applied = temporary ? job.temporary(*temporary) : nullptr;
    return listed ? listed->listed.zone : applied ? applied->zone : QString();
}

/// Zone by zone, as the incoming crew divides the work: what is in the same state stands in one row.
std::vector<ReportRow> handedOverRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const Handover &handover : record.job().handovers) {
        const QString group = inWords(QT_TRANSLATE_NOOP("Report", "%1 to %2, %3, entry %4")).arg(signerOf(record, handover.given), record.reg().nameOf(handover.to), momentText(record.job(), handover.given.seq, handover.given.at)).arg(handover.given.seq);
        std::vector<ReportRow> ofThis;
        for (const json::Object *item : openIn(record, handover)) {
            const QString zone = zoneOf(record.job(), *item);
            const OpenItem open = openItemOf(*item);
            const auto alike = std::find_if(ofThis.begin(), ofThis.end(), [&](const ReportRow &row) { return row.cells[0] == zone && row.cells[1] == open.state; });
            if (alike == ofThis.end())
                ofThis.push_back({group, {zone, open.state, open.name}});
            else
                alike->cells[2] += u", "_s + open.name;
        }
        const auto &zones = record.job().facts.zones;
        const auto placeOf = [&](const ReportRow &row) { return std::find_if(zones.begin(), zones.end(), [&](const Zone &zone) { return zone.name == row.cells[0]; }) - zones.begin(); };
        std::stable_sort(ofThis.begin(), ofThis.end(), [&](const ReportRow &a, const ReportRow &b) { return placeOf(a) < placeOf(b); });
        rows.insert(rows.end(), ofThis.begin(), ofThis.end());
    }
    return rows;
}

} // namespace

Report handedOverReport()
{
    return {"handed_over"_L1,
            QT_TRANSLATE_NOOP("Report", "Open and half done at each handover"),
            {{"zone"_L1, QT_TRANSLATE_NOOP("Report", "Zone"), 12},
             {"state"_L1, QT_TRANSLATE_NOOP("Report", "How it stood"), 30},
             {"items"_L1, QT_TRANSLATE_NOOP("Report", "What"), 58}},
            &handedOverRows};
}

Report handoversReport()
{
    return {"handovers"_L1,
            QT_TRANSLATE_NOOP("Report", "Handovers"),
            {{"given"_L1, QT_TRANSLATE_NOOP("Report", "Handed over by"), 22},
             {"to"_L1, QT_TRANSLATE_NOOP("Report", "To"), 24},
             {"open"_L1, QT_TRANSLATE_NOOP("Report", "Open and half done"), 0},
             {"remarks"_L1, QT_TRANSLATE_NOOP("Report", "Remarks"), 32},
             {"accepted"_L1, QT_TRANSLATE_NOOP("Report", "Accepted"), 22}},
            &handoverRows};
}

} // namespace core
