// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/listing.hpp"

namespace core {

namespace {

std::optional<TorqueSpec> torqueIn(const json::Object &body)
{
    const auto fasteners = body.integer(u"torque_fasteners");
    const auto min = Quantity::parse(body.text(u"torque_min"), body.text(u"torque_unit"));
    const auto max = Quantity::parse(body.text(u"torque_max"), body.text(u"torque_unit"));
    if (!fasteners || !min || !max)
        return std::nullopt;
    return TorqueSpec{*fasteners, *min, *max};
}

} // namespace

Listing listingIn(const InterfaceId &id, const json::Object &body)
{
    Listing listed{.id = id,
                   .name = body.text(u"name"),
                   .kind = body.text(u"kind"),
                   .zone = body.text(u"zone"),
                   .requirements = body.texts(u"requirements"),
                   .torque = torqueIn(body),
                   .bondingMax = Quantity::parse(body.text(u"bonding_max"), body.text(u"bonding_unit")),
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
                   .note = body.text(u"note")};
    for (const QString &text : body.texts(u"access")) {
        if (const auto other = InterfaceId::parse(text))
            listed.access.push_back(*other);
    }
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
