// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/measure/working.hpp"

namespace core::measure {

enum class Edge { Included, Excluded };

/// Where a class of leak begins or ends: the wetted area's size.
struct SizeBound {
    Quantity size; ///< a length
    Edge edge;     ///< whether exactly that size belongs to the class
    bool operator==(const SizeBound &) const = default;
};

struct LeakClass {
    QString name; ///< "seep"
    std::optional<SizeBound> lower;
    std::optional<SizeBound> upper;
    bool isSized() const { return lower || upper; }
    bool operator==(const LeakClass &) const = default;
};

/// A way of classing leaks, as a maintenance manual prints it. The same spot is a seep in one and a heavy seep in another, so the scheme
/// is data of the job, never a constant.
struct LeakScheme {
    QString name;
    std::vector<LeakClass> classes; ///< from the least to the worst; the worst is the one that drips, runs or pools
    std::optional<qint64> minutes;  ///< from wiping dry to looking
    QString note;                   ///< what the text says besides, with its source
    bool hasSizes() const;
    bool operator==(const LeakScheme &) const = default;
};

/// What is wrong with a scheme, or nothing: no classes, a class without a name or named twice, a bound that is no length or negative,
/// bounds that leave no size, a class that begins below the one before it.
std::optional<QString> faultOf(const LeakScheme &scheme);

enum class Flow { Still, DripsOrPools };

/// What somebody saw.
struct LeakLook {
    Quantity size; ///< across the wetted area; 0 is dry
    Flow flow;
    std::optional<qint64> minutes; ///< from wiping dry; nothing: not told
};

/// Why a look does not yet count by the scheme's time, or nothing: sooner after wiping dry than the scheme looks, or not told.
std::optional<QString> whyTooSoon(const std::optional<qint64> &minutes, const LeakScheme &scheme);

struct LeakFound {
    std::optional<QString> name; ///< of the class; nothing: dry
    QString said;                ///< what had to be decided because the text leaves it open; else empty
};

/// The class of a leak. Drips or pools: the worst class, whatever the size. A size that two classes claim: the worse of them; one that
/// none claims: the worst of all; both say so. Exact, across units.
/// Refuses a scheme with a fault, a size that is none or negative, a look sooner than the scheme's time or at a time that is not told
/// where the scheme has one, and a size where the scheme classes by other marks alone (then the class is chosen by its name).
/// Source: FAA-H-8083-31 ch. 14, fuel leak classification, and other schemes as given; the worse class where the text leaves it open:
/// a rule of this program.
Measured<LeakFound> classOf(const LeakLook &look, const LeakScheme &scheme);

/// Whether a class is no worse than the limit. Nothing found is dry, and within any limit; no limit means that it has to be dry.
/// Refuses a name that the scheme does not have.
Measured<bool> isWithin(const std::optional<QString> &found, const std::optional<QString> &limit, const LeakScheme &scheme);

/// A look against its limit, shown.
Measured<Working> leakWorking(const LeakLook &look, const std::optional<QString> &limit, const LeakScheme &scheme);

/// Counted drops as a volume in litres: V = z / d, with d drops to the millilitre. Exact. Refuses z below 0 and d of 0 or less.
/// How many drops make a millilitre depends on liquid and edge; 20 is a convention for water, 10 to 15 for oil (conversion pages).
Measured<Rational> volumeOfDrops(qint64 drops, const Decimal &dropsPerMillilitre);

/// Drops in a minute as a flow in litres per minute, in the same way: q = n / d.
Measured<Rational> flowOfDrops(const Quantity &dropRate, const Decimal &dropsPerMillilitre);

/// Why so many drops cannot make a millilitre, or nothing: 5 to 60 can. Usual edges give 10 to 20, oil 10 to 15, the finest tips 60
/// (conversion pages); the lower end leaves room for a thick edge: a rule of this program. More drops make a smaller flow of the same
/// count, so the number is no free choice.
std::optional<QString> whyNoDropSize(const Decimal &dropsPerMillilitre);

/// A rate against its limit. Both in the limit's kind: drops per minute, or a flow in L/min.
struct RateCheck {
    Rational rate;
    Rational limit;
    bool isWithin; ///< exactly the limit is within it
    QString said;  ///< one sentence: what it means
};

/// Refuses what is no rate, a rate or limit below 0, drops against a flow (or the other way) unless it is told how many drops make a
/// millilitre, a number of them that whyNoDropSize() refuses, and such a number where nothing has to be turned.
Measured<RateCheck> rateAgainstLimit(const Quantity &rate, const Quantity &limit, const std::optional<Decimal> &dropsPerMillilitre);
Measured<Working> rateWorking(const Quantity &rate, const Quantity &limit, const std::optional<Decimal> &dropsPerMillilitre);

/// What to mind when looking for leaks: ignition, pressure, hot and turning parts; and who decides. Common practice.
QStringList leakCautions();

} // namespace core::measure
