// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <array>

#include "core/job/state.hpp"
#include "core/register/register.hpp"

namespace core {

/// A job in one line of the start page. Computed from the ledger, so it may be thrown away and made again.
struct JobSummary {
    QString title;
    QString workOrder;
    QString aircraft;
    QString unit;
    bool isClosed = false;
    qint64 interfaces = 0;
    std::array<qint64, 5> byStage{}; ///< in the order of Stage
    qint64 looseEnds = 0;
    qint64 lastAtMilliseconds = 0; ///< of the last entry, since 1970
    bool operator==(const JobSummary &) const = default;
};

JobSummary summaryOf(const JobState &job, const Register &reg);

/// Moves when the summary would come out otherwise from the same ledger.
constexpr int summaryVersion = 1;

} // namespace core
