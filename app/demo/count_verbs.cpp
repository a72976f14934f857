// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/demo/verbs.hpp"

#include "core/job/draft_help.hpp"

namespace demo {

namespace {

using namespace Qt::StringLiterals;
using core::json::Object;
using Done = core::Result<void>;

/// `1 120`: the first number and the last.
Object blockIn(const Step &step) { return {{u"first"_s, step.what.front().toLongLong()}, {u"last"_s, step.what.back().toLongLong()}}; }

Done issuesTags(Play &play, const Step &step) { return say(play, {draft(step.who, u"tags.issued"_s, std::nullopt, blockIn(step))}); }

/// All of the block, less what was lost of it.
Done returnsTags(Play &play, const Step &step)
{
    Object body = blockIn(step);
    for (const core::TagBlock &block : play.state().tags.blocks) {
        if (block.first == body.integer(u"first"))
            body.set(u"counted"_s, block.size() - core::lostOf(play.state().tags, block));
    }
    return say(play, {draft(step.who, u"tags.returned"_s, std::nullopt, std::move(body))});
}

Done replacesTag(Play &play, const Step &step)
{
    return say(play, {draft(step.who, u"tag.lost"_s, step.what.front(), {{u"why"_s, step.words}, {u"tag"_s, core::nextTag(play.state())}})});
}

/// The choice is the sort, behind it the number of pieces of a kit.
Done issues(Play &play, const Step &step)
{
    const QString pieces = step.choice.section(u' ', 1);
    const bool isKit = step.choice.startsWith(u"kit"_s);
    std::vector<core::Draft> drafts;
    for (const QString &marking : step.what) {
        Object body{{u"sort"_s, isKit ? u"kit"_s : step.choice}};
        if (!step.words.isEmpty())
            body.set(u"name"_s, step.words);
        if (isKit)
            body.set(u"pieces"_s, pieces.toLongLong());
        drafts.push_back(draft(step.who, u"tool.issued"_s, marking, std::move(body)));
    }
    return say(play, drafts);
}

Done bringsBack(Play &play, const Step &step)
{
    std::vector<core::Draft> drafts;
    for (const QString &marking : step.what) {
        const auto id = core::ToolId::parse(marking);
        const core::JobTool *tool = id ? play.state().tools.last(*id) : nullptr;
        Object body;
        if (tool && tool->sort == core::JobToolSort::Kit)
            body.set(u"pieces"_s, tool->pieces);
        drafts.push_back(draft(step.who, u"tool.returned"_s, marking, std::move(body)));
    }
    return say(play, drafts);
}

/// Everything that is out, and nothing else.
Done counts(Play &play, const Step &step)
{
    std::vector<QString> markings;
    for (const core::JobTool *tool : play.state().tools.out())
        markings.push_back(tool->marking.text());
    Object body{{u"tools"_s, core::json::arrayOf(markings)}};
    if (!step.helpers.empty())
        body.set(u"helpers"_s, core::json::arrayOf(step.helpers));
    return say(play, {draft(step.who, u"tool.counted"_s, std::nullopt, std::move(body))});
}

Done misses(Play &play, const Step &step)
{
    return say(play, {draft(step.who, u"tool.missing"_s, step.what.front(), {{u"finding"_s, core::nextFinding(play.state())}, {u"description"_s, step.words}})});
}

} // namespace

const std::vector<Verb> &countVerbs()
{
    static const std::vector<Verb> verbs = {
        {"issues_tags"_L1, &issuesTags}, {"returns_tags"_L1, &returnsTags}, {"replaces_tag"_L1, &replacesTag}, {"issues"_L1, &issues},
        {"brings_back"_L1, &bringsBack}, {"counts"_L1, &counts},            {"misses"_L1, &misses},
    };
    return verbs;
}

} // namespace demo
