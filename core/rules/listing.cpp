// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/listing.hpp"

#include <QSet>

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/acts/listing.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

/// How many times its least the most of a band may be. Published tables stay under 2; a slipped decimal makes 10 and more. Common practice.
constexpr int widestBand = 10;

QString lister() { return inWords(QT_TRANSLATE_NOOP("Rule", "whoever makes the list")); }

Refusal listingRefusal(const Case &c, const QString &sentence) { return refusal(c, sentence, lister()); }

} // namespace

std::optional<Refusal> interfaceIsNew(const Case &c)
{
    if (!c.item)
        return std::nullopt;
    return listingRefusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The list has an interface \"%1\" already.")).arg(c.item->listed.id.text()));
}

std::optional<Refusal> zoneExists(const Case &c)
{
    const auto &zones = c.job.facts.zones;
    if (std::any_of(zones.begin(), zones.end(), [&](const Zone &zone) { return zone.name == c.text(u"zone"); }))
        return std::nullopt;
    QStringList names;
    for (const Zone &zone : zones)
        names << zone.name;
    return listingRefusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "This job has no zone \"%1\"; its zones are: %2.")).arg(c.text(u"zone"), names.join(u", "_s)));
}

std::optional<Refusal> requirementsCanBeShown(const Case &c)
{
    const auto id = InterfaceId::parse(c.draft.subject.value_or(QString()));
    if (!id)
        return std::nullopt;
    const Listing listed = listingIn(*id, c.draft.body);
    for (const QString &name : listed.requirements) {
        const Requirement *requirement = findRequirement(name);
        if (!requirement)
            return listingRefusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "There is no requirement \"%1\".")).arg(name));
        if (const auto why = requirement->unmet(listed))
            return listingRefusal(c, *why);
    }
    return std::nullopt;
}

std::optional<Refusal> torqueBandIsSound(const Case &c)
{
    const auto min = Quantity::parse(c.text(u"torque_min"), c.text(u"torque_unit"));
    const auto max = Quantity::parse(c.text(u"torque_max"), c.text(u"torque_unit"));
    const auto bonding = Quantity::parse(c.text(u"bonding_max"), c.text(u"bonding_unit"));
    const qint64 fasteners = c.draft.body.integer(u"torque_fasteners").value_or(0);
    if (min && max && (min->dimension() != Dimension::Torque || *min > *max || min->coherent() <= 0))
        return listingRefusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A torque band runs from a least above 0 to a most, in a unit of torque; not from %1 to %2.")).arg(min->text(), max->text()));
    if (min && max && max->coherent() > min->coherent() * widestBand)
        return listingRefusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A band from %1 to %2 limits nothing: the most is over %3 times the least. Look for a slipped decimal or a wrong unit.")).arg(min->text(), max->text()).arg(widestBand));
    if (fasteners > mostFasteners)
        return listingRefusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "An interface has at most %1 fasteners; divide it into several interfaces.")).arg(mostFasteners));
    if (bonding && (bonding->dimension() != Dimension::Resistance || bonding->coherent() <= 0))
        return listingRefusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is no limit for a resistance. Give one above 0.")).arg(bonding->text()));
    return std::nullopt;
}

std::optional<Refusal> accessIsListed(const Case &c)
{
    // Only what is listed already may be named, so that no two interfaces can wait for each other.
    for (const QString &text : c.draft.body.texts(u"access")) {
        const auto id = InterfaceId::parse(text);
        // What came from a linked job may have something in front of it there.
        const bool isNamedAlready = id && c.item && c.item->takenOn && std::find(c.item->listed.access.begin(), c.item->listed.access.end(), *id) != c.item->listed.access.end();
        if (isNamedAlready)
            continue;
        if (!id || !c.job.item(*id))
            return listingRefusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" must be off before this one, and the list does not have it yet. List it first.")).arg(text));
    }
    return std::nullopt;
}

std::optional<Refusal> inspectionsAreOneOrTwo(const Case &c)
{
    const qint64 inspections = c.draft.body.integer(u"inspections").value_or(1);
    if (inspections == 1 || inspections == 2)
        return std::nullopt;
    return listingRefusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "An interface is inspected once or twice, not %1 times.")).arg(inspections));
}

std::optional<Refusal> zonesAreNamed(const Case &c)
{
    const std::vector<Zone> zones = zonesIn(c.draft.body);
    QSet<QString> names;
    for (const Zone &zone : zones)
        names.insert(zone.name);
    const bool isSound = !zones.empty() && names.size() == static_cast<qsizetype>(zones.size()) &&
                         std::all_of(names.begin(), names.end(), [](const QString &name) { return isIdText(name); });
    if (isSound)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A job needs at least one zone, each with a name of its own.")), inWords(QT_TRANSLATE_NOOP("Rule", "the lead")));
}

const Rule interfaceNew{"listing.new"_L1, QT_TRANSLATE_NOOP("RuleWhy", "One id, one interface."), &interfaceIsNew};
const Rule zoneKnown{"listing.zone"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Every interface is somebody's side."), &zoneExists};
const Rule requirementsSound{"listing.requirements"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What cannot be shown would stay loose for ever."), &requirementsCanBeShown};
const Rule torqueSpecSound{"listing.limits"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A wrong limit is signed for as readily as a right one."), &torqueBandIsSound};
const Rule accessKnown{"listing.access"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Two interfaces that wait for each other could never be restored."), &accessIsListed};
const Rule inspectionCount{"listing.inspections"_L1, QT_TRANSLATE_NOOP("RuleWhy", "No interface goes uninspected."), &inspectionsAreOneOrTwo};
const Rule zonesNamed{"job.zones"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Every side has one who looks after it."), &zonesAreNamed};

} // namespace core::rules
