// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/torque_wrench.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core::measure {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Measure", text); }

tl::unexpected<QString> no(const QString &sentence) { return tl::unexpected<QString>(sentence); }

QString textOf(const Rational &torque, const Unit &unit) { return shownIn(torque, unit); }

QString rangeText(const Rational &least, const Rational &most, const Unit &unit)
{
    return tr(QT_TRANSLATE_NOOP("Measure", "%1 to %2")).arg(shown(inUnit(least, unit), {}), textOf(most, unit));
}

/// A number of graduation marks as a quantity, written as finely as the graduation is; nothing when that takes more digits than are kept.
std::optional<Quantity> atMark(const Rational &marks, const Quantity &graduation)
{
    const int places = graduation.value().places();
    QString text = (marks * Rational(graduation.value())).text(places);
    if (places > 0) {
        if (!text.contains(u'.'))
            text += u'.';
        text += QString(places - (text.size() - 1 - text.indexOf(u'.')), u'0');
    }
    return Quantity::parse(text, graduation.unit());
}

QString leverText(const Lever &lever)
{
    return tr(QT_TRANSLATE_NOOP("Measure", "L = %1, E = %2, a = %3°")).arg(lever.length.text(), lever.extension.text(), lever.angle.text());
}

const Unit &unitOf(const Quantity &quantity) { return *findUnit(quantity.unit()); }

/// The settings that give torques of the band, in N·m.
struct SettingBand {
    Rational ratio;
    Rational least;
    Rational most;
};

Measured<SettingBand> settingBand(const TorqueBand &band, const std::optional<Lever> &lever)
{
    const auto ratio = lever ? leverRatio(*lever) : Measured<Rational>(Rational(1));
    if (!ratio)
        return no(ratio.error());
    return SettingBand{*ratio, band.least / *ratio, band.most / *ratio};
}

WorkingStep bandStep(const TorqueBand &band) { return {tr(QT_TRANSLATE_NOOP("Measure", "Torque at the fastener, T")), {}, {}, band.text()}; }

WorkingStep settingStep(const TorqueBand &band, const Lever &lever, const SettingBand &settings, const Unit &unit)
{
    return {tr(QT_TRANSLATE_NOOP("Measure", "Setting, Y")), u"Y = T · L / (L + E · cos a)"_s,
            tr(QT_TRANSLATE_NOOP("Measure", "%1; T = %2")).arg(leverText(lever), band.text()), rangeText(settings.least, settings.most, unit)};
}

} // namespace

QString TorqueBand::text() const { return rangeText(least, most, *unit); }

TorqueBand torqueBand(const Quantity &least, const Quantity &most) { return {least.coherent(), most.coherent(), &unitOf(most)}; }

TorqueBand ofPass(const TorqueBand &band, const Decimal &percent)
{
    const Rational share = Rational(percent) / 100;
    return {band.least * share, band.most * share, band.unit};
}

TorqueBand withPrevailing(const TorqueBand &band, const Quantity &prevailing)
{
    return {band.least + prevailing.coherent(), band.most + prevailing.coherent(), band.unit};
}

TorqueBand AskedTorque::band() const
{
    const TorqueBand ofThisPass = percent ? ofPass(specified, *percent) : specified;
    return drag ? withPrevailing(ofThisPass, *drag) : ofThisPass;
}

std::vector<WorkingStep> AskedTorque::steps() const
{
    if (!percent && !drag)
        return {};
    std::vector<WorkingStep> steps{{tr(QT_TRANSLATE_NOOP("Measure", "Torque specified, T₀")), {}, {}, specified.text()}};
    if (percent)
        steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Torque of this pass, T₁")), u"T₁ = T₀ · p / 100"_s, u"(%1) · %2 / 100"_s.arg(specified.text(), percent->text()), ofPass(specified, *percent).text()});
    if (drag)
        steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "With the drag of the nut, d")), percent ? u"T = T₁ + d"_s : u"T = T₀ + d"_s, u"(%1) + %2"_s.arg((percent ? ofPass(specified, *percent) : specified).text(), drag->text()), band().text()});
    return steps;
}

std::optional<QString> whyNotReused(const Quantity &prevailing, const Quantity &least)
{
    if (prevailing >= least)
        return std::nullopt;
    return tr(QT_TRANSLATE_NOOP("Measure", "The nut turns with %1; a self-locking nut that is used again needs at least %2. Fit a new nut.")).arg(prevailing.text(), least.text());
}

Measured<Rational> leverRatio(const Lever &lever)
{
    const Rational length = lever.length.coherent();
    const Rational extension = lever.extension.coherent();
    const Rational angle(lever.angle);
    if (length <= 0)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "The wrench's length is %1. Measure from the middle of the grip to the square drive.")).arg(lever.length.text()));
    if (extension < 0)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "The adapter's length is %1. Give it as a length, and its direction as an angle: 180° where it points back.")).arg(lever.extension.text()));
    if (angle < 0 || angle > 180)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "The adapter's angle is %1°. It lies between 0° (in line, longer) and 180° (pointing back).")).arg(lever.angle.text()));
    const Rational arm = length + extension * cosine(angle);
    if (arm <= 0)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "The adapter (%1) reaches back to the grip or beyond: no setting gives the torque. Turn it, or take a shorter one.")).arg(leverText(lever)));
    return arm / length;
}

Measured<Setting> settingFor(const TorqueBand &band, const std::optional<Lever> &lever, const WrenchScale &scale)
{
    const auto settings = settingBand(band, lever);
    if (!settings)
        return no(settings.error());
    if (!scale.graduation)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "The register does not say how finely this wrench can be set. Have its graduation registered, or take another.")));
    const Unit &unit = unitOf(*scale.graduation);
    const Rational least = scale.least.coherent();
    const Rational most = scale.most.coherent();
    if (settings->most < least || settings->least > most)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "The wrench would have to be set to %1; its usable range is %2 to %3. Take another wrench."))
                      .arg(rangeText(settings->least, settings->most, unit), scale.least.text(), scale.most.text()));
    const Rational step = scale.graduation->coherent();
    if (step <= 0)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "A graduation of %1 is none. Have the tool's registration corrected.")).arg(scale.graduation->text()));
    const Rational lowest = std::max(settings->least, least).stepsAbove(step);
    const Rational highest = std::min(settings->most, most).stepsBelow(step);
    if (lowest > highest)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "The wrench would have to be set to %1, and none of its marks, %2 apart, lies there. Take a wrench with finer marks."))
                      .arg(rangeText(settings->least, settings->most, unit), scale.graduation->text()));
    const Rational middle = (settings->least + settings->most) / 2;
    const Rational nearest = (middle + step / 2).stepsBelow(step);
    const Rational marks = std::clamp(nearest, lowest, highest);

    const auto set = atMark(marks, *scale.graduation);
    const auto first = atMark(lowest, *scale.graduation);
    const auto last = atMark(highest, *scale.graduation);
    if (!set || !first || !last)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "A graduation of %1 is too fine for this torque. Give one step of the wrench's scale.")).arg(scale.graduation->text()));
    Setting setting{*set, *first, *last, {}};
    Working &working = setting.working;
    working.steps.push_back(bandStep(band));
    if (lever)
        working.steps.push_back(settingStep(band, *lever, *settings, unit));
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Marks inside it, %1 apart")).arg(scale.graduation->text()), {}, {},
                             lowest == highest ? setting.lowest.text() : tr(QT_TRANSLATE_NOOP("Measure", "%1 to %2")).arg(setting.lowest.value().text(), setting.highest.text())});
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "At the fastener then")), lever ? u"T = Y · (L + E · cos a) / L"_s : QString(), lever ? tr(QT_TRANSLATE_NOOP("Measure", "Y = %1")).arg(setting.set.text()) : QString(),
                             textOf(setting.set.coherent() * settings->ratio, *band.unit)});
    working.answer = tr(QT_TRANSLATE_NOOP("Measure", "Set the wrench to %1.")).arg(setting.set.text());
    working.sources = QStringList{u"AC 43.13-1B (9/8/98) par. 7-40"_s};
    if (lever) {
        working.sources << u"TM 1-1500-204-23-9 (31 July 1992) par. 8-6"_s << u"TM 9-254 par. 4-1 d"_s;
        working.notes << tr(QT_TRANSLATE_NOOP("Measure", "Pull at the middle of the grip: the arm is measured from there. No pipe on the handle."));
    }
    return setting;
}

std::optional<QString> whyNotSet(const Quantity &set, const TorqueBand &band, const std::optional<Lever> &lever, const WrenchScale &scale)
{
    const auto best = settingFor(band, lever, scale);
    if (!best)
        return best.error();
    const Rational step = scale.graduation->coherent();
    const Rational marks = set.coherent() / step;
    if (set >= best->lowest && set <= best->highest && marks == set.coherent().stepsBelow(step))
        return std::nullopt;
    return tr(QT_TRANSLATE_NOOP("Measure", "A setting of %1 does not serve: of the wrench's marks, %2 to %3 give the torque that is asked for."))
        .arg(set.text(), best->lowest.text(), best->highest.text());
}

Measured<Rational> torqueAtFastener(const Quantity &indicated, const std::optional<Lever> &lever)
{
    if (!lever)
        return indicated.coherent();
    const auto ratio = leverRatio(*lever);
    return ratio ? Measured<Rational>(indicated.coherent() * *ratio) : no(ratio.error());
}

QStringList torqueCautions()
{
    return {
        tr(QT_TRANSLATE_NOOP("Measure", "A wrench or an adapter can slip: pull, with a firm stand, and with nothing sharp behind the hand.")),
        tr(QT_TRANSLATE_NOOP("Measure", "Not on parts that are hot, under pressure or turning, and with the circuits nearby isolated and tagged.")),
        tr(QT_TRANSLATE_NOOP("Measure", "A fastener that went over its most is not turned back to it: follow the maintenance data.")),
        tr(QT_TRANSLATE_NOOP("Measure", "The approved maintenance data and the local rules decide, and people who are licensed or authorised for it tighten.")),
    };
}

} // namespace core::measure
