// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

/// The authorisation that the inspector held at that moment, as pinned: its id and approval.
QString authorisationText(const JobRecord &record, const EntryOnItem &on)
{
    const Statement &said = on.entry->said;
    const Need need{.authority = Authority::Inspect,
                    .kind = on.item ? std::optional(on.item->listed.kind) : std::nullopt,
                    .aircraftType = record.job().facts.aircraftType,
                    .at = said.at};
    const Authorisation *held = authorisationFor(record.registerAt(said.seq), said.author, need);
    return held ? inWords(QT_TRANSLATE_NOOP("Report", "%1 (%2)")).arg(held->id.text(), held->reference)
                : inWords(QT_TRANSLATE_NOOP("Report", "none found"));
}

bool countsToday(const EntryOnItem &on)
{
    const auto isThisEntry = [&](const Mark &mark) { return mark.seq == on.entry->said.seq; };
    return on.item && std::any_of(on.item->acceptances.begin(), on.item->acceptances.end(), isThisEntry);
}

QString worthText(const JobRecord &record, const EntryOnItem &on, bool isAcceptance)
{
    if (on.line->standing != Standing::Stands)
        return standingText(record, *on.line);
    if (!isAcceptance)
        return inWords(QT_TRANSLATE_NOOP("Report", "sent back"));
    return countsToday(on) ? inWords(QT_TRANSLATE_NOOP("Report", "counts")) : inWords(QT_TRANSLATE_NOOP("Report", "voided later"));
}

/// Why nobody else inspected it, and who allowed that.
QString reinspectionText(const JobRecord &record, const Statement &said)
{
    const auto approver = PersonId::parse(said.body.text(u"approver"));
    QString text = inWords(QT_TRANSLATE_NOOP("Report", "%1; allowed by %2")).arg(said.body.text(u"cause"), approver ? personText(record.registerAt(said.seq), *approver) : QString());
    if (const QString remarks = said.body.text(u"remarks"); !remarks.isEmpty())
        text += u"; "_s + remarks;
    return text;
}

ReportRow rowOf(const JobRecord &record, const EntryOnItem &on)
{
    const Statement &said = on.entry->said;
    const bool isRepeated = said.kind == u"inspection.repeated";
    const bool isAcceptance = isRepeated || said.kind == u"inspection.accepted";
    const QString words = isRepeated ? reinspectionText(record, said) : said.body.text(isAcceptance ? u"remarks" : u"reason");
    const bool isVoided = isAcceptance && on.line->standing == Standing::Stands && !countsToday(on);
    return {{},
            {itemText(on.item, *on.entry),
             isRepeated ? inWords(QT_TRANSLATE_NOOP("Report", "accepted BY ONE WHO HAD A HAND IN IT")) : isAcceptance ? inWords(QT_TRANSLATE_NOOP("Report", "accepted")) : inWords(QT_TRANSLATE_NOOP("Report", "rejected")), words,
             signerOf(record, markOf(said)), meaningWord(said.meaning), authorisationText(record, on), momentText(record.job(), said.seq, said.at), QString::number(said.seq),
             worthText(record, on, isAcceptance)},
            isVoided ? Standing::Fallen : on.line->standing};
}

std::vector<ReportRow> inspectionRows(const JobRecord &record)
{
    auto found = entriesOfKind(record, u"inspection.accepted");
    for (const QStringView kind : {QStringView(u"inspection.repeated"), QStringView(u"inspection.rejected")}) {
        const auto more = entriesOfKind(record, kind);
        found.insert(found.end(), more.begin(), more.end());
    }
    const JobState &job = record.job();
    const auto placeOf = [&](const EntryOnItem &on) {
        return std::pair(on.item ? job.itemAt.value(on.item->listed.id) : static_cast<qsizetype>(job.items.size()), on.entry->said.seq);
    };
    std::sort(found.begin(), found.end(), [&](const EntryOnItem &a, const EntryOnItem &b) { return placeOf(a) < placeOf(b); });
    std::vector<ReportRow> rows;
    for (const EntryOnItem &on : found)
        rows.push_back(rowOf(record, on));
    return rows;
}

} // namespace

Report inspectionsReport()
{
    return {"inspections"_L1,
            QT_TRANSLATE_NOOP("Report", "Inspections"),
            {{"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 19},
             {"result"_L1, QT_TRANSLATE_NOOP("Report", "Result"), 10},
             {"remarks"_L1, QT_TRANSLATE_NOOP("Report", "Remarks"), 18},
             {"inspector"_L1, QT_TRANSLATE_NOOP("Report", "Inspector"), 12},
             {"meaning"_L1, QT_TRANSLATE_NOOP("Report", "Signed as"), 10},
             {"authorisation"_L1, QT_TRANSLATE_NOOP("Report", "Authorisation"), 14},
             {"at"_L1, QT_TRANSLATE_NOOP("Report", "Time"), 12},
             {"entry"_L1, QT_TRANSLATE_NOOP("Report", "Entry"), 7},
             {"worth"_L1, QT_TRANSLATE_NOOP("Report", "Standing"), 11}},
            &inspectionRows};
}

} // namespace core
