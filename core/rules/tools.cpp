// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/tools.hpp"

#include <algorithm>

#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString crew() { return inWords(QT_TRANSLATE_NOOP("Rule", "anybody of the job")); }

const JobTool *issued(const Case &c)
{
    const auto marking = ToolId::parse(c.draft.subject.value_or(QString()));
    return marking ? c.job.tools.last(*marking) : nullptr;
}

QString nameOf(const JobTool &tool) { return tool.name.isEmpty() ? tool.marking.text() : tool.marking.text() + u" ("_s + tool.name + u')'; }

QString joined(const std::vector<QString> &texts) { return QStringList(texts.begin(), texts.end()).join(u", "_s); }

std::optional<Refusal> measuringToolIsRegistered(const Case &c, const Tool *registered)
{
    const QString marking = c.draft.subject.value_or(QString());
    if (!registered)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The register has no measuring tool \"%1\".")).arg(marking), inWords(QT_TRANSLATE_NOOP("Rule", "whoever looks after the tools")));
    if (registered->withdrawn)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was withdrawn from use.")).arg(marking), inWords(QT_TRANSLATE_NOOP("Rule", "whoever looks after the tools")));
    return std::nullopt;
}

} // namespace

std::optional<Refusal> toolIsKnown(const Case &c)
{
    const auto marking = ToolId::parse(c.draft.subject.value_or(QString()));
    const auto sort = parseJobToolSort(c.text(u"sort"));
    if (!marking || !sort)
        return std::nullopt;
    const Tool *registered = c.reg.tool(*marking);
    if (*sort == JobToolSort::Measuring)
        return measuringToolIsRegistered(c, registered);
    if (registered)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is a measuring tool of the register (%2). Issue it as one.")).arg(marking->text(), registered->name), crew());
    if (c.text(u"name").isEmpty())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Say what %1 is, so that it is known when it is found.")).arg(marking->text()), crew());
    const qint64 pieces = c.draft.body.integer(u"pieces").value_or(1);
    const bool isKit = *sort == JobToolSort::Kit;
    if (isKit ? c.draft.body.contains(u"pieces") && pieces >= 1 && pieces <= mostOfOnePart : pieces == 1)
        return std::nullopt;
    return refusal(c, isKit ? inWords(QT_TRANSLATE_NOOP("Rule", "The kit %1 needs the number of its pieces, 1 to %2.")).arg(marking->text()).arg(mostOfOnePart)
                            : inWords(QT_TRANSLATE_NOOP("Rule", "%1 is one tool. What has several pieces is a kit.")).arg(marking->text()), crew());
}

std::optional<Refusal> toolIsIn(const Case &c)
{
    const JobTool *tool = issued(c);
    if (!tool || tool->returned)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was issued in entry %2 and has not come back. Two tools of one marking cannot be counted.")).arg(nameOf(*tool)).arg(tool->issued.seq), crew());
}

std::optional<Refusal> toolIsOut(const Case &c)
{
    const JobTool *tool = issued(c);
    if (!tool)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "No tool \"%1\" was issued to this job.")).arg(c.draft.subject.value_or(QString())), crew());
    if (!tool->returned)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 came back in entry %2.")).arg(nameOf(*tool)).arg(tool->returned->seq), crew());
}

std::optional<Refusal> kitIsWhole(const Case &c)
{
    const JobTool *tool = issued(c);
    if (!tool || tool->returned || tool->missing || tool->sort != JobToolSort::Kit || c.draft.body.integer(u"pieces") == tool->pieces)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The kit %1 went out with %2 pieces; %3 are counted. Find the difference, or say that it is missing.")).arg(nameOf(*tool)).arg(tool->pieces).arg(c.draft.body.integer(u"pieces").value_or(0)), crew());
}

std::optional<Refusal> countIsExact(const Case &c)
{
    const CountDifference difference = differenceOf(c.job.tools, c.draft.body.texts(u"tools"));
    if (difference.isNone())
        return std::nullopt;
    QStringList parts;
    if (!difference.missing.empty())
        parts << inWords(QT_TRANSLATE_NOOP("Rule", "Out and not counted: %1.")).arg(joined(difference.missing));
    if (!difference.tooMuch.empty())
        parts << inWords(QT_TRANSLATE_NOOP("Rule", "Counted and not out, or counted twice: %1.")).arg(joined(difference.tooMuch));
    parts << inWords(QT_TRANSLATE_NOOP("Rule", "Look again; then say which is missing, or issue what nobody issued."));
    return refusal(c, parts.join(u' '), crew());
}

std::optional<Refusal> toolIsNotMissingYet(const Case &c)
{
    const JobTool *tool = issued(c);
    if (!tool || tool->returned || !tool->missing)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is missing since entry %2, finding %3.")).arg(nameOf(*tool)).arg(tool->missing->mark.seq).arg(tool->missing->finding.text()), crew());
}

std::optional<Refusal> struckIssueIsUnused(const Case &c)
{
    const qint64 seq = c.draft.body.integer(u"entry").value_or(0);
    const auto &issues = c.job.tools.issues;
    const auto tool = std::find_if(issues.begin(), issues.end(), [&](const JobTool &one) { return one.issued.seq == seq; });
    if (tool == issues.end())
        return std::nullopt;
    const bool wasCounted = c.job.tools.counted && c.job.tools.counted->seq > seq;
    if (!wasCounted && !tool->missing && !tool->returned)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was issued: it was counted, came back or is missing since. It is not struck; return it, or say that it is missing.")).arg(nameOf(*tool)), crew());
}

const Rule toolMarked{"tool.marked"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A tool that nobody can tell from another is not missed."), &toolIsKnown};
const Rule toolIn{"tool.in"_L1, QT_TRANSLATE_NOOP("RuleWhy", "One marking, one tool."), &toolIsIn};
const Rule toolOut{"tool.out"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Only what went out comes back."), &toolIsOut};
const Rule toolKit{"tool.kit"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An empty place in a kit is a tool left somewhere."), &kitIsWhole};
const Rule toolCount{"tool.count"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A count that does not come out right is the moment to look."), &countIsExact};
const Rule toolMissed{"tool.missed"_L1, QT_TRANSLATE_NOOP("RuleWhy", "One loss, one finding."), &toolIsNotMissingYet};
const Rule strikeTool{"strike.tool"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Striking an issue must not make a missing tool disappear."), &struckIssueIsUnused};

} // namespace core::rules
