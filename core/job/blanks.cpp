// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/blanks.hpp"

#include "core/job/linked.hpp"
#include "core/job/state.hpp"

namespace core {

qint64 blanksThere(const Removal &removal, End end)
{
    qint64 fitted = end == End::Aircraft ? removal.blanksFitted : removal.unitBlanksFitted;
    for (const MissingBlanks &missing : removal.blanksMissing) {
        if (missing.end == end)
            fitted -= missing.count;
    }
    return fitted;
}

QLatin1String endText(End end)
{
    switch (end) {
    case End::Aircraft: return QLatin1String("aircraft");
    case End::Unit: return QLatin1String("unit");
    }
    Q_UNREACHABLE();
}

std::optional<End> parseEnd(QStringView text)
{
    for (const End end : {End::Aircraft, End::Unit}) {
        if (text == endText(end))
            return end;
    }
    return std::nullopt;
}

qint64 blanksToComeOut(const JobState &job, const InterfaceState &item, End end)
{
    if (!isOff(item))
        return 0;
    const bool isOnAnotherUnit = end == End::Unit && job.unit.up && job.unit.up->mark.seq > item.removal->mark.seq;
    return isOnAnotherUnit ? 0 : blanksThere(*item.removal, end);
}

qint64 blanksOnTheUnit(const JobState &job)
{
    qint64 fitted = 0;
    for (const InterfaceState &one : job.items) {
        const InterfaceState &item = asItIsNow(job, one);
        fitted += isOff(item) ? blanksThere(*item.removal, End::Unit) : 0;
    }
    return fitted;
}

} // namespace core
