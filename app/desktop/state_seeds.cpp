// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/seeds.hpp"

#include <algorithm>

#include "app/desktop/seed_help.hpp"
#include "core/job/draft_help.hpp"
#include "core/job/twins.hpp"

namespace desktop::seeds {

namespace {

using namespace Qt::StringLiterals;

/// The side that the chosen interface is on, or that the person at the computer looks after.
QString likelyZone(const Situation &s)
{
    if (const core::InterfaceState *item = s.items.empty() ? nullptr : s.job.item(s.items.front()))
        return item->listed.zone;
    const auto &zones = s.job.facts.zones;
    const auto own = std::find_if(zones.begin(), zones.end(), [&](const core::Zone &zone) { return s.person && zone.technician == s.person; });
    return own != zones.end() ? own->name : zones.empty() ? QString() : zones.front().name;
}

/// Nothing stands there beforehand, and one thing is typed.
std::vector<Seed> askingFor(const Situation &s, const QString &field)
{
    return forEachItem(s, [&](const core::InterfaceState &, Seed &seed) { seed.probe = {{field, text("typed")}}; });
}

std::vector<Seed> askingNothing(const Situation &s)
{
    return forEachItem(s, [](const core::InterfaceState &, Seed &) {});
}

} // namespace

std::vector<Seed> stop(const Situation &s)
{
    return forEachItem(s, [](const core::InterfaceState &item, Seed &seed) {
        if (const auto next = core::breakPointOf(item))
            seed.body = {{u"fastener"_s, next->fastener}, {u"pass"_s, next->pass}};
        seed.probe = {{u"word"_s, text("word")}};
    });
}

std::vector<Seed> resume(const Situation &s) { return askingNothing(s); }

/// The rules are asked with what can be said at any stage.
std::vector<Seed> stateCondition(const Situation &s)
{
    return forEachItem(s, [&](const core::InterfaceState &item, Seed &seed) {
        const bool isSaid = core::standingCondition(item, core::Condition::CannotVerify) != nullptr;
        seed.probe = {{u"condition"_s, isSaid ? u"damaged"_s : u"cannot verify"_s}, {u"reason"_s, text("reason")}};
        if (isSaid)
            seed.probe.set(u"finding"_s, core::nextFinding(s.job));
    });
}

std::vector<Seed> clearCondition(const Situation &s)
{
    return forEachItem(s, [](const core::InterfaceState &item, Seed &seed) {
        if (const core::ConditionStated *stated = core::unsettled(item))
            seed.body = {{u"condition"_s, core::conditionText(stated->condition)}};
        seed.probe = {{u"how"_s, text("how")}};
    });
}

std::vector<Seed> logUnlisted(const Situation &s)
{
    core::json::Object body;
    if (const QString zone = likelyZone(s); !zone.isEmpty())
        body.set(u"zone"_s, zone);
    return {{core::nextUnlisted(s.job), body, {{u"name"_s, text("name")}}}};
}

std::vector<Seed> giveDetails(const Situation &s)
{
    return forEachItem(s, [](const core::InterfaceState &item, Seed &seed) {
        seed.body = {{u"name"_s, item.listed.name}, {u"zone"_s, item.listed.zone}};
        seed.probe = {{u"kind"_s, u"clamp"_s}};
    });
}

std::vector<Seed> undisturbed(const Situation &s) { return askingFor(s, u"seen"_s); }
std::vector<Seed> notApplicable(const Situation &s) { return askingFor(s, u"reason"_s); }
std::vector<Seed> agreeNotApplicable(const Situation &s) { return askingNothing(s); }
std::vector<Seed> confirmFree(const Situation &s) { return askingNothing(s); }
std::vector<Seed> stillAttached(const Situation &s) { return askingFor(s, u"what"_s); }
std::vector<Seed> freed(const Situation &s) { return askingFor(s, u"what"_s); }

/// Nothing is prefilled: the designations are read at the aircraft.
std::vector<Seed> verifyTwins(const Situation &s)
{
    return forEachItem(s, [&](const core::InterfaceState &item, Seed &seed) {
        std::vector<QString> aircraft;
        std::vector<QString> unit;
        for (const core::HalfPair &pair : core::listedPairs(s.job, item)) {
            aircraft.push_back(pair.first);
            unit.push_back(pair.second);
        }
        seed.probe = {{u"aircraft_halves"_s, core::json::arrayOf(aircraft)}, {u"unit_halves"_s, core::json::arrayOf(unit)}};
    });
}

/// To ask the rules: anybody who may overrule, other than the one who inspects.
std::vector<Seed> inspectAgain(const Situation &s)
{
    return forEachItem(s, [&](const core::InterfaceState &, Seed &seed) {
        seed.probe = {{u"cause"_s, text("cause")}};
        for (const auto &[id, authorisation] : s.reg.authorisations) {
            if (authorisation.authority == core::Authority::Overrule && !authorisation.withdrawn && authorisation.person != s.person)
                seed.probe.set(u"approver"_s, authorisation.person.text());
        }
    });
}

} // namespace desktop::seeds
