// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/job/linked.hpp"
#include "core/job/loose_ends.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

/// How the linked job stood at the head that the last entry pins.
QString stateOf(const JobRecord &record, const JobState *other)
{
    const JobState &job = record.job();
    if (!other)
        return inWords(QT_TRANSLATE_NOOP("Report", "cannot be seen from here"));
    if (!job.ledger || !isLinkedWith(*other, *job.ledger))
        return inWords(QT_TRANSLATE_NOOP("Report", "DOES NOT NAME THIS JOB"));
    if (other->closed)
        return inWords(QT_TRANSLATE_NOOP("Report", "closed on %1")).arg(momentText(*other, other->closed->seq, other->closed->at));
    const LooseEnds ends = ownLooseEnds(asItSees(job, *other), record.reg());
    return ends.empty() ? inWords(QT_TRANSLATE_NOOP("Report", "ready to close")) : inWords(QT_TRANSLATE_NOOP("Report", "%1 LOOSE ENDS")).arg(ends.size());
}

std::vector<ReportRow> linkRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    const std::vector<LinkedHead> none;
    const auto &pins = record.entries().empty() ? none : record.entries().back().said.linked;
    for (const Link &link : record.job().links) {
        const JobState *other = seenJob(record.job(), link.ledger);
        const auto pin = std::find_if(pins.begin(), pins.end(), [&](const LinkedHead &one) { return one.ledger == link.ledger; });
        rows.push_back({{},
                        {link.workOrder, other ? other->facts.title : QString(), link.ledger.text(), signedText(record, link.mark), stateOf(record, other),
                         pin == pins.end() ? QString() : QString::number(pin->head.seq), pin == pins.end() ? QString() : pin->head.hash.hex()}});
    }
    return rows;
}

/// Both ends of every item that was handed on, or that came.
std::vector<ReportRow> handedOnRows(const JobRecord &record)
{
    const JobState &job = record.job();
    const auto signedThere = [&](const JobState &there, const Mark &mark) { return inWords(QT_TRANSLATE_NOOP("Report", "%1, %2, entry %3 there")).arg(personText(record.reg(), mark.by), momentText(there, mark.seq, mark.at)).arg(mark.seq); };
    std::vector<ReportRow> rows;
    for (const InterfaceState &item : job.items) {
        const QString name = item.listed.id.text() + u' ' + item.listed.name;
        if (item.takenOn) {
            const JobState *from = seenJob(job, item.takenOn->from);
            const InterfaceState *there = from ? from->item(item.listed.id) : nullptr;
            rows.push_back({{}, {name, inWords(QT_TRANSLATE_NOOP("Report", "from %1")).arg(jobInWords(job, item.takenOn->from)), there && there->sent ? signedThere(*from, there->sent->mark) : QString(), signedText(record, item.takenOn->mark)}});
        }
        if (item.sent) {
            const JobState *to = seenJob(job, item.sent->to);
            const InterfaceState *there = to ? to->item(item.listed.id) : nullptr;
            const bool isTakenOn = there && there->takenOn && there->takenOn->from == job.ledger;
            rows.push_back({{}, {name, inWords(QT_TRANSLATE_NOOP("Report", "to %1")).arg(jobInWords(job, item.sent->to)), signedText(record, item.sent->mark), isTakenOn ? signedThere(*to, there->takenOn->mark) : inWords(QT_TRANSLATE_NOOP("Report", "NOT TAKEN ON"))}});
        }
    }
    return rows;
}

} // namespace

Report linksReport()
{
    return {"linked_jobs"_L1,
            QT_TRANSLATE_NOOP("Report", "Linked jobs"),
            {{"work_order"_L1, QT_TRANSLATE_NOOP("Report", "Work order"), 12},
             {"title"_L1, QT_TRANSLATE_NOOP("Report", "Title"), 22},
             {"ledger"_L1, QT_TRANSLATE_NOOP("Report", "Ledger"), 0},
             {"linked"_L1, QT_TRANSLATE_NOOP("Report", "Linked"), 20},
             {"state"_L1, QT_TRANSLATE_NOOP("Report", "As the last entry saw it"), 18},
             {"entry"_L1, QT_TRANSLATE_NOOP("Report", "Its entry"), 8},
             {"hash"_L1, QT_TRANSLATE_NOOP("Report", "Hash of that entry"), 0}},
            &linkRows};
}

Report handedOnReport()
{
    return {"handed_on"_L1,
            QT_TRANSLATE_NOOP("Report", "Items handed on between linked jobs"),
            {{"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 24},
             {"job"_L1, QT_TRANSLATE_NOOP("Report", "Job"), 26},
             {"sent"_L1, QT_TRANSLATE_NOOP("Report", "Sent"), 25},
             {"taken_on"_L1, QT_TRANSLATE_NOOP("Report", "Taken on"), 25}},
            &handedOnRows};
}

} // namespace core
