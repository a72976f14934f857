// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/condition.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

/// The next entry that stands and clears this condition of the same interface, or nullptr.
const Entry *clearedBy(const JobRecord &record, const EntryOnItem &on)
{
    for (const Entry &entry : record.entries()) {
        const Statement &said = entry.said;
        const bool isLater = said.seq > on.entry->said.seq && record.job().lines[static_cast<std::size_t>(said.seq - 1)].standing == Standing::Stands;
        if (isLater && said.kind == u"condition.cleared" && said.subject == on.entry->said.subject && said.body.text(u"condition") == on.entry->said.body.text(u"condition"))
            return &entry;
    }
    return nullptr;
}

QString endText(const JobRecord &record, const EntryOnItem &on, Condition condition)
{
    if (on.line->standing != Standing::Stands)
        return standingText(record, *on.line);
    if (const Entry *cleared = clearedBy(record, on))
        return inWords(QT_TRANSLATE_NOOP("Report", "%1 (%2)")).arg(cleared->said.body.text(u"how"), signedText(record, {cleared->said.seq, cleared->said.author, cleared->said.at}));
    const ConditionStated *stated = on.item ? standingCondition(*on.item, condition) : nullptr;
    if (stated && stated->mark.seq == on.entry->said.seq)
        return inWords(QT_TRANSLATE_NOOP("Report", "STANDS"));
    return inWords(QT_TRANSLATE_NOOP("Report", "over with the work"));
}

std::vector<ReportRow> conditionRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const EntryOnItem &on : entriesOfKind(record, u"condition.stated")) {
        const Statement &said = on.entry->said;
        const auto condition = parseCondition(said.body.text(u"condition"));
        if (!condition)
            continue;
        const Mark mark{said.seq, said.author, said.at};
        rows.push_back({{}, {itemText(on.item, *on.entry), inWordsOf({mark, *condition, said.body.text(u"reason"), said.body.text(u"fasteners"), said.body.text(u"to_come_out")}), signedText(record, mark), QString::number(said.seq),
                             endText(record, on, *condition)},
                        on.line->standing});
    }
    return rows;
}

std::vector<ReportRow> letAloneRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    const auto add = [&](const InterfaceState &item, const QString &what, const QString &words, const QString &by) { rows.push_back({{}, {item.listed.id.text() + u' ' + item.listed.name, what, words, by}}); };
    for (const InterfaceState &item : record.job().items) {
        if (item.notApplicable) {
            const QString said = signedText(record, item.notApplicable->mark);
            const QString agreed = item.notApplicable->agreed ? signedText(record, *item.notApplicable->agreed) : waitsForAgreement(item) ? inWords(QT_TRANSLATE_NOOP("Report", "NOT AGREED")) : QString();
            add(item, inWords(QT_TRANSLATE_NOOP("Report", "not applicable")), item.notApplicable->reason, agreed.isEmpty() ? said : inWords(QT_TRANSLATE_NOOP("Report", "%1; agreed: %2")).arg(said, agreed));
        }
        const Entry *looked = item.undisturbed && !item.removal ? record.entry(item.undisturbed->seq) : nullptr;
        if (looked)
            add(item, inWords(QT_TRANSLATE_NOOP("Report", "undisturbed")), looked->said.body.text(u"seen"), signedText(record, *item.undisturbed));
        if (item.unlisted)
            add(item, inWords(QT_TRANSLATE_NOOP("Report", "on no list")), item.unlisted->detailed ? inWords(QT_TRANSLATE_NOOP("Report", "details given in entry %1")).arg(item.unlisted->detailed->seq) : inWords(QT_TRANSLATE_NOOP("Report", "DETAILS TO FOLLOW")),
                signedText(record, item.unlisted->mark));
    }
    return rows;
}

} // namespace

Report conditionsReport()
{
    return {"conditions"_L1,
            QT_TRANSLATE_NOOP("Report", "Conditions"),
            {{"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 20},
             {"condition"_L1, QT_TRANSLATE_NOOP("Report", "Condition"), 28},
             {"stated"_L1, QT_TRANSLATE_NOOP("Report", "Stated"), 17},
             {"entry"_L1, QT_TRANSLATE_NOOP("Report", "Entry"), 7},
             {"end"_L1, QT_TRANSLATE_NOOP("Report", "How it ended"), 28}},
            &conditionRows};
}

Report letAloneReport()
{
    return {"off_the_list"_L1,
            QT_TRANSLATE_NOOP("Report", "Untouched, not applicable, not listed"),
            {{"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 24},
             {"what"_L1, QT_TRANSLATE_NOOP("Report", "What"), 14},
             {"words"_L1, QT_TRANSLATE_NOOP("Report", "Why, or what was seen"), 32},
             {"signed"_L1, QT_TRANSLATE_NOOP("Report", "Signed"), 30}},
            &letAloneRows};
}

} // namespace core
