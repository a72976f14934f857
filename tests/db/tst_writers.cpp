// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QProcess>
#include <QtTest>

#include <atomic>
#include <thread>

#include <signal.h>

#include "core/ledger/canonical.hpp"
#include "db/store.hpp"
#include "tests/db/support/files.hpp"
#include "tests/db/support/signed_entries.hpp"

using db::Access;
using db::Store;
using namespace std::chrono_literals;

namespace {

using Writer = std::unique_ptr<QProcess>;

Writer start(const QStringList &arguments)
{
    auto process = std::make_unique<QProcess>();
    process->setProcessChannelMode(QProcess::ForwardedErrorChannel);
    process->start(QCoreApplication::applicationDirPath() + "/store_writer", arguments);
    return process;
}

/// Empty when every entry follows the one before and is what its digest says; else where it breaks.
QString chainFault(Store &store, const core::LedgerId &ledger)
{
    core::Head head;
    const auto rows = store.read(ledger);
    if (!rows)
        return rows.error().message;
    for (const db::StoredEntry &row : *rows) {
        const auto said = core::parseStatement(row.bytes);
        const auto hash = core::Digest::of(row.bytes);
        if (!said || said->seq != head.seq + 1 || row.seq != said->seq || said->prev != head.hash || hash.bytes() != row.hash)
            return QString("entry %1 does not follow").arg(row.seq);
        head = {said->seq, hash};
    }
    return {};
}

} // namespace

class TestWriters : public QObject {
    Q_OBJECT

private slots:
    void manyProgramsMakeOneUnbrokenChain_data()
    {
        QTest::addColumn<int>("programs");
        QTest::addColumn<int>("entriesEach");
        QTest::addColumn<bool>("oneJob");
        QTest::addRow("two on one job") << 2 << 500 << true;
        QTest::addRow("eight on one job") << 8 << 60 << true;
        QTest::addRow("eight on a job each") << 8 << 60 << false;
    }

    void manyProgramsMakeOneUnbrokenChain()
    {
        QFETCH(int, programs);
        QFETCH(int, entriesEach);
        QFETCH(bool, oneJob);
        const files::Folder folder;
        const QString path = folder / "a.remate";
        auto store = *Store::create(path);
        entries::beginRegister(*store);
        std::vector<Writer> writers;
        for (int i = 0; i < programs; ++i)
            writers.push_back(start({path, oneJob ? "job" : QString("job-%1").arg(i), QString("P%1").arg(i),
                                     QString::number(entriesEach)}));
        for (const Writer &writer : writers) {
            QVERIFY(writer->waitForFinished(120'000));
            QCOMPARE(writer->exitCode(), 0);
            const QList<QByteArray> told = writer->readAllStandardOutput().simplified().split(' ');
            QCOMPARE(told.value(0), QByteArray::number(entriesEach));
            QCOMPARE(told.value(3), "0"); // told that another program holds the store
        }
        qint64 found = 0;
        const auto ledgers = *store->ledgers();
        for (const db::StoredLedger &ledger : ledgers) {
            QCOMPARE(chainFault(*store, *ledger.id()), QString());
            found += ledger.role == db::LedgerRole::Job ? ledger.headSeq : 0;
        }
        QCOMPARE(found, qint64{programs} * entriesEach);
    }

    void aProgramThatWasKilledInItsTurnIsPassedOver()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        auto store = *Store::create(path);
        entries::beginRegister(*store);
        const Writer holder = start({path, "hold"});
        QVERIFY(holder->waitForReadyRead(30'000));
        QCOMPARE(holder->readAllStandardOutput(), "holding\n");
        holder->kill();
        QVERIFY(holder->waitForFinished());
        QElapsedTimer timer;
        timer.start();
        QVERIFY(entries::appendOne(*store, entries::ledger("job"), entries::hand("Ana")));
        QVERIFY2(timer.elapsed() < 1800, qPrintable(QString::number(timer.elapsed())));
    }

    void aProgramThatSleepsInItsTurnDoesNotStopTheOthers()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        entries::beginRegister(**Store::create(path));
        auto store = *Store::open(path, Access::ReadWrite, 400ms);
        const Writer holder = start({path, "hold"});
        QVERIFY(holder->waitForReadyRead(30'000));
        ::kill(static_cast<pid_t>(holder->processId()), SIGSTOP);
        QVERIFY(entries::appendOne(*store, entries::ledger("job"), entries::hand("Ana")));
        QVERIFY(entries::appendOne(*store, entries::ledger("job"), entries::hand("Ana")));
        holder->kill();
        QVERIFY(holder->waitForFinished());
        QCOMPARE(chainFault(*store, entries::ledger("job")), QString());
    }

    void aProgramThatSleepsInItsTurnIsWaitedForOnce()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        auto store = *Store::create(path);
        entries::beginRegister(*store);
        const Writer holder = start({path, "hold"});
        QVERIFY(holder->waitForReadyRead(30'000));
        ::kill(static_cast<pid_t>(holder->processId()), SIGSTOP);
        QElapsedTimer timer;
        timer.start();
        QVERIFY(entries::appendOne(*store, entries::ledger("job"), entries::hand("Ana")));
        QVERIFY2(timer.elapsed() >= 1900 && timer.elapsed() < 7000, qPrintable(QString::number(timer.elapsed())));
        timer.start();
        QVERIFY(entries::appendOne(*store, entries::ledger("job"), entries::hand("Ana")));
        QVERIFY2(timer.elapsed() < 1500, qPrintable(QString::number(timer.elapsed())));
        holder->kill();
        QVERIFY(holder->waitForFinished());
    }

    void aTurnIsWaitedFor()
    {
        const files::Folder folder;
        auto store = *Store::create(folder / "a.remate");
        auto other = *Store::open(folder / "a.remate", Access::ReadWrite);
        std::atomic_bool hasTurn = false;
        std::thread second;
        {
            const auto turn = store->takeTurn();
            second = std::thread([&] {
                const auto next = other->takeTurn();
                hasTurn = next.has_value();
            });
            QTest::qWait(300);
            if (hasTurn)
                second.join(); // before the check leaves the test
            QVERIFY(!hasTurn);
        }
        QElapsedTimer timer;
        timer.start();
        second.join();
        QVERIFY(hasTurn);
        QVERIFY2(timer.elapsed() < 1500, qPrintable(QString::number(timer.elapsed())));
    }

    void aTurnWithinATurnIsOneTurn()
    {
        const files::Folder folder;
        auto store = *Store::create(folder / "a.remate");
        entries::beginRegister(*store);
        auto other = *Store::open(folder / "a.remate", Access::ReadWrite);
        {
            const auto turn = store->takeTurn();
            QVERIFY(turn);
            const auto again = store->takeTurn();
            QVERIFY(again);
            QVERIFY(entries::appendOne(*store, entries::ledger("job"), entries::hand("Ana")));
        }
        QElapsedTimer timer;
        timer.start();
        QVERIFY(entries::appendOne(*other, entries::ledger("job"), entries::hand("Ben")));
        QVERIFY(timer.elapsed() < 1500); // the turn was given back: nobody had to be passed over
    }
};

QTEST_GUILESS_MAIN(TestWriters)
#include "tst_writers.moc"
