// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/demo/verbs.hpp"

#include <QCoreApplication>

#include "core/job/draft_help.hpp"

namespace demo {

namespace {

using namespace Qt::StringLiterals;
using core::json::Object;
using Done = core::Result<void>;

/// Another job of the story: its name there, `change` for the first.
core::Result<std::shared_ptr<const core::JobState>> jobNamed(const Play &play, const QString &name)
{
    const auto at = play.jobs.find(name == u"change" ? QString() : name);
    auto job = at == play.jobs.end() ? nullptr : play.session.look(at->second);
    if (!job)
        return core::failure(core::ErrorCode::NotFound, QCoreApplication::translate("Demo", "The story has no job %1 yet.").arg(name));
    return job;
}

Object withRemarks(Object body, const Step &step)
{
    if (!step.words.isEmpty())
        body.set(u"remarks"_s, step.words);
    return body;
}

Done links(Play &play, const Step &step)
{
    const auto other = jobNamed(play, step.what.front());
    if (!other)
        return core::failure(other.error());
    const Object body{{u"ledger"_s, (*other)->ledger->text()}, {u"work_order"_s, (*other)->facts.workOrder}};
    return say(play, {draft(step.who, u"job.linked"_s, std::nullopt, withRemarks(body, step))});
}

/// The choice is the job that it goes to.
Done sends(Play &play, const Step &step)
{
    const auto other = jobNamed(play, step.choice);
    if (!other)
        return core::failure(other.error());
    std::vector<core::Draft> drafts;
    for (const QString &id : step.what)
        drafts.push_back(draft(step.who, u"interface.sent"_s, id, withRemarks({{u"to"_s, (*other)->ledger->text()}}, step)));
    return say(play, drafts);
}

/// The choice is the job that it comes from, behind it the zone that it goes into. A tag of this job is hung in place of the one that it comes with.
Done takesOn(Play &play, const Step &step)
{
    const auto other = jobNamed(play, step.choice.section(u' ', 0, 0));
    const auto id = core::InterfaceId::parse(step.what.front());
    const core::InterfaceState *item = other && id ? (*other)->item(*id) : nullptr;
    if (!item)
        return core::failure(core::ErrorCode::NotFound, QCoreApplication::translate("Demo", "The story takes on %1, which the other job does not list.").arg(step.what.front()));
    Object body = core::takenOnAs(play.state(), **other, *item);
    body.set(u"zone"_s, step.choice.section(u' ', 1));
    if (body.contains(u"tag"))
        body.set(u"tag_instead"_s, core::nextTag(play.state()));
    return say(play, {draft(step.who, u"interface.taken_on"_s, id->text(), withRemarks(std::move(body), step))});
}

} // namespace

const std::vector<Verb> &linkVerbs()
{
    static const std::vector<Verb> verbs = {{"links"_L1, &links}, {"sends"_L1, &sends}, {"takes_on"_L1, &takesOn}};
    return verbs;
}

} // namespace demo
