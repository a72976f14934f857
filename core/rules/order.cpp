// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/order.hpp"

#include <algorithm>

#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

std::optional<Refusal> jobIsNotYetOpen(const Case &c)
{
    if (!c.job.opened)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "This job is open already. Open another job in a ledger of its own.")), {});
}

std::optional<Refusal> jobIsOpen(const Case &c)
{
    if (c.job.opened)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The job has not been opened yet.")), inWords(QT_TRANSLATE_NOOP("Rule", "the lead, by opening the job")));
}

std::optional<Refusal> jobIsNotClosed(const Case &c)
{
    if (!c.job.closed)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The job was closed on %1 and takes no more entries. Open a follow-on job that names it."))
                          .arg(c.job.closed->at.spoken()),
                   inWords(QT_TRANSLATE_NOOP("Rule", "nobody; open a follow-on job")));
}

std::optional<Refusal> clockDoesNotRunBack(const Case &c)
{
    const auto last = std::max(c.job.lastAt, c.reg.lastAt);
    if (!last || c.draft.at >= *last)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "This computer's clock says %1, which is before the last entry (%2). Set the clock right and sign again."))
                          .arg(c.draft.at.spoken(), last->spoken()),
                   inWords(QT_TRANSLATE_NOOP("Rule", "whoever looks after this computer's clock")));
}

std::optional<Refusal> lateEntryIsInThePast(const Case &c)
{
    const auto done = Instant::parseLedger(c.text(u"done_at"));
    if (!done || (*done <= c.draft.at && (!c.job.opened || *done >= c.job.opened->at)))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "\"Done at\" must lie between the opening of the job and now.")), inWords(QT_TRANSLATE_NOOP("Rule", "whoever fills in the form")));
}

const Rule notYetOpen{"job.opened-once"_L1, QT_TRANSLATE_NOOP("RuleWhy", "One ledger tells one job."), &jobIsNotYetOpen};
const Rule open{"job.open"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Before the job names its aircraft and its data, nothing can be said about it."), &jobIsOpen};
const Rule notClosed{"job.closed"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A released record must stay what was released."), &jobIsNotClosed};
const Rule clock{"ledger.clock"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Who was authorised and which tool was in date is asked for the moment of the entry."), &clockDoesNotRunBack};
const Rule lateEntry{"entry.done-at"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An entry made later than the act says so, and cannot say the impossible."), &lateEntryIsInThePast};

} // namespace core::rules
