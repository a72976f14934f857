// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <memory>

#include "core/job/state.hpp"
#include "core/ledger/entry.hpp"
#include "core/register/register.hpp"
#include "core/rules/refusal.hpp"

namespace core {

/// A draft on a job together with all that may be known when it is judged.
struct Case {
    const JobState &job;
    const Register &reg;
    const Draft &draft;
    const InterfaceState *item; ///< the interface that the draft is about, when the job lists it

    /// The job as it would be with this draft as its next entry; worked out once. The job must be open.
    const JobState &after() const;

    QString text(QStringView name) const { return draft.body.text(name); }
    QString authorName() const { return reg.nameOf(draft.author); }
    /// The item's name for a sentence: `E12 (Bleed duct, forward)`.
    QString itemName() const { return item ? item->listed.id.text() + QStringLiteral(" (") + item->listed.name + u')' : draft.subject.value_or(QString()); }

    mutable std::shared_ptr<const JobState> worked{}; ///< see after()
};

/// A named rule: what it is called, why it exists (for the manual), and the question it asks of a draft.
/// The function returns a sentence and who can clear it, or nothing.
struct Rule {
    QLatin1String name;
    const char *why; ///< marked for translation in context "RuleWhy"
    std::optional<Refusal> (*refuse)(const Case &);
};

/// The same for drafts on the register.
struct RegisterRule {
    QLatin1String name;
    const char *why;
    std::optional<Refusal> (*refuse)(const Register &, const Draft &);
};

} // namespace core
