// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>
#include <QSet>
#include <QStringList>

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/list/cells.hpp"
#include "core/list/csv.hpp"
#include "core/list/interface_list.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/value/counted.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("InterfaceList", text); }

void setText(json::Object &body, const QString &name, const QString &text)
{
    if (!text.isEmpty())
        body.set(name, json::Value(text));
}

template <class Element, class TextOf>
void setTexts(json::Object &body, const QString &name, const std::vector<Element> &elements, TextOf textOf)
{
    std::vector<QString> texts;
    for (const Element &element : elements)
        texts.push_back(textOf(element));
    if (!texts.empty())
        body.set(name, json::arrayOf(texts));
}

void setTorque(json::Object &body, const TorqueSpec &torque)
{
    body.set(u"torque_fasteners"_s, json::Value(torque.fasteners));
    body.set(u"torque_min"_s, json::Value(torque.min.value().text()));
    body.set(u"torque_max"_s, json::Value(torque.max.value().text()));
    body.set(u"torque_unit"_s, json::Value(torque.min.unit()));
    if (torque.prevailing != Prevailing::None)
        body.set(u"torque_prevailing"_s, json::Value(torque.prevailing == Prevailing::Added ? u"added"_s : u"included"_s));
    if (torque.prevailingMin)
        body.set(u"torque_prevailing_min"_s, json::Value(torque.prevailingMin->text()));
    if (torque.prevailingMax)
        body.set(u"torque_prevailing_max"_s, json::Value(torque.prevailingMax->text()));
    setText(body, u"torque_condition"_s, torque.condition);
    setTexts(body, u"torque_passes"_s, torque.passes, [](const Decimal &percent) { return percent.text(); });
    setTexts(body, u"torque_order"_s, torque.order, [](qint64 fastener) { return QString::number(fastener); });
    if (torque.turn) {
        body.set(u"torque_turn_min"_s, json::Value(torque.turn->least.text() + u" °"_s));
        body.set(u"torque_turn_max"_s, json::Value(torque.turn->most.text() + u" °"_s));
    }
    setText(body, u"thread"_s, torque.thread);
}

void setLeak(json::Object &body, const LeakLimit &leak)
{
    setText(body, u"leak_class"_s, leak.worstClass);
    if (leak.rate)
        body.set(u"leak_rate"_s, json::Value(leak.rate->text()));
    if (leak.dropsPerMillilitre)
        body.set(u"leak_drops_per_ml"_s, json::Value(leak.dropsPerMillilitre->text()));
}

void setHardware(json::Object &body, const std::vector<HardwareLine> &lines)
{
    json::Array array;
    for (const HardwareLine &line : lines) {
        json::Object object{{u"part"_s, json::Value(line.part)}, {u"quantity"_s, json::Value(line.quantity)}};
        if (line.mustBeNew)
            object.set(u"new"_s, json::Value(true));
        array.emplace_back(std::move(object));
    }
    if (!array.empty())
        body.set(u"hardware"_s, json::Value(std::move(array)));
}

std::vector<QString> textsOf(const std::vector<InterfaceId> &ids)
{
    std::vector<QString> texts;
    for (const InterfaceId &id : ids)
        texts.push_back(id.text());
    return texts;
}

/// An empty requirements cell would ask for what the kind asks for by default.
QString cellOf(const Field &field, const json::Object &body)
{
    const json::Value *value = body.find(QString(field.name));
    if (field.name == "requirements"_L1 && value && body.texts(u"requirements").empty())
        return u"none"_s;
    return value ? csv::guarded(cellText(field, *value)) : QString();
}

QString titlesOf(const std::vector<QString> &requirementNames)
{
    QStringList titles;
    for (const QString &name : requirementNames) {
        const Requirement *requirement = findRequirement(name);
        titles << (requirement ? QCoreApplication::translate("Requirement", requirement->title) : name);
    }
    return titles.join(u", "_s);
}

QString torqueText(const std::optional<TorqueSpec> &torque)
{
    return torque ? tr("%1 × %2 to %3").arg(torque->fasteners).arg(torque->min.value().text(), torque->max.text()) : QString();
}

} // namespace

json::Object bodyOf(const Listing &listing)
{
    json::Object body{{u"name"_s, json::Value(listing.name)},
                      {u"kind"_s, json::Value(listing.kind)},
                      {u"zone"_s, json::Value(listing.zone)},
                      {u"requirements"_s, json::arrayOf(listing.requirements)},
                      {u"inspections"_s, json::Value(listing.inspections)}};
    if (listing.torque)
        setTorque(body, *listing.torque);
    if (listing.bondingMax) {
        body.set(u"bonding_max"_s, json::Value(listing.bondingMax->value().text()));
        body.set(u"bonding_unit"_s, json::Value(listing.bondingMax->unit()));
    }
    if (listing.bondingComparison == measure::Comparison::LessThan)
        body.set(u"bonding_comparison"_s, json::Value(u"less than"_s));
    if (listing.bondingReadings != 1)
        body.set(u"bonding_readings"_s, json::Value(listing.bondingReadings));
    if (listing.leak)
        setLeak(body, *listing.leak);
    setText(body, u"seal_part"_s, listing.sealPart);
    setText(body, u"safetying"_s, listing.safetying);
    setText(body, u"aircraft_half"_s, listing.aircraftHalf);
    setText(body, u"unit_half"_s, listing.unitHalf);
    if (listing.critical)
        body.set(u"critical"_s, json::Value(true));
    setText(body, u"independence_group"_s, listing.independenceGroup);
    setText(body, u"twin_group"_s, listing.twinGroup);
    if (!listing.access.empty())
        body.set(u"access"_s, json::arrayOf(textsOf(listing.access)));
    setText(body, u"reference"_s, listing.reference);
    setText(body, u"note"_s, listing.note);
    setHardware(body, listing.hardware);
    if (!listing.dependsOn.empty())
        body.set(u"depends_on"_s, json::arrayOf(textsOf(listing.dependsOn)));
    return body;
}

QByteArray writeInterfaceList(const std::vector<Listing> &listings)
{
    const std::vector<Field> &fields = findAct(u"interface.listed")->fields;
    std::vector<std::vector<QString>> records{{u"id"_s}};
    for (const Field &field : fields)
        records.front().push_back(field.name);
    for (const Listing &listing : listings) {
        const json::Object body = bodyOf(listing);
        std::vector<QString> record{csv::guarded(listing.id.text())};
        for (const Field &field : fields)
            record.push_back(cellOf(field, body));
        records.push_back(std::move(record));
    }
    return csv::write(records);
}

QByteArray writeInterfaceList(const JobState &job)
{
    std::vector<Listing> listings;
    for (const InterfaceState &item : job.items)
        listings.push_back(item.listed);
    return writeInterfaceList(listings);
}

ListPreview previewOf(const std::vector<ListedRow> &rows, const Kinds &kinds)
{
    ListPreview preview{{tr("Row"), tr("Id"), tr("Name"), tr("Kind"), tr("Zone"), tr("Must show"), tr("Torque"), tr("Critical"),
                         tr("Inspections"), tr("Off before it")},
                        {}, {}};
    QSet<QString> zones;
    qsizetype critical = 0;
    for (const ListedRow &row : rows) {
        const Listing &listing = row.listing;
        zones.insert(listing.zone);
        critical += listing.critical ? 1 : 0;
        preview.rows.push_back({QString::number(row.row), listing.id.text(), listing.name, kinds.nameOf(listing.kind), listing.zone,
                                titlesOf(listing.requirements), torqueText(listing.torque), listing.critical ? tr("critical") : QString(),
                                QString::number(listing.inspections), joinedInCell(textsOf(listing.access))});
    }
    preview.summary = tr("%1 in %2, %3 of them critical").arg(counted(std::ssize(rows), tr("1 interface"), tr("%1 interfaces")), counted(zones.size(), tr("1 zone"), tr("%1 zones"))).arg(critical);
    return preview;
}

} // namespace core
