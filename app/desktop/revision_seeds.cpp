// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/seeds.hpp"
#include "app/desktop/seed_help.hpp"

#include "core/job/draft_help.hpp"
#include "core/list/interface_list.hpp"

namespace desktop::seeds {

namespace {

using namespace Qt::StringLiterals;

/// Another interface that is open with a tag on it, for asking the rules.
QString otherWithTag(const Situation &s, const core::InterfaceState &item)
{
    for (const core::InterfaceState &other : s.job.items) {
        if (&other != &item && core::carriesTag(other))
            return other.listed.id.text();
    }
    return item.listed.id.text();
}

} // namespace

std::vector<Seed> revise(const Situation &s)
{
    core::json::Object body;
    std::vector<QString> ids;
    for (const core::InterfaceId &id : s.items)
        ids.push_back(id.text());
    if (!ids.empty())
        body.set(u"interfaces"_s, core::json::arrayOf(ids));
    return {{{}, body, {{u"revision"_s, s.job.facts.revision + u'+'}, {u"changed"_s, u"-"_s}}}};
}

/// The row as it is: what is right in it stays, and to confirm all of it is to sign it as it is.
std::vector<Seed> relist(const Situation &s)
{
    const core::InterfaceState *item = chosen(s);
    return ofChosen(item, item ? core::bodyOf(item->listed) : core::json::Object(), {{u"why"_s, u"-"_s}});
}

std::vector<Seed> doubtTimes(const Situation &s)
{
    const qint64 entry = s.subject.value_or(QString()).toLongLong();
    return {{{}, {{u"first"_s, entry}, {u"last"_s, entry}}, {{u"reason"_s, u"-"_s}}}};
}

std::vector<Seed> exchangeTags(const Situation &s)
{
    const core::InterfaceState *item = chosen(s);
    return ofChosen(item, {}, {{u"other"_s, item ? otherWithTag(s, *item) : QString()}, {u"reason"_s, u"-"_s}});
}

std::vector<Seed> missBlank(const Situation &s)
{
    const core::InterfaceState *item = chosen(s);
    const core::End end = item && core::blanksToComeOut(s.job, *item, core::End::Aircraft) == 0 ? core::End::Unit : core::End::Aircraft;
    return ofChosen(item, {{u"end"_s, QString(core::endText(end))}, {u"finding"_s, core::nextFinding(s.job)}}, {{u"count"_s, 1}, {u"description"_s, u"-"_s}});
}

} // namespace desktop::seeds
