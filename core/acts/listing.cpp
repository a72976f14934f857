// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/listing.hpp"

#include "core/acts/act.hpp"
#include "core/measure/tightening.hpp"

namespace core {

namespace {

Prevailing prevailingIn(const json::Object &body)
{
    const QString text = body.text(u"torque_prevailing");
    return text == u"added" ? Prevailing::Added : text == u"included" ? Prevailing::Included : Prevailing::None;
}

std::optional<TorqueSpec> torqueIn(const json::Object &body)
{
    const auto fasteners = body.integer(u"torque_fasteners");
    const auto min = Quantity::parse(body.text(u"torque_min"), body.text(u"torque_unit"));
    const auto max = Quantity::parse(body.text(u"torque_max"), body.text(u"torque_unit"));
    if (!fasteners || !min || !max)
        return std::nullopt;
    TorqueSpec spec{*fasteners, *min, *max};
    spec.prevailing = prevailingIn(body);
    spec.prevailingMin = quantityIn(body, u"torque_prevailing_min", Dimension::Torque);
    spec.prevailingMax = quantityIn(body, u"torque_prevailing_max", Dimension::Torque);
    spec.condition = body.text(u"torque_condition");
    for (const QString &percent : body.texts(u"torque_passes")) {
        if (const auto share = Decimal::parse(percent))
            spec.passes.push_back(*share);
    }
    spec.order = torqueOrderIn(body.texts(u"torque_order"), *fasteners);
    const auto least = quantityIn(body, u"torque_turn_min", Dimension::Angle);
    const auto most = quantityIn(body, u"torque_turn_max", Dimension::Angle);
    if (least && most)
        spec.turn = TurnBand{least->value(), most->value()};
    spec.thread = body.text(u"thread");
    return spec;
}

std::optional<LeakLimit> leakIn(const json::Object &body)
{
    const auto rate = quantityIn(body, u"leak_rate", Dimension::VolumeRate);
    const QString worst = body.text(u"leak_class");
    if (worst.isEmpty() && !rate)
        return std::nullopt;
    return LeakLimit{worst, rate, Decimal::parse(body.text(u"leak_drops_per_ml"))};
}

} // namespace

std::vector<qint64> torqueOrderIn(const std::vector<QString> &texts, qint64 fasteners)
{
    if (texts == std::vector{QStringLiteral("cross")})
        return fasteners >= 1 && fasteners <= mostFasteners ? measure::crossPattern(fasteners) : std::vector<qint64>();
    std::vector<qint64> order;
    for (const QString &text : texts)
        order.push_back(text.toLongLong());
    return order;
}

Listing listingIn(const InterfaceId &id, const json::Object &body)
{
    Listing listed{.id = id,
                   .name = body.text(u"name"),
                   .kind = body.text(u"kind"),
                   .zone = body.text(u"zone"),
                   .requirements = body.texts(u"requirements"),
                   .torque = torqueIn(body),
                   .bondingMax = Quantity::parse(body.text(u"bonding_max"), body.text(u"bonding_unit")),
                   .bondingComparison = body.text(u"bonding_comparison") == u"less than" ? measure::Comparison::LessThan : measure::Comparison::AtMost,
                   .bondingReadings = body.integer(u"bonding_readings").value_or(1),
                   .leak = leakIn(body),
                   .sealPart = body.text(u"seal_part"),
                   .safetying = body.text(u"safetying"),
                   .aircraftHalf = body.text(u"aircraft_half"),
                   .unitHalf = body.text(u"unit_half"),
                   .critical = body.isTrue(u"critical"),
                   .inspections = body.integer(u"inspections").value_or(1),
                   .independenceGroup = body.text(u"independence_group"),
                   .twinGroup = body.text(u"twin_group"),
                   .access = {},
                   .reference = body.text(u"reference"),
                   .note = body.text(u"note"),
                   .hardware = hardwareLinesIn(body)};
    listed.access = interfacesIn(body, u"access");
    listed.dependsOn = interfacesIn(body, u"depends_on");
    return listed;
}

std::vector<Zone> zonesIn(const json::Object &body)
{
    std::vector<Zone> zones;
    const json::Value *value = body.find(u"zones");
    if (const json::Array *array = value ? value->array() : nullptr) {
        for (const json::Value &element : *array) {
            if (const json::Object *zone = element.object())
                zones.push_back({zone->text(u"name"), PersonId::parse(zone->text(u"technician"))});
        }
    }
    return zones;
}

} // namespace core
