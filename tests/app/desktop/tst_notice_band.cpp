// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <memory>

#include "app/desktop/main_window.hpp"
#include "app/desktop/parts/notice_band.hpp"
#include "tests/app/cli/raw_sql.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;

/// What the window says above all its pages. Which of several things it says is in app.session.notice.
class TstNoticeBand : public QObject {
    Q_OBJECT

    std::unique_ptr<Bench> m_bench;
    ScriptedAsk m_ask;
    qint64 m_now = 0;
    std::unique_ptr<desktop::MainWindow> m_window;

    void openAt(QStringView moment)
    {
        m_now = core::Instant::parse(moment)->milliseconds();
        const session::Clock clock = [this] { return core::Instant::fromMilliseconds(m_now); };
        m_window = std::make_unique<desktop::MainWindow>(m_ask, m_bench->kinds(), desktop::SessionMaker{clock, core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
        m_window->openStore(m_bench->path());
        m_window->show();
        m_window->look();
    }
    /// What the band says; empty when it is not there.
    QString said() const
    {
        const auto *band = m_window->findChild<desktop::NoticeBand *>();
        return band->isVisible() ? band->findChild<QLabel *>(u"noticeText"_s)->text() : QString();
    }
    QPushButton *backUp() const { return m_window->findChild<QPushButton *>(u"noticeBackUp"_s); }

private slots:
    void init()
    {
        m_bench = std::make_unique<Bench>();
        QCOMPARE(m_bench->trouble(), QString());
        m_ask.told.clear();
    }
    void cleanup() { m_window.reset(); }

    void nothingOnTheFirstDay()
    {
        openAt(u"2026-03-03T07:00:00Z");
        QCOMPARE(said(), QString());
    }

    void backupIsDueUntilItIsMade()
    {
        openAt(u"2026-03-03T09:00:00Z");
        QCOMPARE(said(), u"This store is 24 hours old and was never backed up. Back it up to another disk."_s);
        m_ask.savePath = m_bench->path() + u"-backup"_s;
        QTest::mouseClick(backUp(), Qt::LeftButton);
        QVERIFY2(QFileInfo::exists(*m_ask.savePath), qPrintable(m_ask.told.join(u'\n')));
        QCOMPARE(said(), QString());
        m_now += 25 * 3'600'000;
        m_window->look();
        QCOMPARE(said(), u"The last backup is 25 hours old. Back up the store to another disk."_s);
    }

    void damagedJobSaysSoAndTakesNothing()
    {
        auto session = m_bench->another();
        QVERIFY(session);
        const auto job = m_bench->openJob(*session);
        QVERIFY(job);
        session.reset();
        QCOMPARE(tamper(m_bench->path(), u"UPDATE entries SET hash = randomblob(32) WHERE seq = 1 AND ledger = (SELECT id FROM ledgers WHERE is_register = 0)"_s), QString());
        openAt(u"2026-03-02T12:00:00Z");
        m_window->openJob(*job);
        QVERIFY2(said().startsWith(u"Damaged; only what came before is shown, and nothing can be added. Entry 1 "_s), qPrintable(said()));
        QVERIFY(!backUp()->isVisible());
    }
};

QTEST_MAIN(TstNoticeBand)
#include "tst_notice_band.moc"
