// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/list/lessons.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

std::vector<ReportRow> lessonRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const Lesson &lesson : lessonsOf(record.job())) {
        const InterfaceState *item = record.job().item(lesson.item);
        const Line &line = record.job().lines[static_cast<std::size_t>(lesson.entry - 1)];
        rows.push_back({{}, {item ? item->listed.id.text() + u' ' + item->listed.name : lesson.item.text(), lesson.what, signerOf(record, {line.seq, line.author, line.at}), momentText(record.job(), line.seq, line.at), QString::number(line.seq)}});
    }
    return rows;
}

} // namespace

Report lessonsReport()
{
    return {"lessons"_L1,
            QT_TRANSLATE_NOOP("Report", "Compared with the list"),
            {{"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 26},
             {"what"_L1, QT_TRANSLATE_NOOP("Report", "What the list did not foresee"), 34},
             {"by"_L1, QT_TRANSLATE_NOOP("Report", "Signed by"), 18},
             {"at"_L1, QT_TRANSLATE_NOOP("Report", "At"), 15},
             {"entry"_L1, QT_TRANSLATE_NOOP("Report", "Entry"), 7}},
            &lessonRows};
}

} // namespace core
