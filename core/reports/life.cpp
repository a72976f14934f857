// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QHash>
#include <QStringList>

#include "core/acts/act.hpp"
#include "core/job/stage.hpp"
#include "core/job/twins.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

/// `E12 Bleed duct, forward. Duct, zone Left. Inspected. Critical; two inspections.`
QString headingOf(const JobRecord &record, const InterfaceState &item)
{
    QStringList marks;
    if (item.listed.critical)
        marks << inWords(QT_TRANSLATE_NOOP("Report", "critical"));
    if (item.listed.inspections > 1)
        marks << inWords(QT_TRANSLATE_NOOP("Report", "%1 inspections")).arg(item.listed.inspections);
    const QString heading = inWords(QT_TRANSLATE_NOOP("Report", "%1  %2  ·  %3  ·  %4"))
                                .arg(item.listed.id.text(), item.listed.name, record.kinds().nameOf(item.listed.kind), stageWord(stageOf(item)));
    return marks.isEmpty() ? heading : inWords(QT_TRANSLATE_NOOP("Report", "%1  ·  %2")).arg(heading, marks.join(u", "_s));
}

/// A finding may bear the same id as an interface, so the act says which of them is meant.
bool isAboutInterface(const Statement &said)
{
    const Act *act = findAct(said.kind);
    return act && said.subject && (act->subject == SubjectSort::Interface || act->subject == SubjectSort::NewInterface);
}

/// Positions of the entries about each interface, in order. What was said of twins together stands with each of them.
QHash<QString, std::vector<std::size_t>> entriesBySubject(const JobRecord &record)
{
    QHash<QString, std::vector<std::size_t>> bySubject;
    for (std::size_t i = 0; i < record.entries().size(); ++i) {
        const Statement &said = record.entries()[i].said;
        const std::vector<InterfaceId> twins = twinsReadIn(record.job(), said);
        for (const InterfaceId &id : twins)
            bySubject[id.text()].push_back(i);
        if (twins.empty() && isAboutInterface(said))
            bySubject[*said.subject].push_back(i);
    }
    return bySubject;
}

ReportRow rowOf(const JobRecord &record, const InterfaceState &item, std::size_t at)
{
    const Entry &entry = record.entries()[at];
    const Line &line = record.job().lines[at];
    const Register &reg = record.registerAt(entry.said.seq);
    return {headingOf(record, item),
            {item.listed.zone, item.listed.id.text(), QString::number(entry.said.seq), momentText(record.job(), entry.said.seq, entry.said.at), reg.nameOf(entry.said.author), meaningWord(entry.said.meaning),
             describe(entry.said, reg, record.kindOf(item.listed.id)), standingText(record, line)},
            line.standing};
}

std::vector<ReportRow> lifeRows(const JobRecord &record)
{
    const auto bySubject = entriesBySubject(record);
    std::vector<ReportRow> rows;
    for (const Zone &zone : record.job().facts.zones) {
        for (const InterfaceState &item : record.job().items) {
            if (item.listed.zone != zone.name)
                continue;
            for (const std::size_t at : bySubject.value(item.listed.id.text()))
                rows.push_back(rowOf(record, item, at));
        }
    }
    return rows;
}

} // namespace

Report lifeReport()
{
    return {"life"_L1,
            QT_TRANSLATE_NOOP("Report", "What was signed about each interface"),
            {{"zone"_L1, QT_TRANSLATE_NOOP("Report", "Zone"), 0},
             {"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 0},
             {"entry"_L1, QT_TRANSLATE_NOOP("Report", "Entry"), 7},
             {"at"_L1, QT_TRANSLATE_NOOP("Report", "Time"), 13},
             {"signed_by"_L1, QT_TRANSLATE_NOOP("Report", "Signed by"), 13},
             {"meaning"_L1, QT_TRANSLATE_NOOP("Report", "Signed as"), 11},
             {"statement"_L1, QT_TRANSLATE_NOOP("Report", "Statement"), 54},
             {"standing"_L1, QT_TRANSLATE_NOOP("Report", "Struck"), 0}},
            &lifeRows};
}

} // namespace core
