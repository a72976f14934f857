// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include "core/calculations/parts.hpp"
#include "core/measure/conversion.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace calculation;

constexpr qint64 usualPlaces = 6;

Field quantityField() { return field("quantity"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Quantity with its unit")); }
Field placesField() { return field("places"_L1, FieldType::Integer, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Decimal places, 6 when not given")); }

/// The field takes a quantity of any kind, which a field of type Quantity cannot say; so it is a text that has to read as one.
Result<Calculated> convert(const json::Object &body, const LookUpTables &)
{
    const auto quantity = Quantity::read(body.text(u"quantity"));
    if (!quantity)
        return badField(quantityField(), quantity.error().message);
    return answeredOr(measure::conversionWorking(*quantity, *findUnit(body.text(u"unit")), body.integer(u"places").value_or(usualPlaces)));
}

} // namespace

std::vector<Calculation> unitCalculations()
{
    return {{"convert"_L1,
             QT_TRANSLATE_NOOP("Calculation", "Convert a unit"),
             QT_TRANSLATE_NOOP("Calculation", "A torque, length, weight, volume or other quantity in another unit of its kind, by exact factors."),
             {quantityField(), field("unit"_L1, FieldType::Unit, Needed::Always, QT_TRANSLATE_NOOP("Field", "Into")), placesField()},
             {},
             {{"quantity"_L1, "50 lbf·in"}, {"unit"_L1, "N·m"}},
             &noCautions,
             &convert}};
}

} // namespace core
