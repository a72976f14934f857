// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/calculations/parts.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/job/torque_plan.hpp"
#include "core/measure/acceptance.hpp"
#include "core/measure/nut_drag.hpp"

namespace core::calculation {

using namespace Qt::StringLiterals;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Calculation", text); }

Field leastField() { return quantity("least"_L1, Dimension::Torque, Needed::Always, QT_TRANSLATE_NOOP("Field", "Least torque")); }
Field mostField() { return quantity("most"_L1, Dimension::Torque, Needed::Always, QT_TRANSLATE_NOOP("Field", "Most torque")); }
Field dragField() { return quantity("prevailing"_L1, Dimension::Torque, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Drag to be added")); }

} // namespace

Field ofAct(QStringView act, QLatin1String name)
{
    const Act *found = findAct(act);
    Q_ASSERT(found);
    const auto at = std::find_if(found->fields.begin(), found->fields.end(), [name](const Field &one) { return one.name == name; });
    Q_ASSERT(at != found->fields.end());
    return *at;
}

Field ofAct(QStringView act, QLatin1String name, Needed needed)
{
    Field field = ofAct(act, name);
    field.needed = needed;
    return field;
}

tl::unexpected<Error> badField(const Field &field, const QString &sentence)
{
    return failure(ErrorCode::BadInput, tr(QT_TRANSLATE_NOOP("Calculation", "\"%1\" (%2): %3")).arg(QCoreApplication::translate("Field", field.label), field.name, sentence));
}

Calculated answered(const measure::Working &working, const QStringList &forRecord) { return {Verdict::Answered, working, forRecord}; }
Calculated refused(const measure::Working &working) { return {Verdict::Refused, working, {}}; }
Calculated refused(const QString &why) { return {Verdict::Refused, {{}, why, {}, {}, {}}, {}}; }

Calculated answeredOr(const measure::Measured<measure::Working> &working) { return judged(working, true); }

Calculated judged(const measure::Measured<measure::Working> &working, bool isMet)
{
    if (!working)
        return refused(working.error());
    return isMet ? answered(*working) : refused(*working);
}

std::vector<Field> bandFields() { return {leastField(), mostField(), dragField()}; }

Result<measure::AskedTorque> bandIn(const json::Object &body)
{
    const auto least = quantityIn(body, u"least", Dimension::Torque);
    const auto most = quantityIn(body, u"most", Dimension::Torque);
    const auto drag = quantityIn(body, u"prevailing", Dimension::Torque);
    if (least->value().isNegative())
        return badField(leastField(), tr(QT_TRANSLATE_NOOP("Calculation", "%1 is below 0. Give the band of the maintenance data.")).arg(least->text()));
    if (most->coherent() <= 0)
        return badField(mostField(), tr(QT_TRANSLATE_NOOP("Calculation", "%1 is no torque to tighten to. Give the band of the maintenance data.")).arg(most->text()));
    if (*least > *most)
        return badField(leastField(), tr(QT_TRANSLATE_NOOP("Calculation", "%1 is above the most, %2. Give the least first, and then the most.")).arg(least->text(), most->text()));
    if (const auto why = drag ? measure::whyNoDragToAdd(*drag, *least) : std::nullopt)
        return badField(dragField(), *why);
    return measure::AskedTorque{measure::torqueBand(*least, *most), std::nullopt, drag};
}

std::vector<Field> adapterFields()
{
    return {ofAct(u"torque.applied", "wrench_length"_L1), ofAct(u"torque.applied", "extension"_L1), ofAct(u"torque.applied", "extension_angle"_L1)};
}

Result<std::optional<measure::Lever>> adapterIn(const json::Object &body)
{
    if (isLeverHalfTold(body)) {
        for (const Field &field : adapterFields()) {
            if (!body.contains(QString(field.name)))
                return badField(field, tr(QT_TRANSLATE_NOOP("Calculation", "It is missing. An adapter is told by the wrench's length, its own length and its angle: give all three or none.")));
        }
    }
    return leverIn(body);
}

Field deviationField(Needed needed) { return field("deviation"_L1, FieldType::Decimal, needed, QT_TRANSLATE_NOOP("Field", "The tool may be off by, % of the reading")); }

Result<std::optional<Decimal>> deviationIn(const json::Object &body)
{
    const auto percent = Decimal::parse(body.text(u"deviation"));
    const auto why = percent ? measure::whyNoDeviation(*percent) : std::nullopt;
    if (why)
        return badField(deviationField(Needed::IfKnown), *why);
    return percent;
}

} // namespace core::calculation
