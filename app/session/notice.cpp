// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/notice.hpp"

#include <QCoreApplication>

#include <chrono>

#include "app/session/session.hpp"

namespace session {

namespace {

constexpr qint64 hour = std::chrono::milliseconds(std::chrono::hours(1)).count();
constexpr qint64 day = 24 * hour;

QString tr(const char *text) { return QCoreApplication::translate("Notice", text); }

/// Whole hours up to two days, then whole days.
QString age(qint64 milliseconds)
{
    return milliseconds < 2 * day ? tr("%1 hours").arg(milliseconds / hour) : tr("%1 days").arg(milliseconds / day);
}

} // namespace

Health healthOf(Session &session)
{
    Health health{session.trouble(), session.store().checkpointTrouble(), std::nullopt, std::nullopt};
    if (const auto backup = session.store().lastBackup())
        health.lastBackup = *backup;
    const core::Register &reg = session.reg();
    if (const core::Person *founder = reg.root ? reg.person(*reg.root) : nullptr)
        health.firstEntry = founder->enrolledAt;
    return health;
}

std::optional<Notice> noticeOf(const Health &health, const core::Instant &now)
{
    if (health.damage)
        return Notice{Notice::Sort::Damaged, tr("Damaged; only what came before is shown, and nothing can be added. %1").arg(health.damage->message)};
    if (health.sideFile)
        return Notice{Notice::Sort::SideFile, health.sideFile->message};
    if (!health.firstEntry)
        return std::nullopt;
    const qint64 since = now.milliseconds() - health.lastBackup.value_or(*health.firstEntry).milliseconds();
    if (since <= day)
        return std::nullopt;
    const QString sentence = health.lastBackup ? tr("The last backup is %1 old. Back up the store to another disk.") : tr("This store is %1 old and was never backed up. Back it up to another disk.");
    return Notice{Notice::Sort::Backup, sentence.arg(age(since))};
}

} // namespace session
