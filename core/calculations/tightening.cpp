// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include "core/acts/listing.hpp"
#include "core/calculations/parts.hpp"
#include "core/measure/tightening.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace calculation;

QString tr(const char *text) { return QCoreApplication::translate("Calculation", text); }

Field fastenersField() { return field("fasteners"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Fasteners")); }
Field passesField() { return field("passes"_L1, FieldType::Texts, Needed::Always, QT_TRANSLATE_NOOP("Field", "Passes, percent of the final torque")); }

Result<std::vector<Decimal>> percentsIn(const json::Object &body)
{
    std::vector<Decimal> percents;
    for (const QString &text : body.texts(u"passes")) {
        const auto percent = Decimal::parse(text);
        if (!percent)
            return badField(passesField(), tr(QT_TRANSLATE_NOOP("Calculation", "\"%1\" is no percent of the final torque. Give numbers such as 30, 60, 100.")).arg(text));
        percents.push_back(*percent);
    }
    return percents;
}

Result<Calculated> fastenerOrder(const json::Object &body, const LookUpTables &)
{
    const auto percents = percentsIn(body);
    if (!percents)
        return failure(percents.error());
    const qint64 fasteners = *body.integer(u"fasteners");
    if (fasteners > mostFasteners)
        return badField(fastenersField(), tr(QT_TRANSLATE_NOOP("Calculation", "There are at most %1 fasteners; %2 are too many for one ring.")).arg(mostFasteners).arg(fasteners));
    return answeredOr(measure::tighteningWorking(fasteners, *quantityIn(body, u"final_torque", Dimension::Torque), *percents));
}

} // namespace

std::vector<Calculation> tighteningCalculations()
{
    return {{"fastener-order"_L1,
             QT_TRANSLATE_NOOP("Calculation", "Order and passes of a ring"),
             QT_TRANSLATE_NOOP("Calculation", "In which order the fasteners of a ring are tightened, and to how much in each pass."),
             {fastenersField(), quantity("final_torque"_L1, Dimension::Torque, Needed::Always, QT_TRANSLATE_NOOP("Field", "Final torque")), passesField()},
             {{"passes"_L1, "tightening_passes"_L1, {}}},
             {{"fasteners"_L1, "8"}, {"final_torque"_L1, "400 lbf·in"}, {"passes"_L1, "30, 60, 100"}},
             &measure::torqueCautions,
             &fastenerOrder}};
}

} // namespace core
