// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/working.hpp"

#include <QCoreApplication>

namespace core::measure {

using namespace Qt::StringLiterals;

QString shown(const Rational &value, const QString &unit, int places)
{
    const QString number = value.isExactIn(places) ? value.text(places) : QStringLiteral("≈ ") + value.text(places);
    return unit.isEmpty() ? number : number + u' ' + unit;
}

QString shownIn(const Rational &coherent, const Unit &unit, int places) { return shown(inUnit(coherent, unit), unit.symbol, places); }

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
