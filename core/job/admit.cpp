// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/admit.hpp"

#include <QCoreApplication>

#include "core/acts/act.hpp"
#include "core/rules/form.hpp"
#include "core/rules/rulebook.hpp"

namespace core {

namespace {

/// The form of the draft, and that it is kept in this ledger at all.
Refusals refusalsOfForm(const Draft &draft, LedgerSort ledger)
{
    Refusals refusals = refusalsOfForm(draft);
    const Act *act = findAct(draft.kind);
    if (act && act->ledger != ledger)
        refusals.push_back({QStringLiteral("form.ledger"), draft.subject.value_or(QString()),
                            QCoreApplication::translate("Rule", "%1 does not belong in this ledger.").arg(draft.kind), {}});
    return refusals;
}

} // namespace

Refusals admit(const JobState &job, const Register &reg, const Draft &draft)
{
    Refusals refusals = refusalsOfForm(draft, LedgerSort::Job);
    if (!refusals.empty())
        return refusals;
    const auto id = InterfaceId::parse(draft.subject.value_or(QString()));
    const Case c{job, reg, draft, id ? job.item(*id) : nullptr};
    for (const Rule *rule : rulesFor(draft.kind)) {
        if (auto refused = rule->refuse(c)) {
            refused->rule = rule->name;
            refusals.push_back(*std::move(refused));
        }
    }
    return refusals;
}

Refusals admit(const Register &reg, const Draft &draft)
{
    Refusals refusals = refusalsOfForm(draft, LedgerSort::Register);
    if (!refusals.empty())
        return refusals;
    for (const RegisterRule *rule : registerRulesFor(draft.kind)) {
        if (auto refused = rule->refuse(reg, draft)) {
            refused->rule = rule->name;
            refusals.push_back(*std::move(refused));
        }
    }
    return refusals;
}

} // namespace core
