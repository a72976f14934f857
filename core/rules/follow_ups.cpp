// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/follow_ups.hpp"

#include <algorithm>

#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

std::optional<Refusal> followUpIsToCome(const Case &c)
{
    const QDate due = QDate::fromString(c.text(u"due"), Qt::ISODate);
    if (due >= c.draft.at.utcDate())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is past. Give the last day on which it has to be done.")).arg(c.text(u"due")), inWords(QT_TRANSLATE_NOOP("Rule", "whoever sets it")));
}

std::optional<Refusal> followUpIsOpen(const Case &c)
{
    const qint64 seq = c.draft.body.integer(u"entry").value_or(0);
    if (std::any_of(c.job.followUps.begin(), c.job.followUps.end(), [&](const FollowUp &one) { return one.mark.seq == seq && !one.done; }))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 sets no follow-up that is still due.")).arg(seq), inWords(QT_TRANSLATE_NOOP("Rule", "whoever did it")));
}

const Rule followUpDue{"followup.due"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What was due yesterday is late, not planned."), &followUpIsToCome};
const Rule followUpOpen{"followup.open"_L1, QT_TRANSLATE_NOOP("RuleWhy", "One answer to one question."), &followUpIsOpen};

} // namespace core::rules
