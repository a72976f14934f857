// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/tightening.hpp"

#include <QCoreApplication>

namespace core::measure {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Measure", text); }

tl::unexpected<QString> no(const QString &sentence) { return tl::unexpected<QString>(sentence); }

std::vector<qint64> nearestOpposites(qint64 fasteners)
{
    std::vector<qint64> order;
    for (qint64 turn = 0, at = 0; turn < fasteners; ++turn) {
        order.push_back(at + 1);
        at = (at + (fasteners - 1) / 2) % fasteners;
    }
    return order;
}

QString orderText(qint64 fasteners)
{
    QStringList numbers;
    for (const qint64 number : crossPattern(fasteners))
        numbers << QString::number(number);
    return numbers.join(u'-');
}

std::optional<QString> whyNoPass(const Decimal &percent, const Rational &before)
{
    const Rational share(percent);
    if (share <= 0 || share > 100)
        return tr(QT_TRANSLATE_NOOP("Measure", "A pass to %1 % of the final torque is none. Give each pass more than 0 and at most 100 %.")).arg(percent.text());
    if (share < before)
        return tr(QT_TRANSLATE_NOOP("Measure", "A pass to %1 % asks for less than the pass before it. Give the passes in rising order.")).arg(percent.text());
    return std::nullopt;
}

} // namespace

std::vector<qint64> crossPattern(qint64 fasteners)
{
    if (fasteners < 1)
        return {};
    if (fasteners % 2 != 0)
        return nearestOpposites(fasteners);
    const qint64 half = fasteners / 2;
    std::vector<qint64> order;
    for (const qint64 first : crossPattern(half)) {
        order.push_back(first);
        order.push_back(first + half);
    }
    return order;
}

Measured<std::vector<PassTarget>> passTargets(const Quantity &finalTorque, const std::vector<Decimal> &percents)
{
    if (finalTorque.dimension() != Dimension::Torque || finalTorque.coherent() <= 0)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "%1 is no torque to tighten to. Give the final torque of the maintenance data.")).arg(finalTorque.text()));
    std::vector<PassTarget> targets;
    Rational before;
    for (const Decimal &percent : percents) {
        if (const auto why = whyNoPass(percent, before))
            return no(*why);
        before = Rational(percent);
        targets.push_back({static_cast<qint64>(targets.size()) + 1, percent, finalTorque.coherent() * before / 100});
    }
    if (before != 100)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "The last pass goes to %1 % of the final torque. Add the pass to 100 %.")).arg(before.text(18)));
    return targets;
}

Measured<Working> tighteningWorking(qint64 fasteners, const Quantity &finalTorque, const std::vector<Decimal> &percents)
{
    if (fasteners < 1)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "There are %1 fasteners to tighten. Count them again.")).arg(fasteners));
    const auto targets = passTargets(finalTorque, percents);
    if (!targets)
        return no(targets.error());
    Working working;
    for (const PassTarget &target : *targets)
        working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Pass %1")).arg(target.pass), u"Tᵢ = T · p / 100"_s, u"%1 · %2 / 100"_s.arg(finalTorque.text(), target.percent.text()),
                                 shownIn(target.torque, *findUnit(finalTorque.unit()))});
    working.answer = tr(QT_TRANSLATE_NOOP("Measure", "Tighten in the order %1, all of them in each pass.")).arg(orderText(fasteners));
    working.notes << tr(QT_TRANSLATE_NOOP("Measure", "The fasteners are numbered clockwise from 1. Where the maintenance data gives an order, it governs."));
    if (fasteners % 2 != 0 && fasteners > 1)
        working.notes << tr(QT_TRANSLATE_NOOP("Measure", "With an odd number none lies opposite: each is followed by the nearer of the two that face it."));
    working.sources << tr(QT_TRANSLATE_NOOP("Measure", "Gasket makers' instructions: opposite pairs, then halve the angle; percents of the passes as given"));
    return working;
}

} // namespace core::measure
