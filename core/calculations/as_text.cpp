// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/calculations/as_text.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Calculation", text); }

/// A heading and indented lines under it; nothing where there are none.
void add(QStringList &text, const QString &heading, const QStringList &lines)
{
    if (lines.isEmpty())
        return;
    text << QString() << heading;
    for (const QString &line : lines)
        text << u"  "_s + line;
}

QStringList givenLines(const std::vector<Given> &given)
{
    qsizetype widest = 0;
    for (const Given &one : given)
        widest = std::max(widest, one.label.size());
    QStringList lines;
    for (const Given &one : given)
        lines << one.label.leftJustified(widest + 2) + one.text;
    return lines;
}

QString stepLine(const measure::WorkingStep &step)
{
    QStringList parts;
    for (const QString &part : {step.formula, step.numbers}) {
        if (!part.isEmpty())
            parts << part;
    }
    parts << step.result;
    return step.what + u": "_s + parts.join(u"  →  "_s);
}

} // namespace

QStringList linesOf(const Calculation &calculation, const json::Object &body, const Calculated &result)
{
    QStringList steps;
    for (const measure::WorkingStep &step : result.working.steps)
        steps << stepLine(step);
    QStringList text{tr(calculation.title)};
    add(text, tr(QT_TRANSLATE_NOOP("Calculation", "Mind:")), calculation.cautions());
    add(text, tr(QT_TRANSLATE_NOOP("Calculation", "Given:")), givenLines(givenIn(calculation, body)));
    add(text, tr(QT_TRANSLATE_NOOP("Calculation", "Working:")), steps);
    add(text, result.verdict == Verdict::Answered ? tr(QT_TRANSLATE_NOOP("Calculation", "Answer:")) : tr(QT_TRANSLATE_NOOP("Calculation", "No:")), {result.working.answer});
    add(text, tr(QT_TRANSLATE_NOOP("Calculation", "For the record:")), result.forRecord);
    add(text, tr(QT_TRANSLATE_NOOP("Calculation", "Notes:")), result.working.notes);
    add(text, tr(QT_TRANSLATE_NOOP("Calculation", "Sources:")), result.working.sources);
    return text << QString() << measure::dataGoverns();
}

} // namespace core
