// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include "core/calculations/leak_scheme.hpp"
#include "core/calculations/parts.hpp"
#include "core/job/leak_reading.hpp"
#include "core/measure/leak.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace calculation;

constexpr auto always = Needed::Always;
constexpr auto known = Needed::IfKnown;

QString tr(const char *text) { return QCoreApplication::translate("Calculation", text); }

Field schemeField() { return field("scheme"_L1, FieldType::Text, always, QT_TRANSLATE_NOOP("Field", "Scheme of leak classes")); }
Field sizeField() { return quantity("size"_L1, Dimension::Length, always, QT_TRANSLATE_NOOP("Field", "Wet area, across")); }
Field minutesField() { return ofAct(u"leak.checked", "minutes"_L1); }
Field worstField() { return field("worst"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Worst class allowed; none: dry")); }
Field limitField() { return quantity("limit"_L1, Dimension::VolumeRate, known, QT_TRANSLATE_NOOP("Field", "Limit, as a flow")); }
Field dropLimitField() { return quantity("drop_limit"_L1, Dimension::DropRate, known, QT_TRANSLATE_NOOP("Field", "Limit, as drops")); }

Result<Calculated> leakClass(const json::Object &body, const LookUpTables &tables)
{
    const auto scheme = leakSchemeNamed(body.text(u"scheme"), tables);
    if (!scheme)
        return badField(schemeField(), tr(QT_TRANSLATE_NOOP("Calculation", "There is no scheme \"%1\" in the look-up table. Give one of %2.")).arg(body.text(u"scheme"), leakSchemesIn(tables).join(u", "_s)));
    const QString worst = body.text(u"worst");
    const auto limit = worst.isEmpty() || worst == dryLeak() ? std::nullopt : std::optional(worst);
    if (const auto isOfScheme = measure::isWithin(std::nullopt, limit, *scheme); !isOfScheme)
        return badField(worstField(), isOfScheme.error());
    const measure::LeakLook look{*quantityIn(body, u"size", Dimension::Length), body.text(u"flow") == u"still" ? measure::Flow::Still : measure::Flow::DripsOrPools,
                                 body.integer(u"minutes")};
    if (const auto why = look.minutes ? std::nullopt : measure::whyTooSoon(look.minutes, *scheme))
        return badField(minutesField(), *why);
    const auto found = measure::classOf(look, *scheme);
    const auto within = found ? measure::isWithin(found->name, limit, *scheme) : measure::Measured<bool>(false);
    return judged(measure::leakWorking(look, limit, *scheme), within && *within);
}

bool isOnlyOne(const json::Object &body, const Field &one, const Field &other) { return body.contains(QString(one.name)) != body.contains(QString(other.name)); }

Result<Calculated> leakRate(const json::Object &body, const LookUpTables &)
{
    const Field rate = ofAct(u"leak.checked", "rate"_L1);
    const QString oneOfTwo = tr(QT_TRANSLATE_NOOP("Calculation", "Give either this or \"%1\" (%2)."));
    if (const Field drops = ofAct(u"leak.checked", "drops"_L1); !isOnlyOne(body, rate, drops))
        return badField(rate, oneOfTwo.arg(QCoreApplication::translate("Field", drops.label), drops.name));
    if (!isOnlyOne(body, limitField(), dropLimitField()))
        return badField(limitField(), oneOfTwo.arg(QCoreApplication::translate("Field", dropLimitField().label), dropLimitField().name));
    const auto flow = quantityIn(body, u"limit", Dimension::VolumeRate);
    const Quantity limit = flow ? *flow : *quantityIn(body, u"drop_limit", Dimension::DropRate);
    const Quantity seen = *leakRateIn(body);
    const auto dropsPerMillilitre = Decimal::parse(body.text(u"drops_per_ml"));
    const auto check = measure::rateAgainstLimit(seen, limit, dropsPerMillilitre);
    return judged(measure::rateWorking(seen, limit, dropsPerMillilitre), check && check->isWithin);
}

} // namespace

std::vector<Calculation> leakCalculations()
{
    return {
        {"leak-class"_L1,
         QT_TRANSLATE_NOOP("Calculation", "Class of a leak"),
         QT_TRANSLATE_NOOP("Calculation", "The class of a wet area by a published scheme, against the worst class that is allowed."),
         {schemeField(), sizeField(), choice("flow"_L1, always, QT_TRANSLATE_NOOP("Field", "The liquid"), {"still"_L1, "drips or pools"_L1}),
          minutesField(), worstField()},
         {{"scheme"_L1, "leak_classes"_L1, "scheme"_L1}, {"worst"_L1, "leak_classes"_L1, "class"_L1}},
         {{"scheme"_L1, "FAA"}, {"size"_L1, "1.1 in"}, {"flow"_L1, "still"}, {"minutes"_L1, "30"}, {"worst"_L1, "seep"}},
         &measure::leakCautions,
         &leakClass},
        {"leak-rate"_L1,
         QT_TRANSLATE_NOOP("Calculation", "Rate of a leak"),
         QT_TRANSLATE_NOOP("Calculation", "A flow or counted drops against a limit, one turned into the other where that is needed."),
         {ofAct(u"leak.checked", "rate"_L1), ofAct(u"leak.checked", "drops"_L1), limitField(), dropLimitField(), ofAct(u"leak.checked", "drops_per_ml"_L1)},
         {},
         {{"drops"_L1, "12 drops/min"}, {"limit"_L1, "1 mL/min"}, {"drops_per_ml"_L1, "20"}},
         &measure::leakCautions,
         &leakRate},
    };
}

} // namespace core
