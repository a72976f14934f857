// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDate>

#include <variant>
#include <vector>

#include "core/measure/working.hpp"

namespace core::measure {

/// A leg's angle counted from the horizontal: 90° hangs straight down. Some tables count from the vertical; turn those over first.
struct AngleFromHorizontal {
    Decimal degrees;
};

/// A leg told by lengths: of the leg from hook to lifting point, and of the height of the hook over that point.
struct LegLengths {
    Quantity length;
    Quantity height;
};

using LegSlope = std::variant<AngleFromHorizontal, LegLengths>;

/// A load that hangs on a left and a right lifting point.
struct TwoPoints {
    Quantity span;           ///< from the left point to the right one, level
    Quantity centreFromLeft; ///< from the left point to the centre of gravity, level
};

/// A lift as it is planned. Weights and limits are masses, in any unit each: pound-force and pound are one number under gravity.
struct LiftPlan {
    Quantity unitWeight;    ///< of what hangs below the slings, with any cradle or fitting that stays on it
    Quantity riggingWeight; ///< of hook, beam, slings and shackles above it, which the hoist carries as well
    Quantity hoistLimit;    ///< working load limit
    QDate hoistInspectionDue;
    Quantity slingLimit; ///< working load limit of one leg as its tag gives it for a straight pull; no table stands in for the tag
    QDate slingInspectionDue;
    qint64 legsPerPoint; ///< as rigged; carryingLegs says how many of them are reckoned with
    LegSlope slope;      ///< of the flattest leg
    std::optional<TwoPoints> points; ///< nothing for a single lifting point
    QDate day;
};

/// What a leg carries for each unit of its share of the load: 1 / sin a, or length / height.
/// Range: a over 0° to 90°; height to length. Within 5° of the vertical counts as vertical: 1.
/// Refuses an angle or lengths outside that, and under 30° from the horizontal (a length of more than twice the height).
/// Source: sling makers' pages; 29 CFR 1910.184(b), angle of loading (the 5°); OSHA guidance on safe sling use (the 30°).
Measured<Rational> tensionFactor(const LegSlope &slope);

/// What each of two points carries, in kg.
struct Shares {
    Rational left;
    Rational right;
};

/// R_left = W · (L − x) / L, R_right = W · x / L. Refuses a load or span of 0 or less, and a centre of gravity outside the span: the far
/// point would be pulled up, and the load turn over.
/// Source: sling makers' pages on the centre of gravity.
Measured<Shares> sharesOfTwoPoints(const Quantity &load, const TwoPoints &points);

/// How many legs of a point are reckoned with. A stiff load may hang on two of all its legs: one at each of two points, at most two at
/// a single one; more legs than that carry nothing for sure. 0 or less where the plan has no legs, which legTension refuses.
/// Common practice; no published source is at hand.
qint64 carryingLegs(const LiftPlan &plan);

/// T = R · k / n: the tension of a leg, in kg, where n legs carry the share R and k is the tension factor. Refuses fewer than one leg.
/// Source: sling makers' pages; with k = 1 / sin a it is T = R / (n · sin a).
Measured<Rational> legTension(const Rational &share, qint64 legs, const Rational &factor);

/// Under which checkLift warns, in percent of the limit: weights and angles are seldom known well. Common practice.
constexpr int leastMarginPercent = 20;

/// A load as every screen and every page shows it: in the unit of what it is held against, to two places, "≈" before it where it is
/// rounded. What is compared is never rounded.
QString loadText(const Rational &load, const Quantity &like);
/// What is left of a limit as it is shown: to one place, with `%`.
QString marginText(const Rational &margin);

/// What is left of a limit, as a percent of it: 0 at the limit, negative above it. The limit is above 0.
Rational marginPercent(const Rational &load, const Rational &limit);

/// What a special lifting accessory is proof-tested to before it is used: 125 % of its rated load, in kg. Refuses a load of 0 or less.
/// Source: 29 CFR 1926.251(a)(4).
Measured<Rational> proofLoad(const Quantity &ratedLoad);

/// A load and what it leaves of its limit.
struct HoistLoad {
    Rational load;   ///< kg
    Rational margin; ///< percent of the limit
};

struct PointLoad {
    Rational share;      ///< kg
    Rational legTension; ///< kg, of one leg there
    Rational margin;     ///< percent of the limit of one leg
};

/// A plan looked at: what it loads, and all that speaks against it.
struct LiftCheck {
    std::optional<HoistLoad> hoist;  ///< nothing when what was given makes no sense; then a refusal says so
    std::optional<Rational> factor;  ///< as tensionFactor
    std::vector<PointLoad> points;   ///< left and right, or the one; empty when they cannot be computed
    QStringList refusals;            ///< each a sentence; any of them forbids the lift
    QStringList warnings;
    bool isAllowed() const { return refusals.isEmpty(); }
};

/// Refuses, all at once: weights, limits, span of 0 or less, fewer legs than one, what tensionFactor and sharesOfTwoPoints refuse, a load
/// above the limit of hoist or leg (29 CFR 1926.251(a)(2)), an inspection that is overdue on the day or was never dated, and a
/// single leg on a single point that does not hang straight.
/// Warns under a margin of 20 % (common practice), of a point that carries nothing, and of more legs than carryingLegs reckons with.
LiftCheck checkLift(const LiftPlan &plan);

/// The same, shown, with warnings as notes.
Working liftWorking(const LiftPlan &plan);

/// What to mind at any lift: nobody under the load, taglines, the hook's place, the first inches; and who decides.
/// Common practice; the daily look: 29 CFR 1926.251(a)(6); the tag: 76 FR 33590 (8 June 2011).
QStringList liftingCautions();

} // namespace core::measure
