// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>
#include <vector>

#include "core/job/mark.hpp"

namespace core {

/// What is put on for the job and must come off again. The words are the entries' own; resources/kinds has verbs and cautions for each.
enum class TemporarySort { Isolation, WarningTag, SafetyPin, Blank, Hoist, Sling, Stand, Platform };

/// As it stands in entries: `isolation`, `warning tag` …
QString temporarySortText(TemporarySort sort);
std::optional<TemporarySort> parseTemporarySort(QStringView text);
const std::vector<TemporarySort> &allTemporarySorts();
/// The id of its kind in resources/kinds: `warning_tag`.
QString temporaryKindId(TemporarySort sort);

/// Whether somebody's safety hangs on it, so that nobody else takes it off: isolations, warning tags, safety pins.
/// Source: 29 CFR 1910.147(e)(3), a lockout device is removed by the employee who applied it; that it goes over by a handover: (f)(4).
bool isLockout(TemporarySort sort);

/// One temporary item. What has not been removed is a loose end.
struct TemporaryItem {
    TemporaryId id;
    TemporarySort sort;
    QString name; ///< what, and where: "Fuel shut-off valve, closed and pinned"
    QString zone; ///< may be empty
    QString tag;  ///< number of the tag or collar on it; may be empty
    Mark applied;
    PersonId owner; ///< who applied it, until it was handed over
    std::optional<Mark> removed;
    QString removedBecause; ///< where the lead removed another's
    bool operator==(const TemporaryItem &) const = default;
};

} // namespace core
