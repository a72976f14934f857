// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/bonding.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core::measure {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Measure", text); }

tl::unexpected<QString> no(const QString &sentence) { return tl::unexpected<QString>(sentence); }

bool isResistance(const Quantity &quantity) { return quantity.dimension() == Dimension::Resistance && !quantity.value().isNegative(); }

QString noReading(const Quantity &reading)
{
    return tr(QT_TRANSLATE_NOOP("Measure", "%1 is no reading of a bond. Check the meter's zero and the contact of its leads, and measure again.")).arg(reading.text());
}

bool meets(const Rational &ohms, const BondingLimit &limit)
{
    switch (limit.comparison) {
    case Comparison::AtMost: return ohms <= limit.resistance.coherent();
    case Comparison::LessThan: return ohms < limit.resistance.coherent();
    }
    Q_UNREACHABLE();
}

Measured<BondingVerdict> judge(const BondingLimit &limit, const Rational &ohms, const QString &text)
{
    if (!isResistance(limit.resistance) || limit.resistance.coherent() == 0)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "A limit of %1 is none that a bond can have. Give a resistance above 0.")).arg(limit.resistance.text()));
    const bool isMet = meets(ohms, limit);
    return BondingVerdict{ohms, isMet,
                          isMet ? tr(QT_TRANSLATE_NOOP("Measure", "%1 meets the limit, %2.")).arg(text, limit.text())
                                : tr(QT_TRANSLATE_NOOP("Measure", "%1 does not meet the limit, %2. Find the cause, clean and protect the faces as the maintenance data says, and measure again.")).arg(text, limit.text())};
}

WorkingStep limitStep(const BondingLimit &limit) { return {tr(QT_TRANSLATE_NOOP("Measure", "Limit")), {}, {}, limit.text()}; }

void finish(Working &working, const BondingVerdict &verdict)
{
    working.answer = verdict.said;
    working.sources << tr(QT_TRANSLATE_NOOP("Measure", "Limit: the maintenance data, as given"));
}

QString dropText(const BondingLimit &limit, const Rational &ohms) { return shownIn(ohms, *findUnit(limit.resistance.unit())); }

} // namespace

QString BondingLimit::text() const
{
    switch (comparison) {
    case Comparison::AtMost: return tr(QT_TRANSLATE_NOOP("Measure", "at most %1")).arg(resistance.text());
    case Comparison::LessThan: return tr(QT_TRANSLATE_NOOP("Measure", "less than %1")).arg(resistance.text());
    }
    Q_UNREACHABLE();
}

Measured<BondingVerdict> bondingAgainst(const BondingLimit &limit, const Quantity &reading)
{
    if (!isResistance(reading))
        return no(noReading(reading));
    return judge(limit, reading.coherent(), reading.text());
}

Measured<BondingVerdict> worseOfTwo(const BondingLimit &limit, const Quantity &first, const Quantity &second)
{
    for (const Quantity &one : {first, second}) {
        if (!isResistance(one))
            return no(noReading(one));
    }
    return bondingAgainst(limit, first < second ? second : first);
}

Measured<Rational> millivoltDrop(const Quantity &voltage, const Quantity &current)
{
    if (current.dimension() != Dimension::Current || current.coherent() <= 0)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "A drop under %1 says nothing of the bond. Send a known current above 0 through it.")).arg(current.text()));
    if (voltage.dimension() != Dimension::Voltage || voltage.value().isNegative())
        return no(tr(QT_TRANSLATE_NOOP("Measure", "%1 is no drop across a bond. Look whether the leads are the right way round, and measure again.")).arg(voltage.text()));
    return voltage.coherent() / current.coherent();
}

Measured<BondingVerdict> dropAgainst(const BondingLimit &limit, const Quantity &voltage, const Quantity &current)
{
    const auto ohms = millivoltDrop(voltage, current);
    if (!ohms)
        return no(ohms.error());
    return judge(limit, *ohms, dropText(limit, *ohms));
}

std::optional<QString> whyNotZeroed(const Quantity &leadZero, const Quantity &reading)
{
    if (!isResistance(leadZero))
        return tr(QT_TRANSLATE_NOOP("Measure", "A zero of the leads of %1 is none. Set the meter to zero with the leads on one piece of metal, and measure again.")).arg(leadZero.text());
    if (leadZero > reading)
        return tr(QT_TRANSLATE_NOOP("Measure", "The zero of the leads, %1, is more than the reading, %2, so the reading cannot be relied on. Check the leads, set the meter to zero, and measure again."))
            .arg(leadZero.text(), reading.text());
    return std::nullopt;
}

Measured<Working> bondingWorking(const BondingLimit &limit, const Quantity &reading, const std::optional<Quantity> &second, const std::optional<Quantity> &leadZero)
{
    const auto verdict = second ? worseOfTwo(limit, reading, *second) : bondingAgainst(limit, reading);
    if (!verdict)
        return no(verdict.error());
    Working working;
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Reading")), {}, {}, reading.text()});
    if (second) {
        working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Second reading")), {}, {}, second->text()});
        working.notes << tr(QT_TRANSLATE_NOOP("Measure", "Both readings have to meet the limit, so the worse one counts."));
    }
    if (leadZero) {
        if (const auto why = whyNotZeroed(*leadZero, second && *second < reading ? *second : reading))
            return no(*why);
        working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Zero of the leads, as recorded")), {}, {}, leadZero->text()});
        working.notes << tr(QT_TRANSLATE_NOOP("Measure", "In a four-wire reading the leads drop out: the zero is recorded and not subtracted."));
    }
    working.steps.push_back(limitStep(limit));
    finish(working, *verdict);
    return working;
}

Measured<Working> dropWorking(const BondingLimit &limit, const Quantity &voltage, const Quantity &current)
{
    const auto verdict = dropAgainst(limit, voltage, current);
    if (!verdict)
        return no(verdict.error());
    Working working;
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Resistance, R")), u"R = U / I"_s, voltage.text() + u" / "_s + current.text(), dropText(limit, verdict->resistance)});
    working.steps.push_back(limitStep(limit));
    finish(working, *verdict);
    working.sources << tr(QT_TRANSLATE_NOOP("Measure", "Millivolt drop: AC 43.13-1B (9/8/98) par. 11-188 j, fig. 11-19"));
    return working;
}

QStringList bondingCautions()
{
    return {
        tr(QT_TRANSLATE_NOOP("Measure", "Isolate and tag the circuits first, and measure when all mechanical connections of the bond are made.")),
        tr(QT_TRANSLATE_NOOP("Measure", "A test current can spark where a contact slips: not near fuel, vapour or open tanks, unless meter and procedure are approved for it.")),
        tr(QT_TRANSLATE_NOOP("Measure", "Faces that were cleaned to bare metal are bonded and finished again soon: within 24 hours, where the maintenance data says nothing else.")),
        tr(QT_TRANSLATE_NOOP("Measure", "The approved maintenance data and the local rules decide, and people who are licensed or authorised for it judge the bond.")),
    };
}

} // namespace core::measure
