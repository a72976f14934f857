// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"
#include "core/measure/leak.hpp"

namespace core {

/// The word in an entry for a place where nothing shows.
QString dryLeak();

/// The scheme that a job is opened with. `leak_classes` names the classes, the least leak first. `leak_up_to` gives for each class but
/// the last the greatest size that belongs to it, a length: `0.75 in`; `under 0.75 in` where exactly that size belongs to the next class.
/// It is left out where the scheme classes by other marks. `leak_minutes`: from wiping dry to looking.
/// Without classes, sizes and minutes the scheme is empty. Refuses, in one sentence: sizes that are no lengths, do not rise or are not
/// one fewer than the classes; minutes of 0; sizes or minutes without classes; and what measure::faultOf() refuses.
measure::Measured<measure::LeakScheme> leakSchemeIn(const json::Object &body);

/// Tells in a leak check that nothing shows, as the scheme takes it: a size of 0 that is still, after its minutes; or the word.
void setDryLeak(json::Object &body, const measure::LeakScheme &scheme);

/// What a leak check saw, where it tells both size and flow.
std::optional<measure::LeakLook> leakLookIn(const json::Object &body);

/// The class that a leak check comes to: worked out from size and flow where the scheme has sizes, else the class that was told. Nothing
/// while it tells neither. `dry` where nothing shows. Refuses what measure::classOf() refuses.
std::optional<measure::Measured<QString>> leakClassIn(const json::Object &body, const measure::LeakScheme &scheme);

/// Whether a class, or `dry`, is no worse than another; an empty limit asks for dry. Refuses a class that is not of the job.
measure::Measured<bool> isLeakClassWithin(const QString &seen, const QString &worst, const measure::LeakScheme &scheme);

/// The rate that a leak check tells: as measured, or as drops counted.
std::optional<Quantity> leakRateIn(const json::Object &body);

/// How many drops make a millilitre in a leak check: what it says, else for counted drops what the list says.
std::optional<Decimal> leakDropSizeIn(const json::Object &body, const LeakLimit &limit);

} // namespace core
