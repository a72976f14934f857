// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QStringList>

#include <algorithm>

#include "core/holds/standing.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

/// The hold point of an entry; once it was passed it cannot be set otherwise.
const HoldPoint *holdOf(const JobRecord &record, const Entry &entry)
{
    const auto id = HoldId::parse(entry.said.subject.value_or(QString()));
    return id ? record.job().hold(*id) : nullptr;
}

QString askedText(const HoldPoint &hold)
{
    QStringList lines;
    for (const HoldCondition &condition : hold.conditions)
        lines << describe(condition);
    return lines.join(u' ');
}

QString standsText(const JobRecord &record, const HoldPoint &hold, const Entry &entry)
{
    const HoldStanding standing = standingOf(record.job(), hold);
    if (!hold.passed || hold.passed->seq != entry.said.seq)
        return inWords(QT_TRANSLATE_NOOP("Report", "passed again later, or struck"));
    return standing.state == HoldState::Void ? inWords(QT_TRANSLATE_NOOP("Report", "VOID: %1")).arg(standing.undermined) : inWords(QT_TRANSLATE_NOOP("Report", "stands"));
}

std::vector<ReportRow> holdRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const Entry &entry : record.entries()) {
        const HoldPoint *hold = entry.said.kind == u"hold.passed" ? holdOf(record, entry) : nullptr;
        if (!hold)
            continue;
        const std::vector<QString> confirmed = entry.said.body.texts(u"confirmed");
        const Line &line = record.job().lines[static_cast<std::size_t>(entry.said.seq - 1)];
        rows.push_back({{},
                        {hold->id.text(), hold->title, askedText(*hold), QStringList(confirmed.begin(), confirmed.end()).join(u' '), standsText(record, *hold, entry),
                         personText(record.registerAt(entry.said.seq), entry.said.author), momentText(record.job(), entry.said.seq, entry.said.at), QString::number(entry.said.seq)},
                        line.standing});
    }
    for (const HoldPoint &hold : record.job().holds) {
        if (!hold.passed)
            rows.push_back({{}, {hold.id.text(), hold.title, askedText(hold), {}, inWords(QT_TRANSLATE_NOOP("Report", "NOT PASSED")), {}, {}, {}}, Standing::Stands});
    }
    return rows;
}

} // namespace

Report holdsReport()
{
    return {"hold_points"_L1,
            QT_TRANSLATE_NOOP("Report", "Hold points"),
            {{"hold_point"_L1, QT_TRANSLATE_NOOP("Report", "Id"), 0},
             {"title"_L1, QT_TRANSLATE_NOOP("Report", "Hold point"), 14},
             {"conditions"_L1, QT_TRANSLATE_NOOP("Report", "What was so"), 26},
             {"confirmed"_L1, QT_TRANSLATE_NOOP("Report", "Looked at and confirmed"), 26},
             {"stands"_L1, QT_TRANSLATE_NOOP("Report", "Stands"), 9},
             {"by"_L1, QT_TRANSLATE_NOOP("Report", "Passed by"), 10},
             {"at"_L1, QT_TRANSLATE_NOOP("Report", "At"), 11},
             {"entry"_L1, QT_TRANSLATE_NOOP("Report", "Entry"), 6}},
            &holdRows};
}

} // namespace core
