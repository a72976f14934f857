// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QStringList>

#include "core/acts/test_form.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

QString coversText(const JobTest &test)
{
    QStringList ids;
    for (const InterfaceId &id : test.covers)
        ids << id.text();
    return ids.isEmpty() ? inWords(QT_TRANSLATE_NOOP("Report", "every interface")) : ids.join(u", "_s);
}

QString valuesText(const JobTest &test)
{
    QStringList lines;
    for (const TestValue &value : test.values) {
        const QString least = value.least ? value.least->text() : QString();
        const QString most = value.most ? value.most->text() : QString();
        lines << (least.isEmpty()  ? inWords(QT_TRANSLATE_NOOP("Report", "%1: %2 (at most %3)")).arg(value.name, value.read.text(), most)
                  : most.isEmpty() ? inWords(QT_TRANSLATE_NOOP("Report", "%1: %2 (at least %3)")).arg(value.name, value.read.text(), least)
                                   : inWords(QT_TRANSLATE_NOOP("Report", "%1: %2 (%3 to %4)")).arg(value.name, value.read.text(), least, most));
    }
    return lines.join(u"; "_s);
}

QString resultText(const JobRecord &record, const JobTest &test)
{
    if (!test.hasPassed)
        return inWords(QT_TRANSLATE_NOOP("Report", "failed"));
    const auto voided = whyVoid(record.job(), test);
    return voided ? inWords(QT_TRANSLATE_NOOP("Report", "passed; VOID since: %1")).arg(*voided) : inWords(QT_TRANSLATE_NOOP("Report", "passed"));
}

std::vector<ReportRow> testRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const JobTest &test : record.job().tests)
        rows.push_back({{}, {test.id.text(), inWords(QT_TRANSLATE_NOOP("Report", "%1: %2")).arg(test.what, test.name), coversText(test), valuesText(test), resultText(record, test), signerOf(record, test.mark), meaningOf(record, test.mark), momentText(record.job(), test.mark.seq, test.mark.at), QString::number(test.mark.seq)}});
    return rows;
}

} // namespace

Report testsReport()
{
    return {"tests"_L1,
            QT_TRANSLATE_NOOP("Report", "Tests"),
            {{"test"_L1, QT_TRANSLATE_NOOP("Report", "Test"), 6},
             {"what"_L1, QT_TRANSLATE_NOOP("Report", "Of what"), 16},
             {"covers"_L1, QT_TRANSLATE_NOOP("Report", "Covers"), 14},
             {"values"_L1, QT_TRANSLATE_NOOP("Report", "Values and limits"), 22},
             {"result"_L1, QT_TRANSLATE_NOOP("Report", "Result"), 11},
             {"by"_L1, QT_TRANSLATE_NOOP("Report", "By"), 10},
             {"meaning"_L1, QT_TRANSLATE_NOOP("Report", "Signed as"), 10},
             {"at"_L1, QT_TRANSLATE_NOOP("Report", "At"), 11},
             {"entry"_L1, QT_TRANSLATE_NOOP("Report", "Entry"), 6}},
            &testRows};
}

} // namespace core
