// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>

#include <vector>

#include "core/ledger/entry.hpp"

namespace core {

struct JobState;

/// Many interfaces signed by one person in a short time: all at the end of a shift, perhaps, or one signature over what was done together.
/// It is shown to the auditor, who asks; it accuses nobody.
struct Burst {
    PersonId by;
    QLatin1String meaning; ///< of the signatures: `performed`, `inspected`, `reinspected`, `confirmed`, `seen`
    qint64 first;          ///< sequence number
    qint64 last;
    Instant from;
    Instant to;
    qint64 interfaces; ///< different ones
    qint64 struck;     ///< entries of it that do not count any more
    bool operator==(const Burst &) const = default;
};

/// So many interfaces make a burst, and within so many milliseconds. Common practice: nobody looks at ten joints in a minute.
constexpr qint64 burstOfInterfaces = 10;
constexpr qint64 burstMilliseconds = 60'000;

/// Every burst of work, of looking or of inspection in the job, in the order of their first entries. Entries that were struck count too: they were signed.
std::vector<Burst> burstsOfSigning(const JobState &job);

} // namespace core
