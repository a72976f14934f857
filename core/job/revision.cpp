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
