// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/bonding.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/calculations/parts.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace calculation;

constexpr auto always = Needed::Always;

std::vector<Field> limitFields()
{
    return {quantity("limit"_L1, Dimension::Resistance, always, QT_TRANSLATE_NOOP("Field", "Limit")),
            choice("comparison"_L1, always, QT_TRANSLATE_NOOP("Field", "The bond may have"), {"at most"_L1, "less than"_L1})};
}

std::vector<FromTable> limitTables() { return {{"limit"_L1, "bonding_limits"_L1, "limit"_L1}, {"comparison"_L1, "bonding_limits"_L1, "comparison"_L1}}; }

measure::BondingLimit limitIn(const json::Object &body)
{
    return {*quantityIn(body, u"limit", Dimension::Resistance), body.text(u"comparison") == u"less than" ? measure::Comparison::LessThan : measure::Comparison::AtMost};
}

Result<Calculated> bonding(const json::Object &body, const LookUpTables &)
{
    const measure::BondingLimit limit = limitIn(body);
    const Quantity reading = *quantityIn(body, u"reading", Dimension::Resistance);
    const auto second = quantityIn(body, u"second_reading", Dimension::Resistance);
    const auto verdict = second ? measure::worseOfTwo(limit, reading, *second) : measure::bondingAgainst(limit, reading);
    return judged(measure::bondingWorking(limit, reading, second, quantityIn(body, u"lead_zero", Dimension::Resistance)), verdict && verdict->isMet);
}

Result<Calculated> voltageDrop(const json::Object &body, const LookUpTables &)
{
    const measure::BondingLimit limit = limitIn(body);
    const Quantity voltage = *quantityIn(body, u"voltage", Dimension::Voltage);
    const Quantity current = *quantityIn(body, u"current", Dimension::Current);
    const auto verdict = measure::dropAgainst(limit, voltage, current);
    return judged(measure::dropWorking(limit, voltage, current), verdict && verdict->isMet);
}

} // namespace

std::vector<Calculation> bondingCalculations()
{
    return {
        {"bonding"_L1,
         QT_TRANSLATE_NOOP("Calculation", "Bonding resistance"),
         QT_TRANSLATE_NOOP("Calculation", "Whether one reading of a bond, or the worse of two, meets its limit."),
         joined(limitFields(), {quantity("reading"_L1, Dimension::Resistance, always, QT_TRANSLATE_NOOP("Field", "Reading")),
                                ofAct(u"bonding.measured", "second_reading"_L1), ofAct(u"bonding.measured", "lead_zero"_L1, Needed::IfKnown)}),
         limitTables(),
         {{"limit"_L1, "2.5 mΩ"}, {"comparison"_L1, "less than"}, {"reading"_L1, "1.8 mΩ"}, {"second_reading"_L1, "1.9 mΩ"}},
         &measure::bondingCautions,
         &bonding},
        {"voltage-drop"_L1,
         QT_TRANSLATE_NOOP("Calculation", "Bonding by voltage drop"),
         QT_TRANSLATE_NOOP("Calculation", "The resistance of a bond by the drop of voltage under a known current, against its limit."),
         joined(limitFields(), {quantity("voltage"_L1, Dimension::Voltage, always, QT_TRANSLATE_NOOP("Field", "Drop of voltage across the bond")),
                                quantity("current"_L1, Dimension::Current, always, QT_TRANSLATE_NOOP("Field", "Current through the bond"))}),
         limitTables(),
         {{"limit"_L1, "3 mΩ"}, {"comparison"_L1, "at most"}, {"voltage"_L1, "25 mV"}, {"current"_L1, "10 A"}},
         &measure::bondingCautions,
         &voltageDrop},
    };
}

} // namespace core
