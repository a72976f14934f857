// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

#include "app/desktop/flows/signing.hpp"
#include "app/desktop/job_feed.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/parts/sign_sheet.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/on_screen.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;
using core::json::Object;

/// Taking back what one said last is a strike with its reason, by the same rules as any other.
class TestStrikeLast : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup();
    void ownLastEntryIsStruck();
    void anEntryOfAnotherIsPassedOver();
    void whatWasStruckIsPassedOver();
    void aRuleSaysWhyNot();
    void nobodyIsSignedIn();
    void nothingWasSaid();

private:
    void say(const QString &who, const QString &kind, const QString &subject, Object body);
    desktop::SignSheet *sheet() const { return m_place->window()->findChild<desktop::SignSheet *>(); }
    /// Asks for it, and gives which entry the sheet strikes; 0 without a sheet.
    qint64 asked();
    void sign(const QString &who);

    std::unique_ptr<Bench> m_bench;
    std::unique_ptr<session::Session> m_session;
    ScriptedAsk m_ask;
    std::unique_ptr<desktop::JobFeed> m_feed;
    std::unique_ptr<QWidget> m_window;
    desktop::JobPlace *m_place = nullptr;
    std::optional<core::LedgerId> m_ledger;
};

void TestStrikeLast::init()
{
    m_ask.told.clear();
    m_bench = std::make_unique<Bench>();
    QCOMPARE(m_bench->trouble(), QString());
    m_session = m_bench->another();
    m_ledger = m_bench->openJob(*m_session);
    QVERIFY2(m_ledger, qPrintable(m_bench->trouble()));
    QVERIFY(m_session->openJob(*m_ledger));
    m_feed = std::make_unique<desktop::JobFeed>();
    m_feed->take(m_session->state(), m_session->said(), m_session->reg());
    m_window = std::make_unique<QWidget>();
    auto *signing = new desktop::Signing(*m_session, *m_feed, m_bench->kinds(), m_ask, m_window.get());
    m_place = new desktop::JobPlace(*m_session, *m_feed, *signing, m_bench->kinds(), m_ask, m_window.get());
    m_window->show();
    say(u"ana"_s, u"interface.listed"_s, u"D1"_s, {{u"name"_s, u"Bleed duct"_s}, {u"kind"_s, u"duct"_s}, {u"zone"_s, u"Left"_s}});
    say(u"ana"_s, u"interface.disconnected"_s, u"D1"_s, {{u"tag"_s, u"1"_s}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}});
    say(u"ana"_s, u"interface.reconnected"_s, u"D1"_s, {{u"tag_recovered"_s, u"1"_s}, {u"blanks_removed"_s, 0}});
}

void TestStrikeLast::cleanup()
{
    m_window.reset();
    m_feed.reset();
    m_session.reset();
    m_bench.reset();
}

void TestStrikeLast::say(const QString &who, const QString &kind, const QString &subject, Object body)
{
    QCOMPARE(Bench::say(*m_session, *m_ledger, who, kind, subject, std::move(body)), QString());
    m_feed->take(m_session->state(), m_session->said(), m_session->reg());
}

qint64 TestStrikeLast::asked()
{
    m_place->strikeLastAsked();
    if (!sheet())
        return 0;
    const QString words = named<QListWidget>(*sheet(), u"words"_s)->item(1)->text();
    return words.mid(words.indexOf(u"(entry ") + 7).chopped(1).toLongLong();
}

void TestStrikeLast::sign(const QString &who)
{
    named<QWidget>(*sheet(), u"reason"_s)->findChild<QLineEdit *>()->setText(u"Read from the wrong line"_s);
    named<QLineEdit>(*sheet(), u"secret"_s)->setText(Bench::pinOf(who));
    named<QPushButton>(*sheet(), u"sign"_s)->click();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    m_feed->take(m_session->state(), m_session->said(), m_session->reg());
}

void TestStrikeLast::ownLastEntryIsStruck()
{
    const qint64 last = m_session->said().back().seq;
    QCOMPARE(asked(), last);
    QVERIFY(named<QListWidget>(*sheet(), u"words"_s)->item(1)->text().contains(u"D1 Bleed duct: Reconnected"));
    sign(u"ana"_s);
    QCOMPARE(m_session->state()->lines[static_cast<std::size_t>(last - 1)].standing, core::Standing::Struck);
    QCOMPARE(m_session->said().back().body.text(u"reason"), u"Read from the wrong line"_s);
}

void TestStrikeLast::anEntryOfAnotherIsPassedOver()
{
    const qint64 last = m_session->said().back().seq;
    const auto other = m_bench->another(); // Cho, at another computer
    QVERIFY(other && other->openJob(*m_ledger));
    QCOMPARE(Bench::say(*other, *m_ledger, u"cho"_s, u"finding.raised"_s, u"F-1"_s, {{u"description"_s, u"A scratch on the cowl"_s}}), QString());
    QVERIFY(m_session->refresh());
    m_feed->take(m_session->state(), m_session->said(), m_session->reg());
    QCOMPARE(m_session->said().back().seq, last + 1);
    QCOMPARE(asked(), last);
}

void TestStrikeLast::whatWasStruckIsPassedOver()
{
    const qint64 last = m_session->said().back().seq;
    QCOMPARE(asked(), last);
    sign(u"ana"_s);
    QCOMPARE(asked(), last - 1); // neither what was struck nor the strike
}

/// A finding is answered, not talked away: not even by who raised it.
void TestStrikeLast::aRuleSaysWhyNot()
{
    say(u"ana"_s, u"finding.raised"_s, u"F-1"_s, {{u"description"_s, u"A scratch on the cowl"_s}});
    QCOMPARE(asked(), 0);
    QCOMPARE(m_ask.told.size(), 1);
    const auto said = m_session->said().back();
    const core::Refusals refusals = m_session->ask({said.author, m_session->now(), u"entry.struck"_s, {}, {{u"entry"_s, said.seq}, {u"reason"_s, u"-"_s}}});
    QVERIFY(!refusals.empty());
    QVERIFY2(m_ask.told.front().contains(refusals.front().sentence) && m_ask.told.front().contains(u"F-1"), qPrintable(m_ask.told.front()));
}

void TestStrikeLast::nobodyIsSignedIn()
{
    m_session->lock();
    QCOMPARE(asked(), 0);
    QVERIFY2(m_ask.told.value(0).contains(u"Nobody is signed in"), qPrintable(m_ask.told.value(0)));
}

void TestStrikeLast::nothingWasSaid()
{
    say(u"cho"_s, u"finding.raised"_s, u"F-1"_s, {{u"description"_s, u"A scratch on the cowl"_s}});
    QVERIFY(asked() > 0);
    sign(u"cho"_s);
    QCOMPARE(asked(), 0);
    QVERIFY2(m_ask.told.value(0).contains(u"Cho Lim has no entry"), qPrintable(m_ask.told.value(0)));
}

QTEST_MAIN(TestStrikeLast)
#include "tst_strike_last.moc"
