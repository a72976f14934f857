// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <functional>
#include <optional>
#include <vector>

#include "core/job/state.hpp"
#include "core/register/register.hpp"
#include "core/rules/refusal.hpp"

namespace desktop {

/// Another job, where a field lets one choose.
struct JobChoice {
    QString ledger;
    QString workOrder;
    QString words; ///< work order and title
};

/// What somebody looks at when they choose an action.
struct Situation {
    const core::JobState &job;
    const core::Register &reg;
    std::vector<core::InterfaceId> items; ///< chosen
    std::optional<core::PersonId> person; ///< who signed last, while the sitting is open
    core::Instant now;
    std::optional<QString> subject{};     ///< a finding, an entry number: whatever the page is about besides interfaces
    /// The open jobs of the store besides this one; asked for by who links jobs.
    std::function<std::vector<JobChoice>()> otherJobs{};
};

/// One entry to be, as far as it is known before anybody typed.
struct Seed {
    std::optional<QString> subject;
    core::json::Object body;  ///< prefilled
    core::json::Object probe; ///< likely values of what a person will type, to ask the rules with
    QString part{};           ///< tells several entries of one item apart: "Fastener 3"
    std::vector<QString> statements{}; ///< that a field of statements lets tick
    std::vector<JobChoice> jobs{};     ///< that a field of a job lets choose
    std::optional<qint64> answers{};    ///< the entry that it is an answer to: a handover
    std::vector<QLatin1String> asked{}; ///< the fields that are shown; all of them where this is empty
    std::vector<QLatin1String> inUnitOfReading{}; ///< quantities whose plain number is in what stands in the field `unit`, until another is said
};

struct ActionLine;

/// What pages ask for: what the rules say, and to have something signed. Answered by Signing in the program and by a
/// stand-in in the tests of single pages.
class Deeds {
public:
    virtual ~Deeds() = default;

    /// Why the action cannot be signed now, by the person at the computer, or by anybody while nobody is known; empty when it can.
    virtual core::Refusals whyNot(const ActionLine &action, const std::vector<core::InterfaceId> &items,
                                  const std::optional<QString> &subject = {}) const = 0;
    /// Opens the sheet in which the action is filled in and signed.
    virtual void begin(const ActionLine &action, const std::vector<core::InterfaceId> &items,
                       const std::optional<QString> &subject = {}) = 0;
    /// Who signed last, while the sitting is open.
    virtual std::optional<core::PersonId> person() const = 0;
};

} // namespace desktop
