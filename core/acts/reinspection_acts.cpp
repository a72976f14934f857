// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include "core/job/stage.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool repeat(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    const auto approver = PersonId::parse(said.body.text(u"approver"));
    if (!item || !approver || !job.facts.mayReinspect || !isReadyToAccept(job, *item) || (!item->actors.contains(said.author) && job.links.empty()))
        return false;
    item->acceptances.push_back(markOf(said));
    item->reinspections.push_back({markOf(said), said.body.text(u"cause"), *approver});
    item->rejection.reset();
    return true;
}

} // namespace

/// An inspection by somebody who had a hand in the work, for when nobody else is there and that was not to be foreseen.
/// Source: AMC4 145.A.48(b), paragraph (d); 14 CFR 135.429(d) knows a like exception for rotorcraft at remote sites.
std::vector<Act> reinspectionActs()
{
    return {{"inspection.repeated"_L1, LedgerSort::Job, "reinspected"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Inspect own work again"), QT_TRANSLATE_NOOP("Act", "Own work inspected again and accepted"),
             {field("cause"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Why this could not be foreseen")),
              field("approver"_L1, FieldType::Person, Needed::Always, QT_TRANSLATE_NOOP("Field", "Allowed by"), "person"_L1),
              field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"))},
             &repeat, &noCautions, {}}};
}

} // namespace core
