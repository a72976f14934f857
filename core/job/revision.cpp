// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/revision.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

#include "core/job/state.hpp"

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Revision", text); }

} // namespace

std::vector<InterfaceId> revisedBy(const JobState &job, qint64 seq)
{
    const auto at = std::find_if(job.revisions.begin(), job.revisions.end(), [&](const Revision &one) { return one.mark.seq == seq; });
    return at == job.revisions.end() ? std::vector<InterfaceId>() : at->items;
}

const TimeInDoubt *doubtOfTime(const JobState &job, qint64 seq)
{
    const auto at = std::find_if(job.timesInDoubt.begin(), job.timesInDoubt.end(), [&](const TimeInDoubt &one) { return one.covers(seq); });
    return at == job.timesInDoubt.end() ? nullptr : &*at;
}

QString whatIsAskedLess(const Listing &before, const Listing &after)
{
    QStringList less;
    for (const QString &requirement : before.requirements) {
        if (std::find(after.requirements.begin(), after.requirements.end(), requirement) == after.requirements.end())
            less << tr("a requirement (%1)").arg(requirement);
    }
    if (after.inspections < before.inspections)
        less << tr("an inspection");
    if (before.critical && !after.critical)
        less << tr("the mark of a critical interface");
    if (!before.twinGroup.isEmpty() && after.twinGroup != before.twinGroup)
        less << tr("its twins (%1)").arg(before.twinGroup);
    if (!before.independenceGroup.isEmpty() && after.independenceGroup != before.independenceGroup)
        less << tr("its independence group (%1)").arg(before.independenceGroup);
    return less.join(QStringLiteral(", "));
}

QString whatIsBuiltIn(const Listing &before, const Listing &after)
{
    QStringList built;
    if (before.sealPart != after.sealPart)
        built << tr("the seal");
    if (before.aircraftHalf != after.aircraftHalf || before.unitHalf != after.unitHalf)
        built << tr("the halves");
    if (before.hardware != after.hardware)
        built << tr("the hardware");
    return built.join(QStringLiteral(", "));
}

} // namespace core
