// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QStringList>

#include "core/reports/open_items.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

/// What the outgoing lead signed as open: `E12 disconnected; E13 reconnected, still to show: torque, safetying`.
QString openText(const JobRecord &record, const Handover &handover)
{
    const Entry *given = record.entry(handover.given.seq);
    const json::Value *open = given ? given->said.body.find(u"open") : nullptr;
    QStringList parts;
    if (const json::Array *array = open ? open->array() : nullptr) {
        for (const json::Value &element : *array) {
            const json::Object *item = element.object();
            if (!item)
                continue;
            parts << openItemInWords(*item);
        }
    }
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

} // namespace

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
