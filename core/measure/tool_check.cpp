// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/tool_check.hpp"

#include <QCoreApplication>

namespace core::measure {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Measure", text); }

tl::unexpected<QString> no(const QString &sentence) { return tl::unexpected<QString>(sentence); }

bool isTorque(const Quantity &quantity) { return quantity.dimension() == Dimension::Torque && quantity.coherent() > 0; }

QString marginText(const ToolPoint &point, const Unit &unit)
{
    return tr(QT_TRANSLATE_NOOP("Measure", "%1 to %2")).arg(shown(inUnit(point.least, unit), {}), shownIn(point.most, unit));
}

std::optional<QString> whyNoTool(const Quantity &greatest, const std::optional<Quantity> &lowestMark, const Decimal &percent)
{
    if (!isTorque(greatest))
        return tr(QT_TRANSLATE_NOOP("Measure", "A greatest torque of %1 is none. Give what is marked on the tool.")).arg(greatest.text());
    if (lowestMark && (!isTorque(*lowestMark) || *lowestMark > greatest))
        return tr(QT_TRANSLATE_NOOP("Measure", "A lowest mark of %1 is none of a tool up to %2. Give what is marked on the tool.")).arg(lowestMark->text(), greatest.text());
    return whyNoDeviation(percent);
}

} // namespace

ToolPoint toolPoint(const Rational &torque, const Decimal &percent)
{
    const Rational off = permissibleDeviation(torque, percent);
    return {torque, torque - off, torque + off};
}

std::vector<Rational> verificationTorques(const Quantity &greatest, const std::optional<Quantity> &lowestMark)
{
    const Rational all = greatest.coherent();
    return {lowestMark ? lowestMark->coherent() : all * 20 / 100, all * 60 / 100, all};
}

Measured<Working> toolCheckWorking(const Quantity &greatest, const std::optional<Quantity> &lowestMark, const Quantity &setting, const Decimal &percent)
{
    if (const auto why = whyNoTool(greatest, lowestMark, percent))
        return no(*why);
    const std::vector<Rational> torques = verificationTorques(greatest, lowestMark);
    const Unit &unit = *findUnit(setting.unit());
    if (!isTorque(setting) || setting.coherent() < torques.front() || setting > greatest)
        return no((lowestMark ? tr(QT_TRANSLATE_NOOP("Measure", "%1 lies outside the range of the tool, %2 to %3. Take another tool."))
                              : tr(QT_TRANSLATE_NOOP("Measure", "%1 lies outside %2 to %3, which is the range of a tool that is verified from 20 % on. Give the lowest mark of this one, or take another tool.")))
                      .arg(setting.text(), shownIn(torques.front(), *findUnit(greatest.unit())), greatest.text()));

    const ToolPoint at = toolPoint(setting.coherent(), percent);
    Working working;
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "The tool may be off by, W")), u"W = T · p / 100"_s, u"%1 · %2 / 100"_s.arg(setting.text(), percent.text()), u"± "_s + shownIn(at.most - at.torque, unit)});
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "At the setting")), u"T ± W"_s, {}, marginText(at, unit)});
    const QString names[] = {lowestMark ? tr(QT_TRANSLATE_NOOP("Measure", "Verified at the lowest mark")) : tr(QT_TRANSLATE_NOOP("Measure", "Verified at 20 %")),
                             tr(QT_TRANSLATE_NOOP("Measure", "Verified at 60 %")), tr(QT_TRANSLATE_NOOP("Measure", "Verified at 100 %"))};
    for (std::size_t i = 0; i < torques.size(); ++i)
        working.steps.push_back({names[i], {}, shownIn(torques[i], *findUnit(greatest.unit())), marginText(toolPoint(torques[i], percent), *findUnit(greatest.unit()))});
    working.answer = tr(QT_TRANSLATE_NOOP("Measure", "Set to %1, the tool may give %2.")).arg(setting.text(), marginText(at, unit));
    working.notes << tr(QT_TRANSLATE_NOOP("Measure", "The percents differ by standard, class and greatest torque, and the tool's own certificate comes first."));
    working.sources << (lowestMark ? tr(QT_TRANSLATE_NOOP("Measure", "Points: ISO 6789-1:2017, lowest marked value, 60 and 100 % (from memory)"))
                                   : tr(QT_TRANSLATE_NOOP("Measure", "Points: ISO 6789:2003, 20, 60 and 100 % of the greatest torque")))
                    << tr(QT_TRANSLATE_NOOP("Measure", "Deviation: as given"));
    return working;
}

} // namespace core::measure
