// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool miss(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    const auto end = parseEnd(said.body.text(u"end"));
    const qint64 count = said.body.integer(u"count").value_or(0);
    const auto finding = FindingId::parse(said.body.text(u"finding"));
    const auto id = InterfaceId::parse(said.subject.value_or(QString()));
    if (!id || !end || !finding || job.finding(*finding) || count < 1)
        return false;
    // Where the disconnection was struck that it was counted from, it is missing all the same.
    if (item && count <= blanksToComeOut(job, *item, *end))
        item->removal->blanksMissing.push_back({markOf(said), *end, count, *finding});
    job.blanksMissed.push_back(*finding);
    job.findings.push_back({*finding, markOf(said), *id, said.body.text(u"description"), std::nullopt, {}, {}, {}});
    return true;
}

/// Common practice.
QStringList missingCautions()
{
    return {
        QCoreApplication::translate("Act", "Stop, and tell the lead: a blank that is not found may be inside, and nothing is joined, fuelled, powered or turned until it is known where it is."),
        QCoreApplication::translate("Act", "Look inside as far as eyes, mirror and borescope reach, on both sides; the approved maintenance data and the local rules say how far."),
    };
}

} // namespace

/// Blanks that were fitted and are not there any more.
std::vector<Act> blankActs()
{
    return {
        {"blank.missing"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Blank missing"), QT_TRANSLATE_NOOP("Act", "Blank missing from"),
         {choice("end"_L1, Needed::Always, QT_TRANSLATE_NOOP("Field", "From which end"), {endText(End::Aircraft), endText(End::Unit)}),
          field("count"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Blanks missing")),
          field("finding"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Finding number")),
          field("description"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Where it was last seen, and where it was looked for"))},
         &miss, &missingCautions, {}},
    };
}

} // namespace core
