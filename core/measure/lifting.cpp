// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/lifting.hpp"

#include <QCoreApplication>

namespace core::measure {

namespace {

using namespace Qt::StringLiterals;

constexpr int flattestDegrees = 30;
constexpr int countsAsVerticalFrom = 85;

QString tr(const char *text) { return QCoreApplication::translate("Measure", text); }

tl::unexpected<QString> no(const QString &sentence) { return tl::unexpected<QString>(sentence); }

bool isPositive(const Quantity &quantity, Dimension dimension) { return quantity.dimension() == dimension && quantity.coherent() > 0; }

QString tooFlat()
{
    return tr(QT_TRANSLATE_NOOP("Measure", "The slings lie under 30° from the horizontal, where a leg carries more than twice its share. Take longer slings or a beam."));
}

QString noLegs(qint64 legs) { return tr(QT_TRANSLATE_NOOP("Measure", "There are %1 legs at each lifting point. Give one or more.")).arg(legs); }

Measured<Rational> factorOf(const AngleFromHorizontal &angle)
{
    const Rational degrees(angle.degrees);
    if (degrees <= 0 || degrees > 90)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "An angle of %1° from the horizontal is none of a sling. Give more than 0° and at most 90°, which hangs straight down.")).arg(angle.degrees.text()));
    if (degrees < flattestDegrees)
        return no(tooFlat());
    return degrees >= countsAsVerticalFrom ? Rational(1) : 1 / sine(degrees);
}

Measured<Rational> factorOf(const LegLengths &leg)
{
    if (!isPositive(leg.length, Dimension::Length) || !isPositive(leg.height, Dimension::Length) || leg.height > leg.length)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "A leg of %1 cannot hang from a hook %2 above its lifting point. Give the leg's length, and the height, which is at most as much."))
                      .arg(leg.length.text(), leg.height.text()));
    const Rational factor = leg.length.coherent() / leg.height.coherent();
    if (factor > 1 / sine(flattestDegrees))
        return no(tooFlat());
    return factor <= 1 / sine(countsAsVerticalFrom) ? Rational(1) : factor;
}

void refuseUnlessPositive(QStringList &refusals, const QString &what, const Quantity &quantity)
{
    if (!isPositive(quantity, Dimension::Mass))
        refusals << tr(QT_TRANSLATE_NOOP("Measure", "%1 is given as %2. Give a weight above 0.")).arg(what, quantity.text());
}

void refuseOverdue(QStringList &refusals, const QString &what, QDate due, QDate day)
{
    if (!due.isValid())
        refusals << tr(QT_TRANSLATE_NOOP("Measure", "%1: there is no date until which its inspection holds. Have it inspected, or take another.")).arg(what);
    else if (day.isValid() && due < day)
        refusals << tr(QT_TRANSLATE_NOOP("Measure", "%1: its inspection held until %2, and the lift is on %3. Have it inspected, or take another."))
                        .arg(what, due.toString(Qt::ISODate), day.toString(Qt::ISODate));
}

/// A load against its limit: over it is refused, near it is warned of.
void judge(LiftCheck &check, const QString &what, const Rational &load, const Quantity &limit)
{
    const Rational margin = marginPercent(load, limit.coherent());
    if (margin < 0)
        check.refusals << tr(QT_TRANSLATE_NOOP("Measure", "%1 would carry %2, over its working load limit of %3. Do not lift; take stronger equipment, or steeper slings."))
                              .arg(what, loadText(load, limit), limit.text());
    else if (margin < leastMarginPercent)
        check.warnings << tr(QT_TRANSLATE_NOOP("Measure", "%1 would carry %2 of %3, which leaves %4; under 20 % is little, for weights and angles are seldom known well."))
                              .arg(what, loadText(load, limit), limit.text(), marginText(margin));
}

QString theHoist() { return tr(QT_TRANSLATE_NOOP("Measure", "The hoist")); }

QString pointName(std::size_t index, std::size_t count)
{
    if (count == 1)
        return tr(QT_TRANSLATE_NOOP("Measure", "the lifting point"));
    return index == 0 ? tr(QT_TRANSLATE_NOOP("Measure", "the left point")) : tr(QT_TRANSLATE_NOOP("Measure", "the right point"));
}

/// What each point carries: one share for a single point.
Measured<std::vector<Rational>> sharesOf(const LiftPlan &plan)
{
    if (!plan.points)
        return std::vector<Rational>{plan.unitWeight.coherent()};
    const auto shares = sharesOfTwoPoints(plan.unitWeight, *plan.points);
    if (!shares)
        return no(shares.error());
    return std::vector<Rational>{shares->left, shares->right};
}

void checkHoist(LiftCheck &check, const LiftPlan &plan)
{
    const Rational load = plan.unitWeight.coherent() + plan.riggingWeight.coherent();
    check.hoist = HoistLoad{load, marginPercent(load, plan.hoistLimit.coherent())};
    judge(check, theHoist(), load, plan.hoistLimit);
}

void checkPoint(LiftCheck &check, const LiftPlan &plan, const Rational &share, const QString &name)
{
    const auto tension = legTension(share, carryingLegs(plan), *check.factor);
    check.points.push_back({share, *tension, marginPercent(*tension, plan.slingLimit.coherent())});
    judge(check, tr(QT_TRANSLATE_NOOP("Measure", "A leg at %1")).arg(name), *tension, plan.slingLimit);
    if (share == 0)
        check.warnings << tr(QT_TRANSLATE_NOOP("Measure", "Nothing would hang on %1: the centre of gravity lies under the other, and the load can tip.")).arg(name);
}

void checkSlings(LiftCheck &check, const LiftPlan &plan)
{
    const auto shares = sharesOf(plan);
    if (!shares)
        check.refusals << shares.error();
    if (plan.legsPerPoint < 1)
        check.refusals << noLegs(plan.legsPerPoint);
    if (carryingLegs(plan) < plan.legsPerPoint)
        check.warnings << (plan.points ? tr(QT_TRANSLATE_NOOP("Measure", "A stiff load may hang on two of all its legs: at each of two points one leg is reckoned with, however many there are."))
                                       : tr(QT_TRANSLATE_NOOP("Measure", "A stiff load may hang on two of all its legs: two are reckoned with, however many there are.")));
    const auto factor = tensionFactor(plan.slope);
    if (!factor) {
        check.refusals << factor.error();
        return;
    }
    check.factor = *factor;
    if (!shares || plan.legsPerPoint < 1)
        return;
    if (!plan.points && plan.legsPerPoint == 1 && *factor != 1)
        check.refusals << tr(QT_TRANSLATE_NOOP("Measure", "One leg on one lifting point hangs straight down, or it pulls the load aside. Give 90°, or tell the second point."));
    for (std::size_t i = 0; i < shares->size(); ++i)
        checkPoint(check, plan, (*shares)[i], pointName(i, shares->size()));
}

/// A number inside a formula goes without the sign that says that it was rounded for show: its own line has it.
QString inFormula(QString shownNumber) { return shownNumber.remove(u"≈ "_s); }

void showHoist(Working &working, const LiftPlan &plan, const HoistLoad &hoist)
{
    const QString load = loadText(hoist.load, plan.hoistLimit);
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Load on the hoist, H")), u"H = W + G"_s, plan.unitWeight.text() + u" + "_s + plan.riggingWeight.text(), load});
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Margin of the hoist")), u"(WLL − H) / WLL · 100"_s, u"(%1 − %2) / %1 · 100"_s.arg(plan.hoistLimit.text(), inFormula(load)),
                             marginText(hoist.margin)});
}

QString slopeText(const LegSlope &slope)
{
    if (const auto *leg = std::get_if<LegLengths>(&slope))
        return leg->length.text() + u" / "_s + leg->height.text();
    return tr(QT_TRANSLATE_NOOP("Measure", "a = %1° from the horizontal")).arg(std::get<AngleFromHorizontal>(slope).degrees.text());
}

void showFactor(Working &working, const LegSlope &slope, const Rational &factor)
{
    QString numbers = slopeText(slope);
    if (factor == 1)
        numbers += tr(QT_TRANSLATE_NOOP("Measure", "; within 5° of the vertical, counted as vertical"));
    const QString formula = std::holds_alternative<LegLengths>(slope) ? u"k = l / h"_s : u"k = 1 / sin a"_s;
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Tension factor, k")), formula, numbers, shown(factor, {})});
}

void showPoint(Working &working, const LiftPlan &plan, const PointLoad &point, std::size_t index, std::size_t count)
{
    const QString name = pointName(index, count);
    const QString share = loadText(point.share, plan.unitWeight);
    if (plan.points) {
        const QString formula = index == 0 ? u"R = W · (L − x) / L"_s : u"R = W · x / L"_s;
        const QString numbers = index == 0 ? u"%1 · (%2 − %3) / %2"_s : u"%1 · %3 / %2"_s;
        working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Share of %1, R")).arg(name), formula,
                                 numbers.arg(plan.unitWeight.text(), plan.points->span.text(), plan.points->centreFromLeft.text()), share});
    }
    const QString tension = loadText(point.legTension, plan.slingLimit);
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Tension of a leg at %1, T")).arg(name), u"T = R · k / n"_s, u"%1 · k / %2"_s.arg(inFormula(share), QString::number(carryingLegs(plan))), tension});
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Margin of a leg at %1")).arg(name), u"(WLL − T) / WLL · 100"_s, u"(%1 − %2) / %1 · 100"_s.arg(plan.slingLimit.text(), inFormula(tension)),
                             marginText(point.margin)});
}

} // namespace

Measured<Rational> tensionFactor(const LegSlope &slope)
{
    return std::visit([](const auto &leg) { return factorOf(leg); }, slope);
}

Measured<Shares> sharesOfTwoPoints(const Quantity &load, const TwoPoints &points)
{
    if (!isPositive(load, Dimension::Mass))
        return no(tr(QT_TRANSLATE_NOOP("Measure", "A load of %1 is none. Give a weight above 0.")).arg(load.text()));
    if (!isPositive(points.span, Dimension::Length) || points.centreFromLeft.dimension() != Dimension::Length)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "Lifting points %1 apart, with the centre of gravity at %2, make no sense. Give a span above 0 and two lengths."))
                      .arg(points.span.text(), points.centreFromLeft.text()));
    const Rational span = points.span.coherent();
    const Rational centre = points.centreFromLeft.coherent();
    if (centre < 0 || centre > span)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "The centre of gravity, %1 from the left point, lies outside the span of %2: the far point would be pulled up, and the load turn over. Move the points so that it lies between them."))
                      .arg(points.centreFromLeft.text(), points.span.text()));
    return Shares{load.coherent() * (span - centre) / span, load.coherent() * centre / span};
}

qint64 carryingLegs(const LiftPlan &plan) { return std::min<qint64>(plan.legsPerPoint, plan.points ? 1 : 2); }

Measured<Rational> legTension(const Rational &share, qint64 legs, const Rational &factor)
{
    if (legs < 1)
        return no(noLegs(legs));
    return share * factor / legs;
}

QString loadText(const Rational &load, const Quantity &like) { return shownIn(load, *findUnit(like.unit()), 2); }

QString marginText(const Rational &margin) { return shown(margin, u"%"_s, 1); }

Rational marginPercent(const Rational &load, const Rational &limit) { return (limit - load) / limit * 100; }

Measured<Rational> proofLoad(const Quantity &ratedLoad)
{
    if (!isPositive(ratedLoad, Dimension::Mass))
        return no(tr(QT_TRANSLATE_NOOP("Measure", "A rated load of %1 is none. Give the weight that stands on the accessory.")).arg(ratedLoad.text()));
    return ratedLoad.coherent() * 125 / 100;
}

LiftCheck checkLift(const LiftPlan &plan)
{
    LiftCheck check;
    refuseUnlessPositive(check.refusals, tr(QT_TRANSLATE_NOOP("Measure", "The weight of the unit")), plan.unitWeight);
    refuseUnlessPositive(check.refusals, tr(QT_TRANSLATE_NOOP("Measure", "The weight of the rigging, which the hoist carries as well,")), plan.riggingWeight);
    refuseUnlessPositive(check.refusals, tr(QT_TRANSLATE_NOOP("Measure", "The working load limit of the hoist")), plan.hoistLimit);
    refuseUnlessPositive(check.refusals, tr(QT_TRANSLATE_NOOP("Measure", "The working load limit of a sling's leg")), plan.slingLimit);
    const bool hasWeights = check.refusals.isEmpty();
    if (!plan.day.isValid())
        check.refusals << tr(QT_TRANSLATE_NOOP("Measure", "The day of the lift is not given, so nothing says whether the inspections hold."));
    refuseOverdue(check.refusals, theHoist(), plan.hoistInspectionDue, plan.day);
    refuseOverdue(check.refusals, tr(QT_TRANSLATE_NOOP("Measure", "The sling")), plan.slingInspectionDue, plan.day);
    if (hasWeights) {
        checkHoist(check, plan);
        checkSlings(check, plan);
    }
    return check;
}

Working liftWorking(const LiftPlan &plan)
{
    const LiftCheck check = checkLift(plan);
    Working working;
    if (check.hoist)
        showHoist(working, plan, *check.hoist);
    if (check.factor)
        showFactor(working, plan.slope, *check.factor);
    for (std::size_t i = 0; i < check.points.size(); ++i)
        showPoint(working, plan, check.points[i], i, check.points.size());
    working.answer = check.isAllowed() ? tr(QT_TRANSLATE_NOOP("Measure", "No limit is exceeded by these numbers."))
                                       : tr(QT_TRANSLATE_NOOP("Measure", "Do not lift. %1")).arg(check.refusals.join(u' '));
    working.notes = check.warnings;
    working.notes << tr(QT_TRANSLATE_NOOP("Measure", "The legs that carry are taken to be equally long and the angle to be that of the flattest; n is the number of those reckoned with at a point. A cradle that stays on the unit counts as part of it."))
                  << tr(QT_TRANSLATE_NOOP("Measure", "A tag may give the limit of all legs together, or at an angle: what counts here is what one leg carries hanging straight."))
                  << tr(QT_TRANSLATE_NOOP("Measure", "Shackles, hooks, beams and the unit's own lifting points have limits too, and are not reckoned here."));
    working.sources << tr(QT_TRANSLATE_NOOP("Measure", "Shares and leg tension: sling makers' pages on sling angle and centre of gravity"))
                    << u"29 CFR 1910.184(b); 29 CFR 1926.251(a)"_s << tr(QT_TRANSLATE_NOOP("Measure", "Under 30° from the horizontal: OSHA guidance on safe sling use"))
                    << tr(QT_TRANSLATE_NOOP("Measure", "Two legs that hold a stiff load, margin of 20 %: common practice"));
    return working;
}

QStringList liftingCautions()
{
    return {
        tr(QT_TRANSLATE_NOOP("Measure", "Nobody stands, walks or reaches under the load, at any moment.")),
        tr(QT_TRANSLATE_NOOP("Measure", "Steady the load with taglines, not with hands, and keep clear of where it could swing or pinch.")),
        tr(QT_TRANSLATE_NOOP("Measure", "The hook hangs above the centre of gravity, and the lifting points lie above it too.")),
        tr(QT_TRANSLATE_NOOP("Measure", "Take up the first inches, stop and look: balance, slings, shackles, and anything still connected. Set down at any doubt.")),
        tr(QT_TRANSLATE_NOOP("Measure", "Look over hoist, slings and fittings on the day, before use. A sling without a legible tag is not used.")),
        tr(QT_TRANSLATE_NOOP("Measure", "The approved maintenance data, the equipment's own instructions and the local rules decide, and people who are licensed or authorised for it lift.")),
    };
}

} // namespace core::measure
