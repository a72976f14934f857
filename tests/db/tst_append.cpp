// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QtTest>

#include "core/ledger/canonical.hpp"
#include "db/store.hpp"
#include "tests/db/support/files.hpp"
#include "tests/db/support/signed_entries.hpp"

using core::ErrorCode;
using core::Head;
using db::Access;
using db::Store;

namespace {

/// `register 1, job-a 3`
QString shownLedgers(Store &store)
{
    QStringList shown;
    const auto all = store.ledgers();
    for (const db::StoredLedger &ledger : *all)
        shown += QString("%1 %2%3").arg(ledger.uuid).arg(ledger.headSeq).arg(ledger.role == db::LedgerRole::Register ? "*" : "");
    return shown.join(", ");
}

std::unique_ptr<Store> newStore(const QString &path)
{
    auto store = Store::create(path);
    if (!store)
        qFatal("%s", qPrintable(store.error().message));
    return *std::move(store);
}

} // namespace

class TestAppend : public QObject {
    Q_OBJECT

private slots:
    void whatWasAppendedIsReadAsItWas()
    {
        const files::Folder folder;
        auto store = newStore(folder / "a.remate");
        const Head reg = entries::beginRegister(*store, 2);
        const auto job = entries::ledger("job-a");
        QCOMPARE(*store->head(job), Head{});
        QVERIFY(store->read(job)->empty());
        const auto made = entries::chain(3, {}, job, reg, entries::hand("Ana"));
        QVERIFY(store->append(made, {}));
        QCOMPARE(*store->head(job), made.back().head());
        const auto rows = *store->read(job);
        QCOMPARE(rows.size(), made.size());
        for (std::size_t i = 0; i < rows.size(); ++i) {
            QCOMPARE(rows[i].seq, made[i].said.seq);
            QCOMPARE(rows[i].bytes, made[i].bytes);
            QCOMPARE(rows[i].hash, made[i].hash.bytes());
            QCOMPARE(rows[i].signature, made[i].signature);
            QCOMPARE(*core::parseStatement(rows[i].bytes), made[i].said);
        }
        QCOMPARE(store->read(job, 2)->size(), 1u);
        QCOMPARE(store->read(job, 3)->size(), 0u);
        QCOMPARE(*store->registerLedger(), entries::ledger("register"));
        QCOMPARE(shownLedgers(*store), "register 2*, job-a 3");
    }

    void readingStopsWhenTold()
    {
        const files::Folder folder;
        auto store = newStore(folder / "a.remate");
        entries::beginRegister(*store, 5);
        QList<qint64> seen;
        const auto done = store->forEach(entries::ledger("register"), 1, [&](const db::StoredEntryView &entry) {
            seen += entry.seq;
            return entry.seq == 3 ? db::Walk::Stop : db::Walk::On;
        });
        QVERIFY(done);
        QCOMPARE(seen, (QList<qint64>{2, 3}));
    }

    void allOrNone_data()
    {
        QTest::addColumn<QString>("what");
        QTest::addColumn<int>("code");
        QTest::addColumn<QString>("ledgers");
        const int good = -1;
        const int moved = static_cast<int>(ErrorCode::HeadMoved);
        const int bad = static_cast<int>(ErrorCode::BadInput);
        QTest::addRow("follows the head") << "good" << good << "register 1*, job-a 5";
        QTest::addRow("head moved meanwhile") << "stale" << moved << "register 1*, job-a 2";
        QTest::addRow("register moved meanwhile") << "stale register" << moved << "register 1*, job-a 2";
        QTest::addRow("register moved before the last one") << "last stale register" << moved << "register 1*, job-a 2";
        QTest::addRow("head of another hash") << "other head" << moved << "register 1*, job-a 2";
        QTest::addRow("gap within") << "gap" << bad << "register 1*, job-a 2";
        QTest::addRow("chain broken within") << "broken" << bad << "register 1*, job-a 2";
        QTest::addRow("hash of other bytes") << "wrong hash" << bad << "register 1*, job-a 2";
        QTest::addRow("two ledgers at once") << "two ledgers" << bad << "register 1*, job-a 2";
        QTest::addRow("a second register") << "second register" << bad << "register 1*, job-a 2";
        QTest::addRow("nothing") << "nothing" << good << "register 1*, job-a 2";
    }

    void allOrNone()
    {
        QFETCH(QString, what);
        QFETCH(int, code);
        QFETCH(QString, ledgers);
        const files::Folder folder;
        auto store = newStore(folder / "a.remate");
        const Head reg = entries::beginRegister(*store);
        const auto job = entries::ledger("job-a");
        const auto ana = entries::hand("Ana");
        const auto begun = entries::chain(2, {}, job, reg, ana);
        QVERIFY(store->append(begun, {}));

        Head seen = begun.back().head();
        auto made = entries::chain(3, seen, job, reg, ana);
        if (what == "stale") {
            seen = begun.front().head();
            made = entries::chain(3, seen, job, reg, ana, {.subject = "other"});
        } else if (what == "stale register") {
            made = entries::chain(3, seen, job, Head{}, ana);
        } else if (what == "last stale register") {
            made.back() = entries::after(made[1].head(), job, Head{1, core::Digest::of("another")}, ana);
        } else if (what == "other head") {
            seen.hash = core::Digest::of("another");
            made = entries::chain(3, seen, job, reg, ana);
        } else if (what == "gap") {
            made.erase(made.begin() + 1);
        } else if (what == "broken") {
            made.back() = entries::after({made[1].said.seq, core::Digest::of("another")}, job, reg, ana);
        } else if (what == "wrong hash") {
            made.back().hash = core::Digest::of("another");
        } else if (what == "two ledgers") {
            made.back() = entries::after(made[1].head(), entries::ledger("job-b"), reg, ana);
        } else if (what == "second register") {
            seen = {};
            made = entries::chain(1, {}, entries::ledger("register-b"), {}, ana);
        } else if (what == "nothing") {
            made.clear();
        }
        const auto done = store->append(made, seen);
        QCOMPARE(done ? -1 : static_cast<int>(done.error().code), code);
        QCOMPARE(shownLedgers(*store), ledgers);
    }

    void anAuthorisationWithdrawnMeanwhileIsSeen()
    {
        const files::Folder folder;
        auto store = newStore(folder / "a.remate");
        const auto job = entries::ledger("job-a");
        const Head reg = entries::beginRegister(*store);
        const auto signedBefore = entries::after({}, job, reg, entries::hand("Ana"));
        const auto withdrawal = entries::after(reg, entries::ledger("register"), {}, entries::hand("Root"));
        QVERIFY(store->append({&withdrawal, 1}, reg));
        QCOMPARE(store->append({&signedBefore, 1}, {}).error().code, ErrorCode::HeadMoved);
        const auto signedAgain = entries::after({}, job, withdrawal.head(), entries::hand("Ana"));
        QVERIFY(store->append({&signedAgain, 1}, {}));
    }

    void entriesAreThereAfterClosing()
    {
        const files::Folder folder;
        const Head head = entries::beginRegister(*newStore(folder / "a.remate"), 30);
        auto store = *Store::open(folder / "a.remate", Access::ReadOnly);
        QCOMPARE(*store->head(entries::ledger("register")), head);
    }

    void changesAreNoticed()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        auto here = newStore(path);
        entries::beginRegister(*here);
        auto there = *Store::open(path, Access::ReadWrite);
        const auto hereBefore = *here->changeToken();
        const auto thereBefore = *there->changeToken();
        QCOMPARE(*here->changedSince(hereBefore), false);
        QCOMPARE(*there->changedSince(thereBefore), false);
        QVERIFY(entries::appendOne(*there, entries::ledger("job-a"), entries::hand("Ana")));
        QCOMPARE(*here->changedSince(hereBefore), true);
        QCOMPARE(*there->changedSince(thereBefore), true);
        const auto hereAfter = *here->changeToken();
        QCOMPARE(*here->changedSince(hereAfter), false);
        QVERIFY(!here->append(entries::chain(1, {9, {}}, entries::ledger("job-a"), Head{}, entries::hand("Ana")), {9, {}}));
        QCOMPARE(*here->changedSince(hereAfter), false);
    }

    void sideFileIsWrittenBack()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        auto store = newStore(path);
        const Head reg = entries::beginRegister(*store);
        const auto job = entries::ledger("job-a");
        Head head;
        for (int round = 0; round < 24; ++round) {
            const auto made = entries::chain(500, head, job, reg, entries::hand("Ana"));
            QVERIFY(store->append(made, head));
            head = made.back().head();
        }
        // 12000 entries are about 7 MB; the side file begins anew every 4 MB.
        QVERIFY2(QFileInfo(path).size() > 3'000'000, qPrintable(QString::number(QFileInfo(path).size())));
        QVERIFY2(QFileInfo(path + "-wal").size() < 9'000'000, qPrintable(QString::number(QFileInfo(path + "-wal").size())));
        QVERIFY(store->checkpoint());
        QVERIFY(!store->checkpointTrouble());
        QVERIFY(store->close());
        QVERIFY(!QFile::exists(path + "-wal"));
    }
};

QTEST_GUILESS_MAIN(TestAppend)
#include "tst_append.moc"
