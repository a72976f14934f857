// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/acceptance.hpp"

#include <QCoreApplication>

namespace core::measure {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Measure", text); }

/// The unit in which the same number would be in the band, or nullptr: a scale read in the wrong unit is off by a factor that nobody means,
/// such as 8.85 or 12.
const Unit *unitThatWouldDo(const Quantity &indicated, const Rational &applied, const TorqueBand &band)
{
    if (indicated.coherent() == 0)
        return nullptr;
    const Rational lever = applied / indicated.coherent();
    for (const Unit *unit : unitsOf(Dimension::Torque)) {
        if (unit->symbol != indicated.unit() && band.holds(Rational(indicated.value()) * Rational(unit->factor) * lever))
            return unit;
    }
    return nullptr;
}

std::optional<QString> outOfBand(const TorqueJudgement &judged, const TorqueBand &band)
{
    const QString applied = shownIn(judged.applied, *band.unit);
    if (judged.applied < band.least)
        return tr(QT_TRANSLATE_NOOP("Measure", "%1 is too little: %2 is asked for. Check unit and tool, and torque it again.")).arg(applied, band.text());
    if (judged.applied > band.most)
        return tr(QT_TRANSLATE_NOOP("Measure", "%1 is too much: %2 is asked for. The fastener may be overstressed: follow the maintenance data, and raise a finding.")).arg(applied, band.text());
    return std::nullopt;
}

std::optional<QString> refusedFor(const TorqueJudgement &judged, const Quantity &indicated, const TorqueBand &band, DecisionRule rule)
{
    const QString applied = shownIn(judged.applied, *band.unit);
    if (const auto out = outOfBand(judged, band)) {
        const Unit *other = unitThatWouldDo(indicated, judged.applied, band);
        return other ? *out + u' ' + tr(QT_TRANSLATE_NOOP("Measure", "The number %1 in %2 would be in the band: was the scale read in another unit?")).arg(indicated.value().text(), other->symbol) : *out;
    }
    if (rule == DecisionRule::Simple)
        return std::nullopt;
    if (!judged.deviation)
        return tr(QT_TRANSLATE_NOOP("Measure", "Readings are accepted with a guard band here, and the register does not say what this tool may be off. Take another tool, or have its deviation registered."));
    if (judged.applied <= guardedUpper(band.most, *judged.deviation) && judged.applied >= guardedLower(band.least, *judged.deviation))
        return std::nullopt;
    return tr(QT_TRANSLATE_NOOP("Measure", "%1 lies in the band of %2, but the tool may be off by %3, which reaches beyond its edge, and readings are accepted with a guard band here. Torque nearer to the middle, or take a better tool."))
        .arg(applied, band.text(), shownIn(*judged.deviation, *band.unit));
}

} // namespace

Rational guardedUpper(const Rational &limit, const Rational &guard) { return limit - guard; }
Rational guardedLower(const Rational &limit, const Rational &guard) { return limit + guard; }

Rational permissibleDeviation(const Rational &reading, const Decimal &percent) { return reading * Rational(percent) / 100; }

std::optional<QString> whyNoDeviation(const Decimal &percent)
{
    if (Rational(percent) > 0 && Rational(percent) < 100)
        return std::nullopt;
    return tr(QT_TRANSLATE_NOOP("Measure", "No tool may be off by %1 % of its reading. Give the percent of its certificate or standard, such as 4.")).arg(percent.text());
}

Measured<TorqueJudgement> judgeTorque(const Quantity &indicated, const std::optional<Lever> &lever, const TorqueBand &band, const std::optional<Decimal> &deviationPercent,
                                      DecisionRule rule)
{
    const auto applied = torqueAtFastener(indicated, lever);
    if (!applied)
        return tl::unexpected<QString>(applied.error());
    TorqueJudgement judged{*applied, std::nullopt, std::nullopt, {}};
    if (deviationPercent)
        judged.deviation = permissibleDeviation(*applied, *deviationPercent);
    judged.refused = refusedFor(judged, indicated, band, rule);

    Working &working = judged.working;
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Torque asked for")), {}, {}, band.text()});
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "The wrench showed")), {}, {}, indicated.text()});
    if (lever)
        working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Torque at the fastener")), u"T = Y · (L + E · cos a) / L"_s,
                                 u"%1 · (%2 + %3 · cos %4°) / %2"_s.arg(indicated.text(), lever->length.text(), lever->extension.text(), lever->angle.text()), shownIn(*applied, *band.unit)});
    if (judged.deviation)
        working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "The tool may be off by")), {}, tr(QT_TRANSLATE_NOOP("Measure", "%1 % of the reading")).arg(deviationPercent->text()),
                                 u"± "_s + shownIn(*judged.deviation, *band.unit)});
    const Rational toEdge = std::min(*applied - band.least, band.most - *applied);
    if (toEdge >= 0)
        working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "To the nearer edge")), {}, {}, shownIn(toEdge, *band.unit)});
    if (!judged.refused && judged.deviation && toEdge < *judged.deviation)
        working.notes << tr(QT_TRANSLATE_NOOP("Measure", "The tool's deviation reaches beyond the edge of the band."));
    working.answer = judged.refused ? *judged.refused : tr(QT_TRANSLATE_NOOP("Measure", "%1 is accepted.")).arg(shownIn(*applied, *band.unit));
    working.sources = QStringList{u"AC 43.13-1B (9/8/98) par. 7-40"_s};
    if (rule == DecisionRule::Guarded)
        working.sources << u"ILAC-G8:09/2019 par. 4.1"_s;
    return judged;
}

} // namespace core::measure
