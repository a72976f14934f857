// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/working.hpp"

#include <QCoreApplication>

namespace core::measure {

using namespace Qt::StringLiterals;

namespace {

/// How long the blank and the unit are with which a text begins, by the longest unit that no letter or digit goes on from; 0 where there
/// is none.
qsizetype unitWithBlank(QStringView text)
{
    qsizetype longest = 0;
    const auto take = [&](const QString &symbol) {
        const qsizetype end = 1 + symbol.size();
        if (end > longest && text.sliced(1).startsWith(symbol) && (text.size() == end || !text.at(end).isLetterOrNumber()))
            longest = end;
    };
    take(u"%"_s);
    for (const Unit &unit : units())
        take(unit.symbol);
    return longest;
}

} // namespace

QString shown(const Rational &value, const QString &unit, int places)
{
    const QString number = value.isExactIn(places) ? value.text(places) : QStringLiteral("≈ ") + value.text(places);
    return unit.isEmpty() ? number : number + u' ' + unit;
}

QString shownIn(const Rational &coherent, const Unit &unit, int places) { return shown(inUnit(coherent, unit), unit.symbol, places); }

QString unbroken(QString text)
{
    for (qsizetype at = text.indexOf(u' '); at >= 0; at = text.indexOf(u' ', at + 1)) {
        const qsizetype kept = at == 0 ? 0 : text.at(at - 1) == u'≈' ? 1 : text.at(at - 1).isDigit() ? unitWithBlank(QStringView(text).sliced(at)) : 0;
        for (qsizetype i = at; i < at + kept; ++i) {
            if (text.at(i) == u' ')
                text[i] = QChar(QChar::Nbsp);
        }
    }
    return text;
}

QStringList stepsOf(const Working &working)
{
    QStringList lines;
    for (const WorkingStep &step : working.steps) {
        QStringList parts{step.what + u':'};
        for (const QString &part : {step.formula, step.numbers}) {
            if (!part.isEmpty())
                parts << part + u" ="_s;
        }
        parts << step.result;
        lines << parts.join(u' ');
    }
    return lines;
}

QStringList linesOf(const Working &working) { return stepsOf(working) << working.answer << working.notes; }

QString dataGoverns()
{
    return QCoreApplication::translate("Measure", "This is a help. The approved maintenance data governs, then the local rules; where they differ from it, follow them.");
}

} // namespace core::measure
