// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool raise(JobState &job, const Statement &said)
{
    const auto id = FindingId::parse(said.subject.value_or(QString()));
    if (!id || job.finding(*id))
        return false;
    job.findings.push_back({*id, markOf(said), InterfaceId::parse(said.body.text(u"interface")), said.body.text(u"description"),
                            std::nullopt, {}, {}, {}});
    return true;
}

bool close(JobState &job, const Statement &said)
{
    const auto id = FindingId::parse(said.subject.value_or(QString()));
    const auto at = std::find_if(job.findings.begin(), job.findings.end(), [&](const Finding &f) { return f.id == id; });
    if (at == job.findings.end() || at->closed)
        return false;
    at->closed = markOf(said);
    at->disposition = said.body.text(u"disposition");
    at->authority = said.body.text(u"authority");
    at->remarks = said.body.text(u"remarks");
    at->limit = QDate::fromString(said.body.text(u"limit"), Qt::ISODate);
    return true;
}

} // namespace

std::vector<Act> findingActs()
{
    return {
        {"finding.raised"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::NewFinding, QT_TRANSLATE_NOOP("Act", "Raise a finding"),
         QT_TRANSLATE_NOOP("Act", "Finding raised"),
         {field("description"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "What was found")),
          field("interface"_L1, FieldType::Interface, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "On the interface"))},
         &raise, &noCautions, {}},
        {"finding.closed"_L1, LedgerSort::Job, "inspected"_L1, SubjectSort::Finding, QT_TRANSLATE_NOOP("Act", "Close the finding"),
         QT_TRANSLATE_NOOP("Act", "Finding closed"),
         {choice("disposition"_L1, Needed::Always, QT_TRANSLATE_NOOP("Field", "Disposition"),
                 {"rectified"_L1, "within limits"_L1, "deferred"_L1}),
          field("authority"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Authority reference")),
          field("limit"_L1, FieldType::Date, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Deferred until, at most")),
          field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"))},
         &close, &noCautions, {}},
    };
}

} // namespace core
