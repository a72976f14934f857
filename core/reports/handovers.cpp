// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QStringList>

#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

/// One of the things that were handed over.
QString openItemText(const json::Object &item)
{
    if (item.contains(u"temporary"))
        return inWords(QT_TRANSLATE_NOOP("Report", "%1 applied (%2)")).arg(item.text(u"temporary"), item.text(u"name"));
    if (item.contains(u"hold_point"))
        return inWords(QT_TRANSLATE_NOOP("Report", "hold point %1 %2")).arg(item.text(u"hold_point"), item.text(u"state"));
    if (item.contains(u"test"))
        return inWords(QT_TRANSLATE_NOOP("Report", "test %1 %2")).arg(item.text(u"test"), item.text(u"state"));
    if (item.contains(u"tool"))
        return inWords(QT_TRANSLATE_NOOP("Report", "tool %1 out (%2)")).arg(item.text(u"tool"), item.text(u"name"));
    if (item.contains(u"tags"))
        return inWords(QT_TRANSLATE_NOOP("Report", "tags %1 out")).arg(item.text(u"tags"));
    if (item.contains(u"accessory"))
        return inWords(QT_TRANSLATE_NOOP("Report", "accessory %1 not placed (%2)")).arg(item.text(u"accessory"), item.text(u"name"));
    if (item.contains(u"finding"))
        return inWords(QT_TRANSLATE_NOOP("Report", "finding %1 open (%2)")).arg(item.text(u"finding"), item.text(u"description"));
    QString text = inWords(QT_TRANSLATE_NOOP("Report", "%1 %2")).arg(item.text(u"interface"), item.text(u"stage"));
    if (item.contains(u"torqued"))
        text = inWords(QT_TRANSLATE_NOOP("Report", "%1, torqued %2 of %3")).arg(text).arg(item.integer(u"torqued").value_or(0)).arg(item.integer(u"of").value_or(0));
    if (item.contains(u"attached"))
        text = inWords(QT_TRANSLATE_NOOP("Report", "%1, still attached: %2")).arg(text, item.text(u"attached"));
    const std::vector<QString> texts = item.texts(u"missing");
    const QString missing = QStringList(texts.begin(), texts.end()).join(u", "_s);
    if (!missing.isEmpty())
        text = inWords(QT_TRANSLATE_NOOP("Report", "%1, still to show: %2")).arg(text, missing);
    for (const QString &condition : item.texts(u"conditions"))
        text += u", "_s + condition;
    if (const QString stopped = item.text(u"stopped"); !stopped.isEmpty())
        text = inWords(QT_TRANSLATE_NOOP("Report", "%1, stopped: %2")).arg(text, stopped);
    if (item.contains(u"details"))
        text = inWords(QT_TRANSLATE_NOOP("Report", "%1, details to follow")).arg(text);
    return text;
}

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
            parts << openItemText(*item);
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
            {{"given"_L1, QT_TRANSLATE_NOOP("Report", "Handed over by"), 16},
             {"to"_L1, QT_TRANSLATE_NOOP("Report", "To"), 16},
             {"open"_L1, QT_TRANSLATE_NOOP("Report", "Open and half done"), 38},
             {"remarks"_L1, QT_TRANSLATE_NOOP("Report", "Remarks"), 14},
             {"accepted"_L1, QT_TRANSLATE_NOOP("Report", "Accepted"), 16}},
            &handoverRows};
}

} // namespace core
