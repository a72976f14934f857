// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "app/session/notice.hpp"

using namespace Qt::StringLiterals;

/// What the window says above everything else.
class TstNotice : public QObject {
    Q_OBJECT

private slots:
    void gravestAlone_data()
    {
        QTest::addColumn<bool>("damaged");
        QTest::addColumn<bool>("sideFile");
        QTest::addColumn<int>("hoursOld");    // the store; -1 for none
        QTest::addColumn<int>("hoursBackedUp"); // ago; -1 for never
        QTest::addColumn<QString>("begins");
        QTest::newRow("nothing in it yet") << false << false << -1 << -1 << "";
        QTest::newRow("made a day ago") << false << false << 24 << -1 << "";
        QTest::newRow("made longer ago, never backed up") << false << false << 25 << -1 << "This store is 25 hours old and was never backed up.";
        QTest::newRow("backed up a day ago") << false << false << 500 << 24 << "";
        QTest::newRow("backed up longer ago") << false << false << 500 << 49 << "The last backup is 2 days old.";
        QTest::newRow("side file") << false << true << 500 << 49 << "disk full";
        QTest::newRow("damage before all else") << true << true << 500 << 49 << "Damaged; only what came before is shown, and nothing can be added. entry 3";
    }

    void gravestAlone()
    {
        QFETCH(bool, damaged);
        QFETCH(bool, sideFile);
        QFETCH(int, hoursOld);
        QFETCH(int, hoursBackedUp);
        QFETCH(QString, begins);
        const auto now = *core::Instant::parse(u"2026-03-09T12:00:00Z");
        const auto ago = [&](int hours) { return hours < 0 ? std::nullopt : std::optional(core::Instant::fromMilliseconds(now.milliseconds() - hours * 3'600'000LL)); };
        session::Health health;
        if (damaged)
            health.damage = core::Error{core::ErrorCode::Damaged, u"entry 3"_s};
        if (sideFile)
            health.sideFile = core::Error{core::ErrorCode::Io, u"disk full"_s};
        health.firstEntry = ago(hoursOld);
        health.lastBackup = ago(hoursBackedUp);
        const auto notice = session::noticeOf(health, now);
        QCOMPARE(notice.has_value(), !begins.isEmpty());
        if (notice)
            QVERIFY2(notice->sentence.startsWith(begins), qPrintable(notice->sentence));
    }
};

QTEST_GUILESS_MAIN(TstNotice)
#include "tst_notice.moc"
