// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QtTest>

#include "db/store.hpp"
#include "tests/db/support/files.hpp"
#include "tests/db/support/signed_entries.hpp"

using core::Digest;
using core::JobSummary;
using db::Access;
using db::KeptSummary;
using db::Store;
using db::SummarySource;

namespace {

const KeptSummary kept{{entries::ledger("job"), Digest::of("job entry 9"), Digest::of("register entry 4")},
                       {.title = "Engine 2 change",
                        .workOrder = "WO-12 \u00e9",
                        .aircraft = "XX-ABC",
                        .unit = "Engine 2",
                        .isClosed = true,
                        .interfaces = 84,
                        .byStage = {1, 2, 3, 4, 74},
                        .looseEnds = 11,
                        .lastAtMilliseconds = 1'772'439'271'120},
                       {{entries::ledger("shop"), {7, Digest::of("shop entry 7")}}, {entries::ledger("not here"), {}}}};

} // namespace

class TestSummaries : public QObject {
    Q_OBJECT

private slots:
    void holdsForTheHeadsItWasMadeFrom_data()
    {
        QTest::addColumn<QString>("ledger");
        QTest::addColumn<QString>("job");
        QTest::addColumn<QString>("reg");
        QTest::addColumn<bool>("found");
        QTest::addRow("the same heads") << "job" << "job entry 9" << "register entry 4" << true;
        QTest::addRow("the job moved") << "job" << "job entry 10" << "register entry 4" << false;
        QTest::addRow("the register moved") << "job" << "job entry 9" << "register entry 5" << false;
        QTest::addRow("another job") << "job-b" << "job entry 9" << "register entry 4" << false;
    }

    void holdsForTheHeadsItWasMadeFrom()
    {
        QFETCH(QString, ledger);
        QFETCH(QString, job);
        QFETCH(QString, reg);
        QFETCH(bool, found);
        const files::Folder folder;
        {
            auto store = *Store::create(folder / "a.remate");
            QVERIFY(store->summaries().remember({&kept, 1}));
        }
        auto store = *Store::open(folder / "a.remate", Access::ReadOnly);
        const SummarySource source{entries::ledger(ledger), Digest::of(job.toUtf8()), Digest::of(reg.toUtf8())};
        const auto summary = *store->summaries().find(source);
        QCOMPARE(summary.has_value(), found);
        if (found) {
            QVERIFY(summary->summary == kept.summary);
            QCOMPARE(summary->linked, kept.linked);
        }
    }

    void aNewerOneTakesItsPlace()
    {
        const files::Folder folder;
        auto store = *Store::create(folder / "a.remate");
        QVERIFY(store->summaries().remember({&kept, 1}));
        KeptSummary newer = kept;
        newer.source.job = Digest::of("job entry 10");
        newer.summary.looseEnds = 10;
        QVERIFY(store->summaries().remember({&newer, 1}));
        QVERIFY(!*store->summaries().find(kept.source));
        QCOMPARE((*store->summaries().find(newer.source))->summary.looseEnds, 10);
    }

    void whatMakesItForgotten_data()
    {
        QTest::addColumn<QByteArray>("sql");
        QTest::addRow("another version") << QByteArray("UPDATE meta SET value = 0 WHERE name = 'summaries.version'");
        QTest::addRow("changed in the store")
            << QByteArray("UPDATE job_summaries SET summary = CAST(replace(CAST(summary AS TEXT), '\"loose_ends\":11', "
                          "'\"loose_ends\":0') AS BLOB)");
        QTest::addRow("another head of a linked job")
            << QByteArray("UPDATE job_summaries SET summary = CAST(replace(CAST(summary AS TEXT), '\"seq\":7', '\"seq\":8') AS BLOB)");
        QTest::addRow("moved to another register")
            << QByteArray("UPDATE job_summaries SET register_hash = job_hash, job_hash = register_hash");
    }

    void whatMakesItForgotten()
    {
        QFETCH(QByteArray, sql);
        const files::Folder folder;
        const QString path = folder / "a.remate";
        {
            auto store = *Store::create(path);
            QVERIFY(store->summaries().remember({&kept, 1}));
        }
        QCOMPARE(files::rawSql(path, sql), QString());
        const SummarySource swapped{kept.source.ledger, kept.source.reg, kept.source.job};
        for (const Access access : {Access::ReadOnly, Access::ReadWrite}) {
            auto store = *Store::open(path, access);
            QVERIFY(!*store->summaries().find(kept.source));
            QVERIFY(!*store->summaries().find(swapped));
            QVERIFY(store->summaries().remember({&kept, 1}));
            QCOMPARE((*store->summaries().find(kept.source)).has_value(), access == Access::ReadWrite);
        }
    }
};

QTEST_GUILESS_MAIN(TestSummaries)
#include "tst_summaries.moc"
