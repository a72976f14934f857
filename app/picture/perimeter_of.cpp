// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/picture/perimeter_of.hpp"

#include <QCoreApplication>
#include <QHash>

#include <algorithm>

#include "core/job/linked.hpp"
#include "core/job/loose_ends.hpp"
#include "core/job/stage.hpp"

namespace picture {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Perimeter)
};

/// Zones by name, each where it came up first.
class Zones {
public:
    PerimeterZone &named(const QString &name)
    {
        const auto at = m_at.constFind(name);
        if (at != m_at.cend())
            return m_zones[*at];
        m_at.insert(name, m_zones.size());
        m_zones.push_back({name, {}});
        return m_zones.back();
    }
    Perimeter take() { return std::move(m_zones); }

private:
    Perimeter m_zones;
    QHash<QString, std::size_t> m_at;
};

PerimeterItem itemOf(const core::JobState &job, const core::InterfaceState &item, bool isLoose)
{
    const core::Stage stage = core::stageOf(core::asItIsNow(job, item));
    const QString word = core::isElsewhere(item) ? Words::tr("Sent on") : core::stageWord(stage);
    return {item.listed.id.text(), item.listed.name, stage, word, isLoose, item.listed.kind == u"mount"};
}

} // namespace

Perimeter perimeterOf(const core::JobState &job, const core::LooseEnds &looseEnds)
{
    const std::set<core::InterfaceId> loose = core::looseItems(looseEnds);
    const auto isApplied = [&](const core::TemporaryItem &item) {
        return std::any_of(looseEnds.begin(), looseEnds.end(), [&](const core::LooseEnd &end) { return end.rule == u"loose.temporary" && end.subject == item.id.text(); });
    };
    Zones zones;
    for (const core::Zone &zone : job.facts.zones)
        zones.named(zone.name);
    PerimeterZone without{Words::tr("No zone"), {}};
    const auto zoneOf = [&](const QString &name) -> PerimeterZone & { return name.isEmpty() ? without : zones.named(name); };
    for (const core::InterfaceState &item : job.items)
        zoneOf(item.listed.zone).items.push_back(itemOf(job, item, loose.contains(item.listed.id)));
    for (const core::TemporaryItem &item : job.temporaries) {
        if (!item.removed)
            zoneOf(item.zone).items.push_back({item.id.text(), item.name, std::nullopt, Words::tr("Applied"), isApplied(item), false});
    }
    Perimeter all = zones.take();
    if (!without.items.empty())
        all.push_back(std::move(without));
    return all;
}

QString hoistInWords(const core::JobState &job)
{
    QStringList words;
    bool wasHoisted = false;
    for (const core::TemporaryItem &item : job.temporaries) {
        if (item.sort != core::TemporarySort::Hoist && item.sort != core::TemporarySort::Sling)
            continue;
        wasHoisted = true;
        if (!item.removed)
            words << (item.sort == core::TemporarySort::Hoist ? Words::tr("Hoist on: %1 %2.") : Words::tr("Sling on: %1 %2.")).arg(item.id.text(), item.name);
    }
    if (wasHoisted && words.isEmpty())
        words << Words::tr("No hoist and no sling is on.");
    if (job.unit.up)
        words << Words::tr("A unit is in its place.");
    else if (job.unit.off)
        words << Words::tr("The unit is off.");
    return words.join(u' ');
}

} // namespace picture
