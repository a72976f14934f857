// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/weight_change.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core::measure {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Measure", text); }

tl::unexpected<QString> no(const QString &sentence) { return tl::unexpected<QString>(sentence); }

bool isWeight(const Quantity &quantity) { return quantity.dimension() == Dimension::Mass && quantity.coherent() > 0; }

Rational momentOf(const Weighed &thing) { return thing.weight.coherent() * thing.arm.coherent(); }

std::optional<QString> whyNotWeighed(const Weighed &thing)
{
    if (!isWeight(thing.weight))
        return tr(QT_TRANSLATE_NOOP("Measure", "The weight of %1 is given as %2. Give a weight above 0.")).arg(thing.what, thing.weight.text());
    if (thing.arm.dimension() != Dimension::Length)
        return tr(QT_TRANSLATE_NOOP("Measure", "The arm of %1 is given as %2. Give a length from the datum, negative on its far side.")).arg(thing.what, thing.arm.text());
    return std::nullopt;
}

Rational pounds(qint64 number) { return Rational(number) * Rational(findUnit(u"lb")->factor); }

/// The units in which a swap is shown.
struct ShownIn {
    const Unit *weight;
    const Unit *arm;

    QString ofWeight(const Rational &kilograms) const { return shownIn(kilograms, *weight); }
    QString ofArm(const Rational &metres) const { return shownIn(metres, *arm); }
    /// Weight times arm, in the two units: `lb·in`.
    QString ofMoment(const Rational &coherent) const
    {
        return shown(coherent / (Rational(weight->factor) * Rational(arm->factor)), weight->symbol + u'·' + arm->symbol);
    }
    /// A shift of the centre of gravity, which is small beside an arm: to six places.
    QString ofShift(const Rational &metres) const { return change(shownIn(metres, *arm, 6), metres); }
    /// With its sign: a difference.
    QString change(const QString &text, const Rational &value) const
    {
        if (value <= 0)
            return text;
        return text.startsWith(u'≈') ? u"≈ +"_s + text.mid(2) : u'+' + text;
    }
};

ShownIn unitsOf(const UnitSwap &swap) { return {findUnit(swap.emptyWeight.unit()), findUnit(swap.incoming.arm.unit())}; }

QString weighedText(const Weighed &thing, const ShownIn &in)
{
    return tr(QT_TRANSLATE_NOOP("Measure", "%1, %2 at arm %3, moment %4")).arg(thing.what, thing.weight.text(), thing.arm.text(), in.ofMoment(momentOf(thing)));
}

QString balanceText(const Balance &balance, const ShownIn &in)
{
    return tr(QT_TRANSLATE_NOOP("Measure", "%1, moment %2, centre of gravity at %3")).arg(in.ofWeight(balance.weight), in.ofMoment(balance.moment), in.ofArm(balance.centre()));
}

/// Of the chord: four places, so that what is near 0.05 % is told from it.
QString percentText(const Rational &percent) { return shown(percent, u"%"_s); }

/// `+0.02 in, ≈ 0.0238 % of the mean aerodynamic chord`, the latter where a chord is given.
QString shiftText(const WeightChange &change, const ShownIn &in)
{
    const QString shift = in.ofShift(change.shift);
    if (!change.byCentre)
        return shift;
    return tr(QT_TRANSLATE_NOOP("Measure", "%1, %2 of the mean aerodynamic chord")).arg(shift, percentText(change.byCentre->percentOfChord));
}

} // namespace

Measured<Balance> balanceOf(const Quantity &weight, const Quantity &momentOrCentre)
{
    if (!isWeight(weight))
        return no(tr(QT_TRANSLATE_NOOP("Measure", "An empty weight of %1 is none. Give the weight of the aircraft's weight record.")).arg(weight.text()));
    if (momentOrCentre.dimension() == Dimension::Moment)
        return Balance{weight.coherent(), momentOrCentre.coherent()};
    if (momentOrCentre.dimension() == Dimension::Length)
        return Balance{weight.coherent(), weight.coherent() * momentOrCentre.coherent()};
    return no(tr(QT_TRANSLATE_NOOP("Measure", "%1 is neither a moment nor the arm of a centre of gravity. Give one of them from the aircraft's weight record.")).arg(momentOrCentre.text()));
}

Measured<Balance> newBalance(const Balance &before, const std::vector<Weighed> &removed, const std::vector<Weighed> &installed)
{
    Balance after = before;
    for (const Weighed &thing : removed) {
        if (const auto why = whyNotWeighed(thing))
            return no(*why);
        after = {after.weight - thing.weight.coherent(), after.moment - momentOf(thing)};
    }
    for (const Weighed &thing : installed) {
        if (const auto why = whyNotWeighed(thing))
            return no(*why);
        after = {after.weight + thing.weight.coherent(), after.moment + momentOf(thing)};
    }
    if (after.weight <= 0)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "What is removed weighs as much as the aircraft, or more. Check the weights and their units.")));
    return after;
}

WeightVerdict weightVerdict(const Rational &change, const Rational &emptyWeight)
{
    struct Band {
        qint64 upTo; ///< lb, itself included: the text leaves the edges open, and the lighter band is the stricter
        qint64 negligible;
    };
    constexpr Band bands[] = {{5000, 1}, {50000, 2}};
    constexpr qint64 negligibleAbove = 5;

    const auto *const band = std::find_if(std::begin(bands), std::end(bands), [&](const Band &one) { return emptyWeight <= pounds(one.upTo); });
    const qint64 limit = band == std::end(bands) ? negligibleAbove : band->negligible;
    const Rational size = change < 0 ? -change : change;
    WeightVerdict verdict{size <= pounds(limit), pounds(limit), {}};
    verdict.said = verdict.isNegligible ? tr(QT_TRANSLATE_NOOP("Measure", "The change of weight is within the limit of %1 lb at this empty weight.")).arg(limit)
                                        : tr(QT_TRANSLATE_NOOP("Measure", "Not negligible: more than %1 lb at this empty weight. Have the weight record revised.")).arg(limit);
    if (band != std::end(bands) && emptyWeight == pounds(band->upTo))
        verdict.said += u' ' + tr(QT_TRANSLATE_NOOP("Measure", "The text puts exactly %1 lb in no band, so the stricter one is taken.")).arg(band->upTo);
    return verdict;
}

CentreVerdict centreVerdict(const Rational &shift, const Rational &chord)
{
    const Rational percent = shift / chord * 100;
    const Rational size = percent < 0 ? -percent : percent;
    const bool isNegligible = size < Rational(5) / 100;
    const char *const said = isNegligible ? QT_TRANSLATE_NOOP("Measure", "The shift of the centre of gravity, %1 of the mean aerodynamic chord, is under the limit of 0.05 %.")
                                          : QT_TRANSLATE_NOOP("Measure", "Not negligible: the centre of gravity shifts by %1 of the mean aerodynamic chord, which is 0.05 % or more. Have the weight record revised.");
    return {isNegligible, percent, tr(said).arg(percentText(percent))};
}

QStringList WeightChange::said() const
{
    QStringList all;
    if (isNegligible())
        all << tr(QT_TRANSLATE_NOOP("Measure", "Negligible, by weight and by centre of gravity."));
    return all << byWeight.said << (byCentre ? byCentre->said : tr(QT_TRANSLATE_NOOP("Measure", "The shift of the centre of gravity is still to be judged: no mean aerodynamic chord is given.")));
}

Measured<WeightChange> weightChange(const UnitSwap &swap)
{
    if (swap.chord && (swap.chord->dimension() != Dimension::Length || swap.chord->coherent() <= 0))
        return no(tr(QT_TRANSLATE_NOOP("Measure", "A mean aerodynamic chord of %1 is none. Give the length from the aircraft's data, or leave it out.")).arg(swap.chord->text()));
    const auto before = balanceOf(swap.emptyWeight, swap.momentOrCentre);
    if (!before)
        return no(before.error());
    const auto after = newBalance(*before, {swap.outgoing}, {swap.incoming});
    if (!after)
        return no(after.error());
    const Rational weight = after->weight - before->weight;
    const Rational shift = after->centre() - before->centre();
    return WeightChange{weight, after->moment - before->moment, *before, *after, shift, weightVerdict(weight, before->weight),
                        swap.chord ? std::optional(centreVerdict(shift, swap.chord->coherent())) : std::nullopt};
}

Measured<Working> weightChangeWorking(const UnitSwap &swap)
{
    const auto change = weightChange(swap);
    if (!change)
        return no(change.error());
    const ShownIn in = unitsOf(swap);
    const QString weight = in.change(in.ofWeight(change->weight), change->weight);
    const QString moment = in.change(in.ofMoment(change->moment), change->moment);
    Working working;
    working.steps = {
        {tr(QT_TRANSLATE_NOOP("Measure", "Difference in weight, Δw")), u"Δw = w₂ − w₁"_s, swap.incoming.weight.text() + u" − "_s + swap.outgoing.weight.text(), weight},
        {tr(QT_TRANSLATE_NOOP("Measure", "Difference in moment, ΔM")), u"ΔM = w₂ · a₂ − w₁ · a₁"_s,
         u"%1 · (%2) − %3 · (%4)"_s.arg(swap.incoming.weight.text(), swap.incoming.arm.text(), swap.outgoing.weight.text(), swap.outgoing.arm.text()), moment},
        {tr(QT_TRANSLATE_NOOP("Measure", "New empty weight, W")), u"W = W₀ + Δw"_s, in.ofWeight(change->before.weight) + u" + ("_s + weight + u')', in.ofWeight(change->after.weight)},
        {tr(QT_TRANSLATE_NOOP("Measure", "New moment, M")), u"M = M₀ + ΔM"_s, in.ofMoment(change->before.moment) + u" + ("_s + moment + u')', in.ofMoment(change->after.moment)},
        {tr(QT_TRANSLATE_NOOP("Measure", "New centre of gravity")), u"M / W"_s, in.ofMoment(change->after.moment) + u" / "_s + in.ofWeight(change->after.weight), in.ofArm(change->after.centre())},
    };
    const QString shift = in.ofShift(change->shift);
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Shift of the centre of gravity, s")), u"s = (ΔM − Δw · M₀ / W₀) / W"_s,
                             u"(%1 − (%2) · (%3)) / %4"_s.arg(moment, weight, in.ofArm(change->before.centre()), in.ofWeight(change->after.weight)), shift});
    if (change->byCentre)
        working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Shift in percent of the mean aerodynamic chord, c")), u"s / c · 100"_s, shift + u" / "_s + swap.chord->text() + u" · 100"_s,
                                 percentText(change->byCentre->percentOfChord)});
    working.answer = tr(QT_TRANSLATE_NOOP("Measure", "%1 and %2. %3")).arg(weight, moment, change->said().join(u' '));
    working.notes << tr(QT_TRANSLATE_NOOP("Measure", "Negligible is what is so in weight and in centre of gravity. The limits forward and aft of the centre of gravity are others, and are not looked at here; nor is a rotorcraft's range. The equipment list and the weight record are revised by those who are licensed for it."));
    working.sources << u"AC 43.13-1B (9/27/01, change 1) par. 10-2 c, 10-2 h"_s;
    return working;
}

Measured<QStringList> weightRecordEntry(const UnitSwap &swap)
{
    const auto change = weightChange(swap);
    if (!change)
        return no(change.error());
    const ShownIn in = unitsOf(swap);
    return QStringList{
        tr(QT_TRANSLATE_NOOP("Measure", "Removed: %1")).arg(weighedText(swap.outgoing, in)),
        tr(QT_TRANSLATE_NOOP("Measure", "Installed: %1")).arg(weighedText(swap.incoming, in)),
        tr(QT_TRANSLATE_NOOP("Measure", "Difference in weight: %1")).arg(in.change(in.ofWeight(change->weight), change->weight)),
        tr(QT_TRANSLATE_NOOP("Measure", "Difference in moment: %1")).arg(in.change(in.ofMoment(change->moment), change->moment)),
        tr(QT_TRANSLATE_NOOP("Measure", "Before: %1")).arg(balanceText(change->before, in)),
        tr(QT_TRANSLATE_NOOP("Measure", "After: %1")).arg(balanceText(change->after, in)),
        tr(QT_TRANSLATE_NOOP("Measure", "Shift of the centre of gravity: %1")).arg(shiftText(*change, in)),
    } + change->said();
}

} // namespace core::measure
