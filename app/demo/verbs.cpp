// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/demo/verbs.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "app/demo/table.hpp"
#include "app/demo/work_drafts.hpp"
#include "core/job/draft_help.hpp"
#include "core/job/loose_ends.hpp"
#include "core/job/photo_marks.hpp"
#include "core/list/interface_list.hpp"

namespace demo {

namespace {

using namespace Qt::StringLiterals;
using core::json::Object;
using Done = core::Result<void>;

QString tr(const char *text) { return QCoreApplication::translate("Demo", text); }

Done sayAll(Play &play, const Drafts &drafts) { return drafts ? say(play, *drafts) : core::failure(drafts.error()); }

/// The files that a job of the story is made from.
struct JobFiles {
    QLatin1String job;
    QLatin1String facts;
    QLatin1String list;
};

const JobFiles &filesOf(const Play &play)
{
    static constexpr JobFiles files[] = {{""_L1, "job.json"_L1, "engine_change.csv"_L1}, {"shop"_L1, "build_up.json"_L1, "build_up.csv"_L1}};
    const auto at = std::find_if(std::begin(files), std::end(files), [&](const JobFiles &one) { return one.job == play.named; });
    return at == std::end(files) ? files[0] : *at;
}

Done opens(Play &play, const Step &step)
{
    const auto bytes = scenarioFile(filesOf(play).facts);
    if (!bytes)
        return core::failure(bytes.error());
    auto body = core::json::parseObject(*bytes);
    if (!body)
        return core::failure(body.error());
    const core::LedgerId ledger = session::Session::newLedgerId();
    const Done said = say(play, ledger, {draft(step.who, u"job.opened"_s, std::nullopt, *std::move(body))});
    if (!said)
        return said;
    play.job = ledger;
    play.jobs.insert_or_assign(play.named, ledger);
    return play.session.openJob(ledger);
}

Done lists(Play &play, const Step &step)
{
    const QString file = filesOf(play).list;
    const auto bytes = scenarioFile(file);
    if (!bytes)
        return core::failure(bytes.error());
    const auto list = core::readInterfaceList(*bytes, {file, play.kinds, play.state()});
    if (!list)
        return core::failure(list.error().front());
    std::vector<core::Draft> drafts;
    for (const core::ListedRow &row : *list)
        drafts.push_back(draft(step.who, u"interface.listed"_s, row.id.text(), row.body));
    return say(play, drafts);
}

Done undoes(Play &play, const Step &step) { return sayAll(play, undoDrafts(play, step)); }
Done joins(Play &play, const Step &step) { return sayAll(play, joinDrafts(play, step)); }
Done secures(Play &play, const Step &step) { return sayAll(play, secureDrafts(play, step)); }
Done torques(Play &play, const Step &step) { return sayAll(play, torqueDrafts(play, step)); }

/// A date that stands as days after the day of the story: `+120`.
void setDays(Object &body, const QString &name, QDate day)
{
    if (const QString text = body.text(name); text.startsWith(u'+'))
        body.set(name, day.addDays(text.mid(1).toInt()).toString(Qt::ISODate));
}

Done records(Play &play, const Step &step)
{
    const auto bytes = scenarioFile(u"figures.json"_s);
    const auto figures = bytes ? core::json::parseObject(*bytes) : core::failure(bytes.error());
    if (!figures)
        return core::failure(figures.error());
    std::vector<core::Draft> drafts;
    for (const QString &name : step.what) {
        const core::json::Value *named = figures->find(name);
        const core::json::Value *content = named && named->object() ? named->object()->find(u"body") : nullptr;
        if (!content || !content->object())
            return core::failure(core::ErrorCode::NotFound, tr("The demo has no figure %1.").arg(name));
        Object body = *content->object();
        setDays(body, u"hoist_due"_s, play.day);
        setDays(body, u"sling_due"_s, play.day);
        setDays(body, u"due"_s, play.day);
        const QString subject = named->object()->text(u"subject");
        drafts.push_back(draft(step.who, named->object()->text(u"kind"), subject.isEmpty() ? std::nullopt : std::optional(subject), std::move(body)));
    }
    return say(play, drafts);
}

Done checks(Play &play, const Step &step) { return sayAll(play, leakDrafts(play, step)); }

Done restores(Play &play, const Step &step)
{
    auto joined = joinDrafts(play, step);
    auto secured = joined ? secureDrafts(play, step) : joined;
    if (!secured)
        return core::failure(secured.error());
    joined->insert(joined->end(), secured->begin(), secured->end());
    return say(play, *joined);
}

Done findsOpen(Play &play, const Step &step)
{
    return say(play, {draft(step.who, u"interface.found_open"_s, step.what.front(),
                            {{u"tag"_s, core::nextTag(play.state())}, {u"blanks_fitted"_s, 1}, {u"unit_blanks_fitted"_s, 1}, {u"as_found"_s, step.choice},
                             {u"finding"_s, core::nextFinding(play.state())}, {u"evidence"_s, step.words}})});
}

Done raises(Play &play, const Step &step)
{
    return say(play, {draft(step.who, u"finding.raised"_s, core::nextFinding(play.state()),
                            {{u"interface"_s, step.what.front()}, {u"description"_s, step.words}})});
}

Done closes(Play &play, const Step &step)
{
    return say(play, {draft(step.who, u"finding.closed"_s, step.what.front(), {{u"disposition"_s, step.choice}, {u"authority"_s, step.words}})});
}

Done photographs(Play &play, const Step &step)
{
    const QString type = u"image/png"_s;
    const auto bytes = scenarioFile(u"photo_%1_%2.png"_s.arg(step.what.front(), step.choice));
    const auto digest = bytes ? play.session.store().attachments().put(*bytes, type) : core::failure(bytes.error());
    if (!digest)
        return core::failure(digest.error());
    return say(play, {draft(step.who, u"photo.attached"_s, step.what.front(),
                            {{u"sha256"_s, digest->hex()}, {u"media_type"_s, type}, {u"caption"_s, step.words}, {u"moment"_s, step.choice}})});
}

/// `choice` is the photo's moment, and the place in thousandths across and down.
Done marks(Play &play, const Step &step)
{
    const auto item = itemOf(play, step.what.front());
    if (!item)
        return core::failure(item.error());
    const QStringList parts = step.choice.split(u' ');
    const auto &photos = (*item)->photos;
    const auto photo = std::find_if(photos.begin(), photos.end(), [&](const core::Photo &one) { return one.moment == parts.value(0); });
    if (photo == photos.end())
        return core::failure(core::ErrorCode::NotFound, tr("The story has no photo \"%1\" of %2.").arg(parts.value(0), step.what.front()));
    const core::PhotoMark mark{photo->mark, core::nextMarkNumber(photo->marks), parts.value(1).toLongLong(), parts.value(2).toLongLong(), step.words};
    return say(play, {draft(step.who, u"photo.marked"_s, step.what.front(), {{u"sha256"_s, photo->digest.hex()}, {u"marks"_s, core::linesOf({mark})}})});
}

Done takesOver(Play &play, const Step &step)
{
    const auto item = itemOf(play, step.what.front());
    if (!item)
        return core::failure(item.error());
    const qint64 marked = static_cast<qint64>((*item)->torque.size());
    return say(play, {draft(step.who, u"torque.taken_over"_s, step.what.front(), {{u"fasteners"_s, marked}, {u"how_checked"_s, step.words}})});
}

/// An inspector signs item by item.
Done accepts(Play &play, const Step &step)
{
    for (const QString &id : step.what) {
        if (const Done said = say(play, {draft(step.who, u"inspection.accepted"_s, id, {})}); !said)
            return said;
        play.clock.pass(std::chrono::seconds(40));
    }
    return {};
}

Done rejects(Play &play, const Step &step)
{
    return say(play, {draft(step.who, u"inspection.rejected"_s, step.what.front(), {{u"back_to"_s, step.choice}, {u"reason"_s, step.words}})});
}

Done disturbs(Play &play, const Step &step)
{
    return say(play, {draft(step.who, u"interface.disturbed"_s, step.what.front(), {{u"reason"_s, step.words}})});
}

/// Strikes the last entry of the chosen kind about that subject.
Done strikes(Play &play, const Step &step)
{
    const auto &lines = play.state().lines;
    const auto last = std::make_reverse_iterator(lines.end());
    const auto none = std::make_reverse_iterator(lines.begin());
    const auto line = std::find_if(last, none, [&](const core::Line &l) {
        return l.kind == step.choice && l.subject == step.what.front() && l.standing == core::Standing::Stands;
    });
    if (line == none)
        return core::failure(core::ErrorCode::NotFound, tr("The story strikes an entry that is not there."));
    return say(play, {draft(step.who, u"entry.struck"_s, std::nullopt, {{u"entry"_s, line->seq}, {u"reason"_s, step.words}})});
}

/// Signs the rows as they are, but for the one member that the line names.
Done relists(Play &play, const Step &step)
{
    std::vector<core::Draft> drafts;
    for (const QString &id : step.what) {
        const auto item = itemOf(play, id);
        if (!item)
            return core::failure(item.error());
        Object body = core::bodyOf((*item)->listed);
        body.set(step.choice.section(u'=', 0, 0), step.choice.section(u'=', 1));
        body.set(u"why"_s, step.words);
        drafts.push_back(draft(step.who, u"interface.relisted"_s, id, std::move(body)));
    }
    return say(play, drafts);
}

Done handsOver(Play &play, const Step &step)
{
    return say(play, {draft(step.who, u"handover.given"_s, std::nullopt,
                            {{u"to"_s, step.what.front()}, {u"crew"_s, core::json::arrayOf(step.helpers)},
                             {u"open"_s, core::openAtHandover(play.state())}, {u"remarks"_s, step.words}})});
}

Done acceptsHandover(Play &play, const Step &step)
{
    const core::Handover *pending = play.state().pendingHandover();
    if (!pending)
        return core::failure(core::ErrorCode::NotFound, tr("The story accepts a handover that was not given."));
    return say(play, {draft(step.who, u"handover.accepted"_s, std::nullopt, {{u"given"_s, pending->given.seq}, {u"remarks"_s, step.words}})});
}

Done releases(Play &play, const Step &step)
{
    return say(play, {draft(step.who, u"job.closed"_s, std::nullopt, {{u"statement"_s, step.words}})});
}

Done pauses(Play &, const Step &) { return {}; }

constexpr Verb verbs[] = {
    {"relists"_L1, &relists},
    {"opens"_L1, &opens},           {"lists"_L1, &lists},
    {"undoes"_L1, &undoes},         {"finds_open"_L1, &findsOpen},
    {"joins"_L1, &joins},           {"torques"_L1, &torques},
    {"takes_over"_L1, &takesOver},  {"secures"_L1, &secures},
    {"restores"_L1, &restores},     {"photographs"_L1, &photographs},
    {"marks"_L1, &marks},
    {"accepts"_L1, &accepts},       {"rejects"_L1, &rejects},
    {"disturbs"_L1, &disturbs},     {"strikes"_L1, &strikes},
    {"raises"_L1, &raises},         {"closes"_L1, &closes},
    {"hands_over"_L1, &handsOver},  {"accepts_handover"_L1, &acceptsHandover},
    {"checks"_L1, &checks},         {"records"_L1, &records},
    {"releases"_L1, &releases},     {pauseWord, &pauses},
};

} // namespace

const Verb *findVerb(QStringView word)
{
    const auto at = std::find_if(std::begin(verbs), std::end(verbs), [&](const Verb &verb) { return verb.word == word; });
    if (at != std::end(verbs))
        return at;
    for (const auto *more : {&gateVerbs(), &countVerbs(), &linkVerbs()}) {
        const auto found = std::find_if(more->begin(), more->end(), [&](const Verb &verb) { return verb.word == word; });
        if (found != more->end())
            return &*found;
    }
    return nullptr;
}

} // namespace demo
