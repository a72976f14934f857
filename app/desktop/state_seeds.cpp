// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/seeds.hpp"

#include <algorithm>

#include "core/job/draft_help.hpp"
#include "core/job/twins.hpp"

namespace desktop::seeds {

namespace {

using namespace Qt::StringLiterals;

const core::InterfaceState *chosen(const Situation &s) { return s.items.empty() ? nullptr : s.job.item(s.items.front()); }

std::vector<Seed> ofChosen(const Situation &s, core::json::Object body, core::json::Object probe)
{
    const core::InterfaceState *item = chosen(s);
    return item ? std::vector<Seed>{{item->listed.id.text(), std::move(body), std::move(probe)}} : std::vector<Seed>();
}

/// The side that the chosen interface is on, or that the person at the computer looks after.
QString likelyZone(const Situation &s)
{
    if (const core::InterfaceState *item = chosen(s))
        return item->listed.zone;
    const auto &zones = s.job.facts.zones;
    const auto own = std::find_if(zones.begin(), zones.end(), [&](const core::Zone &zone) { return s.person && zone.technician == s.person; });
    return own != zones.end() ? own->name : zones.empty() ? QString() : zones.front().name;
}

} // namespace

std::vector<Seed> stop(const Situation &s)
{
    core::json::Object body;
    const core::InterfaceState *item = chosen(s);
    if (const auto next = item ? core::breakPointOf(*item) : std::nullopt) {
        body.set(u"fastener"_s, next->fastener);
        body.set(u"pass"_s, next->pass);
    }
    return ofChosen(s, body, {{u"word"_s, u"-"_s}});
}

std::vector<Seed> resume(const Situation &s) { return ofChosen(s, {}, {}); }

/// The rules are asked with what can be said at any stage.
std::vector<Seed> stateCondition(const Situation &s)
{
    const core::InterfaceState *item = chosen(s);
    const bool isSaid = item && core::standingCondition(*item, core::Condition::CannotVerify);
    core::json::Object probe{{u"condition"_s, isSaid ? u"damaged"_s : u"cannot verify"_s}, {u"reason"_s, u"-"_s}};
    if (isSaid)
        probe.set(u"finding"_s, core::nextFinding(s.job));
    return ofChosen(s, {}, probe);
}

std::vector<Seed> clearCondition(const Situation &s)
{
    const core::InterfaceState *item = chosen(s);
    const core::ConditionStated *stated = item ? core::unsettled(*item) : nullptr;
    return ofChosen(s, stated ? core::json::Object{{u"condition"_s, core::conditionText(stated->condition)}} : core::json::Object(), {{u"how"_s, u"-"_s}});
}

std::vector<Seed> logUnlisted(const Situation &s)
{
    core::json::Object body;
    if (const QString zone = likelyZone(s); !zone.isEmpty())
        body.set(u"zone"_s, zone);
    return {{core::nextUnlisted(s.job), body, {{u"name"_s, u"-"_s}}}};
}

std::vector<Seed> giveDetails(const Situation &s)
{
    const core::InterfaceState *item = chosen(s);
    return ofChosen(s, item ? core::json::Object{{u"name"_s, item->listed.name}, {u"zone"_s, item->listed.zone}} : core::json::Object(), {{u"kind"_s, u"clamp"_s}});
}

std::vector<Seed> undisturbed(const Situation &s) { return ofChosen(s, {}, {{u"seen"_s, u"-"_s}}); }
std::vector<Seed> notApplicable(const Situation &s) { return ofChosen(s, {}, {{u"reason"_s, u"-"_s}}); }
std::vector<Seed> agreeNotApplicable(const Situation &s) { return ofChosen(s, {}, {}); }

/// Nothing is prefilled: the designations are read at the aircraft.
std::vector<Seed> verifyTwins(const Situation &s)
{
    std::vector<QString> aircraft;
    std::vector<QString> unit;
    if (const core::InterfaceState *item = chosen(s)) {
        for (const core::HalfPair &pair : core::listedPairs(s.job, *item)) {
            aircraft.push_back(pair.first);
            unit.push_back(pair.second);
        }
    }
    return ofChosen(s, {}, {{u"aircraft_halves"_s, core::json::arrayOf(aircraft)}, {u"unit_halves"_s, core::json::arrayOf(unit)}});
}

/// To ask the rules: anybody who may overrule, other than the one who inspects.
std::vector<Seed> inspectAgain(const Situation &s)
{
    core::json::Object probe{{u"cause"_s, u"-"_s}};
    for (const auto &[id, authorisation] : s.reg.authorisations) {
        if (authorisation.authority == core::Authority::Overrule && !authorisation.withdrawn && authorisation.person != s.person)
            probe.set(u"approver"_s, authorisation.person.text());
    }
    return ofChosen(s, {}, probe);
}

} // namespace desktop::seeds
