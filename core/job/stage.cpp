// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/stage.hpp"

#include <QCoreApplication>

#include "core/job/linked.hpp"
#include "core/job/twins.hpp"
#include "core/requirements/catalogue.hpp"

namespace core {

Stage stageOf(const InterfaceState &item)
{
    if (!item.removal)
        return Stage::Connected;
    if (!item.restoration)
        return Stage::Disconnected;
    if (!isEverythingShown(item) || !isSettled(item))
        return Stage::Reconnected;
    return static_cast<qint64>(item.acceptances.size()) >= item.listed.inspections ? Stage::Inspected : Stage::Secured;
}

bool isReadyToAccept(const JobState &job, const InterfaceState &item)
{
    return item.restoration && isEverythingShown(item) && isSettled(item) && (!item.stopped || !item.stopped->seenBy.empty()) && (item.twinsVerified || !asksForTwinCheck(job, item));
}

QString stageName(Stage stage)
{
    switch (stage) {
    case Stage::Connected: return QStringLiteral("connected");
    case Stage::Disconnected: return QStringLiteral("disconnected");
    case Stage::Reconnected: return QStringLiteral("reconnected");
    case Stage::Secured: return QStringLiteral("secured");
    case Stage::Inspected: return QStringLiteral("inspected");
    }
    Q_UNREACHABLE();
}

QString stageWord(Stage stage)
{
    switch (stage) {
    case Stage::Connected: return QCoreApplication::translate("Stage", "Connected");
    case Stage::Disconnected: return QCoreApplication::translate("Stage", "Disconnected");
    case Stage::Reconnected: return QCoreApplication::translate("Stage", "Reconnected");
    case Stage::Secured: return QCoreApplication::translate("Stage", "Secured");
    case Stage::Inspected: return QCoreApplication::translate("Stage", "Inspected");
    }
    Q_UNREACHABLE();
}

std::array<qsizetype, 5> stageCounts(const JobState &job)
{
    std::array<qsizetype, 5> counts{};
    for (const InterfaceState &item : job.items) {
        if (isElsewhere(item))
            continue; // it counts where it is
        ++counts[static_cast<std::size_t>(stageOf(item))];
    }
    return counts;
}

} // namespace core
