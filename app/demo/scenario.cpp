// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/demo/scenario.hpp"

#include <QCoreApplication>

#include "app/demo/furnish.hpp"
#include "app/demo/step.hpp"
#include "app/demo/verbs.hpp"

namespace demo {

namespace {

/// The register was set up so long before.
constexpr int daysOfPreparation = 45;

core::Error atStep(core::Error error, const Step &step)
{
    error.where = {QStringLiteral("story.csv"), step.row, std::nullopt};
    return error;
}

core::Result<void> tell(Play &play, const std::vector<Step> &steps, Until until)
{
    for (const Step &step : steps) {
        const Verb *verb = findVerb(step.does);
        if (!verb)
            return core::failure(atStep({core::ErrorCode::BadInput, QCoreApplication::translate("Demo", "The story has no verb %1.").arg(step.does)}, step));
        if (until == Until::SecondShift && verb->word == pauseWord)
            return {};
        play.clock.to(play.day, step.time);
        if (const auto turned = turnTo(play, step.job); !turned)
            return core::failure(atStep(turned.error(), step));
        if (const auto done = verb->act(play, step); !done)
            return core::failure(atStep(done.error(), step));
        if (const auto fresh = play.session.refresh(); !fresh)
            return core::failure(fresh.error());
    }
    return {};
}

} // namespace

core::Result<Played> play(db::Store &store, const core::Kinds &kinds, QDate day, Until until, core::WrapCost cost)
{
    const auto steps = story();
    if (!steps)
        return core::failure(steps.error());
    DayClock clock(day.addDays(-daysOfPreparation), QTime(9, 0));
    session::Session session(store, clock.clock(), cost);
    Play play{.session = session, .clock = clock, .day = day, .kinds = kinds, .keys = {}};
    if (const auto furnished = furnish(play); !furnished)
        return core::failure(furnished.error());
    if (const auto told = tell(play, *steps, until); !told)
        return core::failure(told.error());
    if (const auto turned = turnTo(play, {}); !turned)
        return core::failure(turned.error());
    const auto members = cast();
    if (!members)
        return core::failure(members.error());
    const core::Result<core::Head> head = store.head(*play.job);
    if (!head)
        return core::failure(head.error());
    return Played{*play.job, play.jobs.at(QStringLiteral("shop")), *session.reg().ledger, *members, *head, *play.state().lastAt};
}

} // namespace demo
