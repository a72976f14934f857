// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/demo/verbs.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/job/stage.hpp"
#include "resources/resources.hpp"

namespace demo {

namespace {

using namespace Qt::StringLiterals;
using core::json::Object;
using Done = core::Result<void>;

Done setsHolds(Play &play, const Step &step)
{
    const auto holds = resources::loadHoldPoints();
    const auto who = core::PersonId::parse(step.who);
    if (!holds || !who)
        return core::failure(holds ? core::Error{core::ErrorCode::BadInput, QCoreApplication::translate("Demo", "%1 is no id of a person.").arg(step.who), {}} : holds.error());
    return say(play, core::holdDrafts(*holds, *who, core::Instant::fromMilliseconds(0)));
}

/// Confirms each statement of the hold point.
Done passes(Play &play, const Step &step)
{
    const auto id = core::HoldId::parse(step.what.front());
    const core::HoldPoint *hold = id ? play.state().hold(*id) : nullptr;
    Object body;
    if (hold && !hold->statements.empty())
        body.set(u"confirmed"_s, core::json::arrayOf(hold->statements));
    if (!step.words.isEmpty())
        body.set(u"remarks"_s, step.words);
    return say(play, {draft(step.who, u"hold.passed"_s, step.what.front(), std::move(body))});
}

/// Goes round everything that is off and that nobody has confirmed free, but the mounts; one entry each.
Done walksRound(Play &play, const Step &step)
{
    std::vector<core::Draft> drafts;
    for (const core::InterfaceState &item : play.state().items) {
        const bool isDue = core::stageOf(item) == core::Stage::Disconnected && !item.walkedRound && !item.stillAttached && item.listed.kind != u"mount";
        const bool isNamed = step.what.empty() || std::find(step.what.begin(), step.what.end(), item.listed.id.text()) != step.what.end();
        if (isDue && isNamed && !item.actors.contains(*core::PersonId::parse(step.who)))
            drafts.push_back(draft(step.who, u"walkround.free"_s, item.listed.id.text(), {}));
    }
    return say(play, drafts);
}

Done findsAttached(Play &play, const Step &step) { return say(play, {draft(step.who, u"walkround.attached"_s, step.what.front(), {{u"what"_s, step.words}})}); }
Done frees(Play &play, const Step &step) { return say(play, {draft(step.who, u"interface.freed"_s, step.what.front(), {{u"what"_s, step.words}})}); }

/// The same act on each temporary item named.
Done onEach(Play &play, const Step &step, const QString &kind, const Object &body)
{
    std::vector<core::Draft> drafts;
    for (const QString &id : step.what)
        drafts.push_back(draft(step.who, kind, id, body));
    return say(play, drafts);
}

Done removes(Play &play, const Step &step) { return onEach(play, step, u"temporary.removed"_s, {}); }
Done gives(Play &play, const Step &step) { return onEach(play, step, u"temporary.handed_over"_s, {{u"to"_s, step.choice}}); }

Done refusesHandover(Play &play, const Step &step)
{
    const core::Handover *pending = play.state().pendingHandover();
    return say(play, {draft(step.who, u"handover.refused"_s, std::nullopt, {{u"given"_s, pending ? pending->given.seq : 0}, {u"reason"_s, step.words}})});
}

/// The last follow-up that is still due.
Done finishes(Play &play, const Step &step)
{
    const auto &all = play.state().followUps;
    const auto last = std::find_if(all.rbegin(), all.rend(), [](const core::FollowUp &one) { return !one.done; });
    return say(play, {draft(step.who, u"followup.done"_s, std::nullopt, {{u"entry"_s, last == all.rend() ? 0 : last->mark.seq}, {u"how"_s, step.words}})});
}

} // namespace

const std::vector<Verb> &gateVerbs()
{
    static const std::vector<Verb> verbs = {
        {"sets_holds"_L1, &setsHolds}, {"passes"_L1, &passes}, {"walks_round"_L1, &walksRound}, {"finds_attached"_L1, &findsAttached},
        {"frees"_L1, &frees},          {"removes"_L1, &removes}, {"gives"_L1, &gives},
        {"refuses_handover"_L1, &refusesHandover}, {"finishes"_L1, &finishes},
    };
    return verbs;
}

} // namespace demo
