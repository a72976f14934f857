// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QHash>
#include <QStringList>

#include "core/acts/act.hpp"
#include "core/job/linked.hpp"
#include "core/job/stage.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

QString joined(const std::vector<QString> &texts) { return QStringList(texts.begin(), texts.end()).join(u", "_s); }

/// Who and when of a mark that may not be there, as two cells; times in the ledger's form, for programs. People read signedText() in the cell after them.
void addMark(std::vector<QString> &cells, const JobRecord &record, const std::optional<Mark> &mark)
{
    cells.push_back(mark ? signerOf(record, *mark) : QString());
    cells.push_back(mark ? mark->at.text() : QString());
}

std::optional<Mark> lastTorque(const InterfaceState &item)
{
    return item.torque.empty() ? std::nullopt : std::optional(item.torque.back().mark);
}

/// Each acceptance as `inWordsOf` tells it.
QString inspectorsText(const JobRecord &record, const InterfaceState &item, QString (*inWordsOf)(const JobRecord &, const Mark &))
{
    QStringList names;
    for (const Mark &mark : item.acceptances)
        names << (reinspectionBehind(item, mark) ? inWords(QT_TRANSLATE_NOOP("Report", "%1 (OWN WORK)")).arg(inWordsOf(record, mark)) : inWordsOf(record, mark));
    return names.join(u"; "_s);
}

/// The last entry by which each interface was undone. An inspector who sends an item back undoes it in the state; on the
/// record it stays with who had it in their hands.
QHash<QString, qint64> undoings(const JobRecord &record)
{
    QHash<QString, qint64> lastBySubject;
    for (const Line &line : record.job().lines) {
        const bool undoes = line.kind == u"interface.disconnected" || line.kind == u"interface.found_open" || line.kind == u"interface.unlisted";
        if (undoes && line.standing == Standing::Stands && line.subject)
            lastBySubject.insert(*line.subject, line.seq);
    }
    return lastBySubject;
}

/// The stage, or why nothing is asked of it here.
QString stageText(const JobState &job, const InterfaceState &item)
{
    if (isElsewhere(item))
        return inWords(QT_TRANSLATE_NOOP("Report", "Sent to %1")).arg(jobInWords(job, item.sent->to));
    if (isNotApplicable(item))
        return inWords(QT_TRANSLATE_NOOP("Report", "Not applicable"));
    return isConfirmedUndisturbed(item) ? inWords(QT_TRANSLATE_NOOP("Report", "Undisturbed")) : stageWord(stageOf(item));
}

ReportRow rowOf(const JobRecord &record, const InterfaceState &item, const Entry *undone)
{
    const Listing &listed = item.listed;
    std::vector<QString> cells{listed.id.text(), listed.name, record.kinds().nameOf(listed.kind), listed.zone, stageText(record.job(), item),
                               listed.critical ? inWords(QT_TRANSLATE_NOOP("Report", "critical")) : QString(), joined(listed.requirements)};
    addMark(cells, record, undone ? std::optional(markOf(undone->said)) : std::nullopt);
    const bool cameOff = item.takenOn && item.removal && !undone; // who undid it stands in the record of the job that it came from
    cells.push_back(undone ? signedText(record, markOf(undone->said)) : QString());
    cells.push_back(undone ? undone->said.body.text(u"as_found") : cameOff ? item.removal->asFound : QString());
    cells.push_back(undone ? undone->said.body.text(u"tag") : cameOff ? item.removal->tag : QString());
    addMark(cells, record, item.restoration ? std::optional(item.restoration->mark) : std::nullopt);
    cells.push_back(item.restoration ? signedText(record, item.restoration->mark) : QString());
    addMark(cells, record, lastTorque(item));
    cells.push_back(inspectorsText(record, item, &signerOf));
    cells.push_back(item.acceptances.empty() ? QString() : item.acceptances.back().at.text());
    cells.push_back(inspectorsText(record, item, &signedText));
    cells.push_back(listed.reference);
    return {listed.zone, std::move(cells)};
}

std::vector<ReportRow> interfaceRows(const JobRecord &record)
{
    // By zone, as people walk round the unit; within a zone in the order of the list.
    const auto undone = undoings(record);
    std::vector<ReportRow> rows;
    for (const Zone &zone : record.job().facts.zones) {
        for (const InterfaceState &item : record.job().items) {
            if (item.listed.zone == zone.name)
                rows.push_back(rowOf(record, item, record.entry(undone.value(item.listed.id.text(), 0))));
        }
    }
    return rows;
}

} // namespace

Report interfacesReport()
{
    return {"interfaces"_L1,
            QT_TRANSLATE_NOOP("Report", "Interfaces"),
            {{"id"_L1, QT_TRANSLATE_NOOP("Report", "Id"), 7},
             {"name"_L1, QT_TRANSLATE_NOOP("Report", "Name"), 19},
             {"kind"_L1, QT_TRANSLATE_NOOP("Report", "Kind"), 13},
             {"zone"_L1, QT_TRANSLATE_NOOP("Report", "Zone"), 0},
             {"stage"_L1, QT_TRANSLATE_NOOP("Report", "Stage"), 11},
             {"critical"_L1, QT_TRANSLATE_NOOP("Report", "Critical"), 8},
             {"requirements"_L1, QT_TRANSLATE_NOOP("Report", "Requirements"), 0},
             {"undone_by"_L1, QT_TRANSLATE_NOOP("Report", "Undone by"), 0},
             {"undone_at"_L1, QT_TRANSLATE_NOOP("Report", "Undone at"), 0},
             {"undone"_L1, QT_TRANSLATE_NOOP("Report", "Undone"), 15},
             {"as_found"_L1, QT_TRANSLATE_NOOP("Report", "As found"), 0},
             {"tag"_L1, QT_TRANSLATE_NOOP("Report", "Tag"), 5},
             {"restored_by"_L1, QT_TRANSLATE_NOOP("Report", "Restored by"), 0},
             {"restored_at"_L1, QT_TRANSLATE_NOOP("Report", "Restored at"), 0},
             {"restored"_L1, QT_TRANSLATE_NOOP("Report", "Restored"), 15},
             {"torqued_by"_L1, QT_TRANSLATE_NOOP("Report", "Torqued by"), 0},
             {"torqued_at"_L1, QT_TRANSLATE_NOOP("Report", "Torqued at"), 0},
             {"inspected_by"_L1, QT_TRANSLATE_NOOP("Report", "Inspected by"), 0},
             {"inspected_at"_L1, QT_TRANSLATE_NOOP("Report", "Inspected at"), 0},
             {"inspected"_L1, QT_TRANSLATE_NOOP("Report", "Inspected"), 16},
             {"reference"_L1, QT_TRANSLATE_NOOP("Report", "Reference"), 0}},
            &interfaceRows};
}

} // namespace core
