// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QProcess>
#include <QtTest>

#include "db/store.hpp"
#include "tests/db/support/files.hpp"
#include "tests/db/support/signed_entries.hpp"
#include "tests/support/unbound_key.hpp"

using core::ErrorCode;
using core::Instant;
using db::Access;
using db::Store;
using Others = db::Credentials::Others;

namespace {

const QString right = QStringLiteral("480915");
const QString wrong = QStringLiteral("000000");

/// A store with Ana's key in it, that can be closed and opened again.
class Sitting {
public:
    Sitting() : m_store(*Store::create(m_folder / "a.remate")), m_ana(entries::hand(QStringLiteral("Ana")))
    {
        if (!keep(m_ana, right))
            qFatal("no key");
    }
    core::Result<void> keep(const entries::Hand &hand, const QString &secret)
    {
        return m_store->credentials().put(hand.person, hand.key.publicKey().fingerprint(),
                                          *core::wrap(hand.key, hand.person, secret, m_here, core::leastCost), Others::Keep);
    }
    void restart()
    {
        m_store.reset();
        m_store = *Store::open(m_folder / "a.remate", Access::ReadWrite);
    }
    /// `open`, `wrong`, `wait` or the error's message.
    QString tryAt(qint64 second, const QString &secret)
    {
        const auto key = unlock(second, secret);
        if (key)
            return key->publicKey() == m_ana.key.publicKey() ? QStringLiteral("open") : QStringLiteral("another key");
        switch (key.error().code) {
        case ErrorCode::WrongSecret: return QStringLiteral("wrong");
        case ErrorCode::Locked: return key.error().message.contains(u"must wait") ? QStringLiteral("wait") : QStringLiteral("locked");
        default: return key.error().message;
        }
    }
    core::Result<core::SigningKey> unlock(qint64 second, const QString &secret)
    {
        return m_store->credentials().unlock(m_ana.person, m_ana.key.publicKey().fingerprint(), secret, m_here,
                                             Instant::fromMilliseconds(base + second * 1000));
    }
    core::Result<qint64> waitLeft(qint64 second)
    {
        return m_store->credentials().waitLeft(m_ana.person, m_ana.key.publicKey().fingerprint(),
                                               Instant::fromMilliseconds(base + second * 1000));
    }
    Store &store() { return *m_store; }
    const entries::Hand &ana() const { return m_ana; }
    QString path() const { return m_folder / "a.remate"; }

private:
    static constexpr qint64 base = 1'772'439'271'120;
    files::Folder m_folder;
    std::unique_ptr<Store> m_store;
    entries::Hand m_ana;
    core::SecondKey m_here = entries::station();
};

} // namespace

class TestCredentials : public QObject {
    Q_OBJECT

private slots:
    void whatWasKeptComesBack()
    {
        Sitting sitting;
        const auto &ana = sitting.ana();
        const auto fingerprint = ana.key.publicKey().fingerprint();
        const auto wrapped = *core::wrap(ana.key, ana.person, right, entries::station(), core::leastCost);
        QVERIFY(sitting.store().credentials().put(ana.person, fingerprint, wrapped, Others::Keep));
        sitting.restart();
        QVERIFY(*sitting.store().credentials().get(ana.person, fingerprint, entries::station().id()) == wrapped);
        QVERIFY(!*sitting.store().credentials().get(ana.person, core::Digest::of("another key"), entries::station().id()));
        QVERIFY(!*sitting.store().credentials().get(entries::hand("Ben").person, fingerprint, entries::station().id()));
    }

    /// Each step is a second of the clock and what is typed: r right, w wrong, / the program is started again.
    void secretsTried_data()
    {
        QTest::addColumn<QString>("steps");
        QTest::addColumn<QString>("outcomes");
        QTest::addRow("right at once") << "0r" << "open";
        QTest::addRow("two wrong cost nothing") << "0w 1w 2r" << "wrong wrong open";
        QTest::addRow("three wrong cost five seconds") << "0w 1w 2w 6r 7r" << "wrong wrong wrong wait open";
        QTest::addRow("the wait doubles") << "0w 0w 0w 5w 14r 15r" << "wrong wrong wrong wrong wait open";
        QTest::addRow("a try that comes too early does not lengthen it") << "0w 0w 0w 4w 4w 5r" << "wrong wrong wrong wait wait open";
        QTest::addRow("a right one ends the row") << "0w 0w 0r 1w 1w 1r" << "wrong wrong open wrong wrong open";
        QTest::addRow("survives a restart") << "0w / 0w / 0w / 4r / 5r" << "wrong wrong wrong wait open";
        QTest::addRow("clock set back waits again") << "100w 100w 100w 50r 54r 55r" << "wrong wrong wrong wait wait open";
        QTest::addRow("clock set back a little") << "100w 100w 100w 99r 103r 104r" << "wrong wrong wrong wait wait open";
        QTest::addRow("ten wrong lock for ever")
            << "0w 0w 0w 1000w 2000w 3000w 4000w 5000w 6000w 7000w 8000r / 900000r"
            << "wrong wrong wrong wrong wrong wrong wrong wrong wrong locked locked locked";
        QTest::addRow("nine wrong do not")
            << "0w 0w 0w 1000w 2000w 3000w 4000w 5000w 6000w 7000r"
            << "wrong wrong wrong wrong wrong wrong wrong wrong wrong open";
    }

    void secretsTried()
    {
        QFETCH(QString, steps);
        QFETCH(QString, outcomes);
        Sitting sitting;
        QStringList seen;
        for (const QString &step : steps.split(' ')) {
            if (step == "/")
                sitting.restart();
            else
                seen += sitting.tryAt(step.chopped(1).toLongLong(), step.endsWith('r') ? right : wrong);
        }
        QCOMPARE(seen.join(' '), outcomes);
    }

    void whatThePersonIsTold_data()
    {
        QTest::addColumn<int>("wrongBefore");
        QTest::addColumn<QString>("told");
        QTest::addRow("first") << 0 << "That is not the PIN or passphrase of Ana. Try again.";
        QTest::addRow("third") << 2 << "That is not the PIN or passphrase of Ana. The next try is possible in 5 seconds.";
        QTest::addRow("eighth") << 7 << "That is not the PIN or passphrase of Ana. The next try is possible in 3 minutes.";
        QTest::addRow("tenth") << 9
                               << "The key of Ana is locked after too many wrong PINs or passphrases. An administrator registers a new "
                                  "key for them; what they signed stays valid.";
    }

    void whatThePersonIsTold()
    {
        QFETCH(int, wrongBefore);
        QFETCH(QString, told);
        Sitting sitting;
        for (int i = 0; i < wrongBefore; ++i)
            QVERIFY(!sitting.unlock(i * 1000, wrong));
        QCOMPARE(sitting.unlock(wrongBefore * 1000, wrong).error().message, told);
    }

    void howLongToWait()
    {
        Sitting sitting;
        QCOMPARE(*sitting.waitLeft(0), 0);
        for (int i = 0; i < 3; ++i)
            QCOMPARE(sitting.tryAt(100, wrong), "wrong");
        QCOMPARE(*sitting.waitLeft(100), 5000);
        QCOMPARE(*sitting.waitLeft(103), 2000);
        QCOMPARE(*sitting.waitLeft(105), 0);
        QCOMPARE(*sitting.waitLeft(20), 5000);
        QCOMPARE(sitting.unlock(103, right).error().message,
                 "After several wrong PINs or passphrases Ana must wait another 2 seconds before the next try.");
    }

    /// Whoever kills the program while it still works on the secret has used up a try.
    void killedBeforeTheAnswer()
    {
        Sitting sitting;
        const auto &ana = sitting.ana();
        const auto fingerprint = ana.key.publicKey().fingerprint();
        const core::WrapCost longWork{64, 512LL * 1024 * 1024};
        auto key = *core::wrap(ana.key, ana.person, right, entries::station(), core::leastCost);
        key.cost = longWork;
        QVERIFY(sitting.store().credentials().put(ana.person, fingerprint, key, Others::Keep));
        for (int tries = 1; tries <= 3; ++tries) {
            QProcess guesser;
            guesser.start(QCoreApplication::applicationDirPath() + "/store_writer", {sitting.path(), "guess"});
            QVERIFY(guesser.waitForStarted());
            QTRY_COMPARE_WITH_TIMEOUT(files::rawNumber(sitting.path(), "SELECT wrong_in_a_row FROM attempts").value_or(0), tries, 15'000);
            QCOMPARE(guesser.readAllStandardOutput(), "");
            QCOMPARE(guesser.state(), QProcess::Running);
            guesser.kill();
            QVERIFY(guesser.waitForFinished());
        }
        QCOMPARE(*sitting.waitLeft(0), 5000);
    }

    void aChangedSecretKeepsTheCount()
    {
        Sitting sitting;
        for (int i = 0; i < 3; ++i)
            QCOMPARE(sitting.tryAt(0, wrong), "wrong");
        QVERIFY(sitting.keep(sitting.ana(), "another 480915"));
        QCOMPARE(sitting.tryAt(1, "another 480915"), "wait");
        QCOMPARE(sitting.tryAt(5, "another 480915"), "open");
    }

    void aNewKeyStartsAfresh()
    {
        Sitting sitting;
        for (int i = 0; i < 10; ++i)
            sitting.tryAt(i * 1000, wrong);
        QCOMPARE(sitting.tryAt(99'000, right), "locked");
        const entries::Hand renewed{sitting.ana().person, *core::SigningKey::generate()};
        QVERIFY(sitting.keep(renewed, right));
        QVERIFY(sitting.store().credentials().unlock(renewed.person, renewed.key.publicKey().fingerprint(), right, entries::station(),
                                                     Instant::fromMilliseconds(0)));
    }

    void aKeyThatIsNotHere()
    {
        Sitting sitting;
        const auto ben = entries::hand("Ben");
        const auto key = sitting.store().credentials().unlock(ben.person, ben.key.publicKey().fingerprint(), right, entries::station(),
                                                              Instant::fromMilliseconds(0));
        QCOMPARE(key.error().code, ErrorCode::NotFound);
    }

    /// A copy for each station; the key's own station wins over one that is bound to none, which goes when it was bound.
    void eachStationHasItsCopy()
    {
        Sitting sitting;
        const auto &ana = sitting.ana();
        auto &credentials = sitting.store().credentials();
        const auto fingerprint = ana.key.publicKey().fingerprint();
        const auto there = entries::station("there");
        const auto place = [&](const core::SecondKey &station) { return *credentials.placeOf(ana.person, fingerprint, station.id()); };
        QCOMPARE(place(entries::station()), db::KeyPlace::Here);
        QCOMPARE(place(there), db::KeyPlace::Elsewhere);
        QCOMPARE(*credentials.placeOf(ana.person, core::Digest::of("another key"), there.id()), db::KeyPlace::Nowhere);
        const auto away = credentials.unlock(ana.person, fingerprint, right, there, Instant::fromMilliseconds(0));
        QCOMPARE(away.error().code, ErrorCode::NotFound);
        QVERIFY2(away.error().message.contains("not at this station"), qPrintable(away.error().message));
        QCOMPARE(credentials.tries(ana.person, fingerprint)->wrongInARow, 0);

        QVERIFY(credentials.put(ana.person, fingerprint, unbound::wrap(ana.key, ana.person, right), Others::Keep));
        QCOMPARE(place(entries::station()), db::KeyPlace::Here);
        QCOMPARE(place(there), db::KeyPlace::Unbound);
        QVERIFY(credentials.unlock(ana.person, fingerprint, right, there, Instant::fromMilliseconds(0)));
        QVERIFY(credentials.put(ana.person, fingerprint, *core::wrap(ana.key, ana.person, right, there, core::leastCost), Others::Keep));
        QCOMPARE(place(there), db::KeyPlace::Here);
        QCOMPARE(place(entries::station()), db::KeyPlace::Here);
        QCOMPARE(place(entries::station("third")), db::KeyPlace::Elsewhere);
        QCOMPARE(*credentials.stationsOf(ana.person, fingerprint), 2);
        QVERIFY(credentials.put(ana.person, fingerprint, *core::wrap(ana.key, ana.person, right, there, core::leastCost), Others::Remove));
        QCOMPARE(place(entries::station()), db::KeyPlace::Elsewhere);
    }

    /// Columns: the code typed, the PIN, when (in seconds; the transfer is open until 100), and what comes of it.
    void aTransfer_data()
    {
        QTest::addColumn<char>("code");
        QTest::addColumn<QString>("secret");
        QTest::addColumn<qint64>("second");
        QTest::addColumn<int>("outcome"); // an ErrorCode, or -1
        QTest::addColumn<int>("triesCounted");
        const int good = -1;
        QTest::newRow("code and PIN") << 'c' << right << qint64(50) << good << 0;
        QTest::newRow("in its last second") << 'c' << right << qint64(100) << good << 0;
        QTest::newRow("a second too late") << 'c' << right << qint64(101) << static_cast<int>(ErrorCode::NotFound) << 0;
        QTest::newRow("another code") << 'd' << right << qint64(50) << static_cast<int>(ErrorCode::NotFound) << 0;
        QTest::newRow("another PIN") << 'c' << wrong << qint64(50) << static_cast<int>(ErrorCode::WrongSecret) << 1;
    }
    void aTransfer()
    {
        QFETCH(char, code);
        QFETCH(QString, secret);
        QFETCH(qint64, second);
        QFETCH(int, outcome);
        QFETCH(int, triesCounted);
        Sitting sitting;
        const auto &ana = sitting.ana();
        auto &credentials = sitting.store().credentials();
        const auto fingerprint = ana.key.publicKey().fingerprint();
        const Instant until = Instant::fromMilliseconds(100'000);
        const auto key = *core::SecondKey::ofTransfer(QByteArray(20, 'c'), until);
        QVERIFY(credentials.offer({key.id(), ana.person, fingerprint, until, *core::wrap(ana.key, ana.person, right, key, core::leastCost)}));
        sitting.restart();
        auto &again = sitting.store().credentials();
        const auto carried = again.take(QByteArray(20, code), secret, Instant::fromMilliseconds(second * 1000));
        QCOMPARE(carried ? -1 : static_cast<int>(carried.error().code), outcome);
        QCOMPARE(again.tries(ana.person, fingerprint)->wrongInARow, triesCounted);
        if (!carried)
            return;
        // Once: what was taken is kept for the new station and the transfer is gone, for another program that opened it as well.
        const auto there = entries::station("there");
        const auto wrapped = *core::wrap(carried->key, ana.person, right, there, core::leastCost);
        QVERIFY(again.settle(*carried, wrapped));
        QCOMPARE(again.settle(*carried, wrapped).error().code, ErrorCode::NotFound);
        QCOMPARE(again.take(QByteArray(20, code), secret, Instant::fromMilliseconds(second * 1000)).error().code, ErrorCode::NotFound);
        QCOMPARE(again.unlock(ana.person, fingerprint, right, there, Instant::fromMilliseconds(0))->publicKey(), ana.key.publicKey());
        QVERIFY(again.unlock(ana.person, fingerprint, right, entries::station(), Instant::fromMilliseconds(0)));
    }

    /// Whoever puts off the stored moment has a transfer that no code opens.
    void aTransferThatWasPutOff()
    {
        Sitting sitting;
        const auto &ana = sitting.ana();
        const Instant until = Instant::fromMilliseconds(100'000);
        const auto key = *core::SecondKey::ofTransfer(QByteArray(20, 'c'), until);
        QVERIFY(sitting.store().credentials().offer({key.id(), ana.person, ana.key.publicKey().fingerprint(), until, *core::wrap(ana.key, ana.person, right, key, core::leastCost)}));
        QCOMPARE(files::rawSql(sitting.path(), "UPDATE transfers SET until = 200000"), QString());
        QCOMPARE(sitting.store().credentials().take(QByteArray(20, 'c'), right, Instant::fromMilliseconds(150'000)).error().code, ErrorCode::NotFound);
        QCOMPARE(sitting.store().credentials().take(QByteArray(20, 'c'), right, Instant::fromMilliseconds(50'000)).error().code, ErrorCode::NotFound);
    }

    void lateTransfersAreRemoved()
    {
        Sitting sitting;
        const auto &ana = sitting.ana();
        for (const qint64 until : {100'000, 200'000}) {
            const auto key = *core::SecondKey::ofTransfer(QByteArray(20, 'c'), Instant::fromMilliseconds(until));
            QVERIFY(sitting.store().credentials().offer({key.id(), ana.person, ana.key.publicKey().fingerprint(), Instant::fromMilliseconds(until),
                                                         *core::wrap(ana.key, ana.person, right, key, core::leastCost)}));
        }
        QCOMPARE(*sitting.store().credentials().removeLate(Instant::fromMilliseconds(100'000)), 0);
        QCOMPARE(*sitting.store().credentials().removeLate(Instant::fromMilliseconds(100'001)), 1);
        QVERIFY(sitting.store().credentials().take(QByteArray(20, 'c'), right, Instant::fromMilliseconds(150'000)));
    }

    void aDamagedRowCostsNoTry()
    {
        Sitting sitting;
        QCOMPARE(files::rawSql(sitting.path(), "UPDATE credentials SET salt = x'00'"), QString());
        for (int i = 0; i < 4; ++i)
            QCOMPARE(sitting.unlock(0, right).error().code, ErrorCode::Damaged);
        QCOMPARE(*sitting.waitLeft(0), 0);
    }
};

QTEST_GUILESS_MAIN(TestCredentials)
#include "tst_credentials.moc"
