// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

namespace core {

namespace {

using namespace Qt::StringLiterals;

JobTool *toolOf(JobState &job, const Statement &said)
{
    const auto marking = ToolId::parse(said.subject.value_or(QString()));
    return marking ? job.tools.last(*marking) : nullptr;
}

bool issue(JobState &job, const Statement &said)
{
    const auto marking = ToolId::parse(said.subject.value_or(QString()));
    const auto sort = parseJobToolSort(said.body.text(u"sort"));
    const JobTool *last = toolOf(job, said);
    if (!marking || !sort || (last && !last->returned))
        return false;
    job.tools.issues.push_back({*marking, *sort, said.body.text(u"name"), said.body.integer(u"pieces").value_or(1), PersonId::parse(said.body.text(u"holder")), markOf(said), std::nullopt, std::nullopt});
    return true;
}

/// One that was missing comes back as well; its finding says what became of it.
bool takeBack(JobState &job, const Statement &said)
{
    JobTool *tool = toolOf(job, said);
    if (!tool || tool->returned)
        return false;
    tool->returned = markOf(said);
    return true;
}

bool count(JobState &job, const Statement &said)
{
    if (!differenceOf(job.tools, said.body.texts(u"tools")).isNone())
        return false;
    job.tools.counted = markOf(said);
    return true;
}

bool miss(JobState &job, const Statement &said)
{
    JobTool *tool = toolOf(job, said);
    const auto finding = FindingId::parse(said.body.text(u"finding"));
    if (!tool || !tool->isOut() || !finding || job.finding(*finding))
        return false;
    tool->missing = MissingTool{*finding, markOf(said)};
    job.findings.push_back({*finding, markOf(said), std::nullopt, tool->marking.text() + u": "_s + said.body.text(u"description"), std::nullopt, {}, {}, {}});
    return true;
}

/// Common practice.
QStringList missingCautions()
{
    return {
        QCoreApplication::translate("Act", "Stop, tell the lead, and look for it now: nothing is closed, powered, moved or turned while a tool is missing."),
        QCoreApplication::translate("Act", "Intake, outlet, controls and the way of the unit come first; a tool in them hurts people when the engine is turned."),
        QCoreApplication::translate("Act", "The local rules say how long it is looked for, and who may release an aircraft whose tool was not found."),
    };
}

QStringList countCautions()
{
    return {QCoreApplication::translate("Act", "Count what lies there, piece by piece, against the marking; never tick what somebody says is there.")};
}

} // namespace

/// What is issued to the job and has to come back.
std::vector<Act> toolActs()
{
    const Field remarks = field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"));
    return {
        {"tool.issued"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::NewJobTool, QT_TRANSLATE_NOOP("Act", "Issue a tool"), QT_TRANSLATE_NOOP("Act", "Tool issued to the job:"),
         {choice("sort"_L1, Needed::Always, QT_TRANSLATE_NOOP("Field", "Sort"), {jobToolSortText(JobToolSort::Measuring), jobToolSortText(JobToolSort::Hand), jobToolSortText(JobToolSort::Kit)}),
          field("name"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "What it is")),
          field("pieces"_L1, FieldType::Integer, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Pieces, of a kit")),
          field("holder"_L1, FieldType::Person, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Who has it"), "person"_L1), remarks},
         &issue, &noCautions, {}},
        {"tool.returned"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::JobTool, QT_TRANSLATE_NOOP("Act", "Return the tool"), QT_TRANSLATE_NOOP("Act", "Tool returned:"),
         {field("pieces"_L1, FieldType::Integer, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Pieces counted, of a kit")), remarks},
         &takeBack, &noCautions, {}},
        {"tool.counted"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Count the tools"), QT_TRANSLATE_NOOP("Act", "Tools counted"),
         {field("tools"_L1, FieldType::Statements, Needed::Always, QT_TRANSLATE_NOOP("Field", "Markings that were counted"), "tool"_L1),
          field("helpers"_L1, FieldType::People, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Also counted by"), "person"_L1), remarks},
         &count, &countCautions, {}},
        {"tool.missing"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::JobTool, QT_TRANSLATE_NOOP("Act", "Tool missing"), QT_TRANSLATE_NOOP("Act", "Tool missing:"),
         {field("finding"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Finding number")),
          field("description"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Where it was last seen, and where it was looked for"))},
         &miss, &missingCautions, {}},
    };
}

} // namespace core
