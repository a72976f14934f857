// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/asked_less.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

#include "core/job/state.hpp"

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Revision", text); }

template <class T>
bool has(const std::vector<T> &all, const T &one)
{
    return std::find(all.begin(), all.end(), one) != all.end();
}

template <class T>
bool hasAll(const std::vector<T> &all, const std::vector<T> &ones)
{
    return std::all_of(ones.begin(), ones.end(), [&](const T &one) { return has(all, one); });
}

/// A text that asks for one thing: another one does not ask for that.
bool isDropped(const QString &before, const QString &after) { return !before.isEmpty() && after != before; }

/// A greatest value that now lets more through.
template <class T>
bool isRaised(const std::optional<T> &before, const std::optional<T> &after)
{
    return before && (!after || !(*after <= *before));
}

/// A least value that now lets more through.
template <class T>
bool isLowered(const std::optional<T> &before, const std::optional<T> &after)
{
    return before && (!after || !(*after >= *before));
}

bool isTurnWider(const std::optional<TurnBand> &before, const std::optional<TurnBand> &after)
{
    return before && (!after || !(after->least >= before->least) || !(after->most <= before->most));
}

QStringList torqueAskedLess(const TorqueSpec &before, const std::optional<TorqueSpec> &after)
{
    if (!after)
        return {tr("the torque")};
    QStringList less;
    if (after->fasteners < before.fasteners)
        less << tr("fasteners");
    if (!(after->min >= before.min) || !(after->max <= before.max))
        less << tr("the torque band");
    if ((before.prevailing != Prevailing::None && after->prevailing != before.prevailing) || (after->prevailing == Prevailing::Added && before.prevailing != Prevailing::Added) || isLowered(before.prevailingMin, after->prevailingMin) || isRaised(before.prevailingMax, after->prevailingMax))
        less << tr("the drag of the nuts");
    if (isDropped(before.condition, after->condition) || isDropped(before.thread, after->thread))
        less << tr("the threads");
    if (!before.passes.empty() && after->passes != before.passes)
        less << tr("the passes");
    if (!before.order.empty() && after->order != before.order)
        less << tr("the order of the fasteners");
    if (isTurnWider(before.turn, after->turn))
        less << tr("the turn after the torque");
    return less;
}

bool isBondingAskedLess(const Listing &before, const Listing &after)
{
    const bool isEdgeLetThrough = before.bondingComparison == measure::Comparison::LessThan && after.bondingComparison == measure::Comparison::AtMost && after.bondingMax >= before.bondingMax;
    return before.bondingMax && (isRaised(before.bondingMax, after.bondingMax) || isEdgeLetThrough || after.bondingReadings < before.bondingReadings);
}

bool isLeakAskedLess(const LeakLimit &before, const std::optional<LeakLimit> &after)
{
    return !after || isDropped(before.worstClass, after->worstClass) || isRaised(before.rate, after->rate) || (before.dropsPerMillilitre && after->dropsPerMillilitre != before.dropsPerMillilitre);
}

bool isHardwareAskedLess(const std::vector<HardwareLine> &before, const std::vector<HardwareLine> &after)
{
    return !std::all_of(before.begin(), before.end(), [&](const HardwareLine &line) {
        return std::any_of(after.begin(), after.end(), [&](const HardwareLine &one) { return one.part == line.part && one.quantity >= line.quantity && (one.mustBeNew || !line.mustBeNew); });
    });
}

} // namespace

QString whatIsAskedLess(const Listing &before, const Listing &after)
{
    QStringList less;
    for (const QString &requirement : before.requirements) {
        if (!has(after.requirements, requirement))
            less << tr("a requirement (%1)").arg(requirement);
    }
    if (before.torque)
        less << torqueAskedLess(*before.torque, after.torque);
    if (isBondingAskedLess(before, after))
        less << tr("the bonding limit");
    if (before.leak && isLeakAskedLess(*before.leak, after.leak))
        less << tr("the leak limit");
    if (isDropped(before.sealPart, after.sealPart))
        less << tr("its seal (%1)").arg(before.sealPart);
    if (isDropped(before.safetying, after.safetying))
        less << tr("its safetying (%1)").arg(before.safetying);
    if (isDropped(before.aircraftHalf, after.aircraftHalf) || isDropped(before.unitHalf, after.unitHalf))
        less << tr("its halves");
    if (isHardwareAskedLess(before.hardware, after.hardware))
        less << tr("hardware");
    if (after.inspections < before.inspections)
        less << tr("an inspection");
    if (before.critical && !after.critical)
        less << tr("the mark of a critical interface");
    if (isDropped(before.twinGroup, after.twinGroup))
        less << tr("its twins (%1)").arg(before.twinGroup);
    if (isDropped(before.independenceGroup, after.independenceGroup))
        less << tr("its independence group (%1)").arg(before.independenceGroup);
    if (!hasAll(after.access, before.access))
        less << tr("what has to be off before it");
    if (!hasAll(after.dependsOn, before.dependsOn))
        less << tr("what it depends on");
    if (isDropped(before.kind, after.kind))
        less << tr("its kind (%1)").arg(before.kind);
    if (isDropped(before.zone, after.zone))
        less << tr("its zone (%1)").arg(before.zone);
    return less.join(QStringLiteral(", "));
}

void noteAskedLess(InterfaceState &item, const PersonId &by)
{
    const auto &before = item.left.listed;
    if (std::any_of(before.begin(), before.end(), [&](const Listing &one) { return !whatIsAskedLess(one, item.listed).isEmpty(); }))
        item.left.askedLessBy.insert(by);
}

} // namespace core
