// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QtTest>

#include "core/ledger/canonical.hpp"
#include "db/store.hpp"
#include "tests/db/support/files.hpp"
#include "tests/db/support/signed_entries.hpp"

using core::json::Object;
using db::Access;
using db::Store;

namespace {

/// Two jobs: each has Ana torquing with a wrench, Ben helping now and then, and a seal from a batch. The entries of each are a
/// second apart, from the same moment on.
void makeJobs(Store &store)
{
    entries::beginRegister(store);
    const auto torque = [](const QString &tool) {
        return entries::Act{.kind = "torque.applied", .body = Object{{"tool", tool}, {"value", QString("12.5")}}};
    };
    const auto helped = entries::Act{.kind = "interface.reconnected",
                                     .body = Object{{"seal_part", QString("S-12")},
                                                    {"seal_batch", QString("B7")},
                                                    {"helpers", core::json::arrayOf({"Ben", "Cho"})}}};
    const auto ana = entries::hand("Ana");
    const bool isMade = entries::appendOne(store, entries::ledger("job-b"), ana, torque("TW-1"))
                        && entries::appendOne(store, entries::ledger("job-a"), ana, torque("TW-2"))
                        && entries::appendOne(store, entries::ledger("job-b"), ana, helped)
                        && entries::appendOne(store, entries::ledger("job-b"), entries::hand("Ben"), torque("TW-1"))
                        && entries::appendOne(store, entries::ledger("job-a"), ana, torque("TW-1"));
    if (!isMade)
        qFatal("no jobs");
}

QString shown(const std::vector<db::Use> &uses)
{
    QStringList all;
    for (const db::Use &use : uses)
        all += QString("%1:%2").arg(use.ledger.text()).arg(use.seq);
    return all.join(' ');
}

QString usesOf(Store &store, const db::Wanted &wanted)
{
    const auto found = store.whereUsed().find(wanted, 100);
    return found ? shown(*found) : found.error().message;
}

/// The same with the entries, each of them looked at.
QString visited(Store &store, const db::Wanted &wanted)
{
    QStringList all;
    const auto done = store.whereUsed().forEach(wanted, [&](const core::LedgerId &ledger, const db::StoredEntryView &entry) {
        const auto said = core::parseStatement(entry.bytes);
        const bool isIt = said && said->ledger == ledger && said->seq == entry.seq && core::Digest::of(entry.bytes).bytes() == entry.hash;
        all += isIt ? QString("%1:%2").arg(ledger.text()).arg(entry.seq) : QString("another entry");
        return db::Walk::On;
    });
    return done ? all.join(' ') : done.error().message;
}

/// Milliseconds after the moment at which the first entry of each job was made.
db::Between between(qint64 from, qint64 until)
{
    const qint64 first = entries::firstMoment().milliseconds();
    return {core::Instant::fromMilliseconds(first + from), core::Instant::fromMilliseconds(first + until)};
}

/// A tool that torqued and measured, a second apart, at 0, 1, 2 … seconds.
void torqueAndMeasure(Store &store)
{
    entries::beginRegister(store);
    const auto ana = entries::hand("Ana");
    for (const char *kind : {"torque.applied", "bonding.measured", "torque.applied", "torque.applied", "bonding.measured"})
        if (!entries::appendOne(store, entries::ledger("job"), ana, {.kind = QString::fromLatin1(kind), .body = Object{{"tool", QString("M-1")}}}))
            qFatal("no entry");
}

} // namespace

class TestWhereUsed : public QObject {
    Q_OBJECT

private slots:
    void whereSomethingWasUsed_data()
    {
        QTest::addColumn<QString>("sort");
        QTest::addColumn<QString>("value");
        QTest::addColumn<QString>("uses");
        QTest::addRow("tool in two jobs, in the order of time") << "tool" << "TW-1" << "job-b:1 job-a:2 job-b:3";
        QTest::addRow("tool in one job") << "tool" << "TW-2" << "job-a:1";
        QTest::addRow("person who signed or helped") << "person" << "Ben" << "job-b:2 job-b:3";
        QTest::addRow("person who helped alone") << "person" << "Cho" << "job-b:2";
        QTest::addRow("batch") << "batch" << "B7" << "job-b:2";
        QTest::addRow("part") << "part" << "S-12" << "job-b:2";
        QTest::addRow("at one moment, in the order in which the jobs were begun") << "person" << "Ana" << "job-b:1 job-a:1 job-b:2 job-a:2";
        QTest::addRow("the register as well") << "person" << "Root" << "register:1";
        QTest::addRow("unknown tool") << "tool" << "TW-3" << "";
        QTest::addRow("same text of another sort") << "serial" << "TW-1" << "";
    }

    void whereSomethingWasUsed()
    {
        QFETCH(QString, sort);
        QFETCH(QString, value);
        QFETCH(QString, uses);
        const files::Folder folder;
        auto store = *Store::create(folder / "a.remate");
        makeJobs(*store);
        QCOMPARE(usesOf(*store, {sort, value}), uses);
        QCOMPARE(visited(*store, {sort, value}), uses);
    }

    void theVisitorMayStop()
    {
        const files::Folder folder;
        auto store = *Store::create(folder / "a.remate");
        makeJobs(*store);
        int seen = 0;
        QVERIFY(store->whereUsed().forEach({"tool", "TW-1"}, [&](const core::LedgerId &, const db::StoredEntryView &) {
            return ++seen == 2 ? db::Walk::Stop : db::Walk::On;
        }));
        QCOMPARE(seen, 2);
    }

    void betweenTwoMoments_data()
    {
        QTest::addColumn<qint64>("from");
        QTest::addColumn<qint64>("until");
        QTest::addColumn<QString>("uses");
        // TW-1 torqued at 0 (job-b:1), 1000 (job-a:2) and 2000 (job-b:3).
        QTest::addRow("all of it") << qint64{0} << qint64{2000} << "job-b:1 job-a:2 job-b:3";
        QTest::addRow("begins at the first") << qint64{0} << qint64{1500} << "job-b:1 job-a:2";
        QTest::addRow("begins a millisecond after the first") << qint64{1} << qint64{1500} << "job-a:2";
        QTest::addRow("ends at the last") << qint64{500} << qint64{2000} << "job-a:2 job-b:3";
        QTest::addRow("ends a millisecond before the last") << qint64{500} << qint64{1999} << "job-a:2";
        QTest::addRow("a single millisecond") << qint64{1000} << qint64{1000} << "job-a:2";
        QTest::addRow("between two uses") << qint64{1001} << qint64{1999} << "";
        QTest::addRow("ends before it begins") << qint64{2000} << qint64{0} << "";
        QTest::addRow("before everything") << qint64{-5000} << qint64{-1} << "";
        QTest::addRow("after everything") << qint64{2001} << qint64{9000} << "";
    }

    void betweenTwoMoments()
    {
        QFETCH(qint64, from);
        QFETCH(qint64, until);
        QFETCH(QString, uses);
        const files::Folder folder;
        const QString path = folder / "a.remate";
        const db::Wanted wanted{"tool", "TW-1", between(from, until)};
        {
            auto store = *Store::create(path);
            makeJobs(*store);
            QCOMPARE(usesOf(*store, wanted), uses);
            QCOMPARE(visited(*store, wanted), uses);
        }
        QCOMPARE(files::rawSql(path, "DELETE FROM uses; UPDATE meta SET value = 0 WHERE name = 'where_used.version'"), QString());
        auto store = *Store::open(path, Access::ReadWrite);
        QCOMPARE(usesOf(*store, wanted), uses);
        QCOMPARE(visited(*store, wanted), uses);
    }

    void ofOneKind_data()
    {
        QTest::addColumn<QString>("kind");
        QTest::addColumn<qint64>("until");
        QTest::addColumn<QString>("uses");
        QTest::addRow("one kind") << "torque.applied" << qint64{9000} << "job:1 job:3 job:4";
        QTest::addRow("another kind") << "bonding.measured" << qint64{9000} << "job:2 job:5";
        QTest::addRow("one kind, for a time") << "torque.applied" << qint64{2000} << "job:1 job:3";
        QTest::addRow("a kind that nobody used") << "leak.checked" << qint64{9000} << "";
        QTest::addRow("the name of a tool is no kind") << "M-1" << qint64{9000} << "";
    }

    void ofOneKind()
    {
        QFETCH(QString, kind);
        QFETCH(qint64, until);
        QFETCH(QString, uses);
        const files::Folder folder;
        auto store = *Store::create(folder / "a.remate");
        torqueAndMeasure(*store);
        const db::Wanted wanted{"tool", "M-1", between(0, until), kind};
        QCOMPARE(usesOf(*store, wanted), uses);
        QCOMPARE(visited(*store, wanted), uses);
    }

    // The index remembers under which row number an entry lay. SQLite may number the rows of `entries` anew.
    void entriesThatLieElsewhereNowAreFoundAllTheSame()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        {
            auto store = *Store::create(path);
            makeJobs(*store);
        }
        QCOMPARE(files::rawSql(path, "UPDATE uses SET entry = CASE seq WHEN 1 THEN 1 ELSE 1000 END"), QString());
        auto store = *Store::open(path, Access::ReadWrite);
        QCOMPARE(visited(*store, {"tool", "TW-1"}), "job-b:1 job-a:2 job-b:3");
        QCOMPARE(visited(*store, {"tool", "TW-1", between(1000, 1000)}), "job-a:2");
    }

    void pages_data()
    {
        QTest::addColumn<qsizetype>("limit");
        QTest::addColumn<qint64>("until");
        QTest::addColumn<QStringList>("expected");
        QTest::addRow("of two") << qsizetype{2} << qint64{9000} << QStringList{"job-b:1 job-a:1", "job-b:2 job-a:2"};
        QTest::addRow("that end within a moment") << qsizetype{3} << qint64{9000} << QStringList{"job-b:1 job-a:1 job-b:2", "job-a:2"};
        QTest::addRow("for a time") << qsizetype{2} << qint64{999} << QStringList{"job-b:1 job-a:1"};
        QTest::addRow("for a time, within a moment") << qsizetype{1} << qint64{1000} << QStringList{"job-b:1", "job-a:1", "job-b:2", "job-a:2"};
    }

    void pages()
    {
        QFETCH(qsizetype, limit);
        QFETCH(qint64, until);
        QFETCH(QStringList, expected);
        const files::Folder folder;
        auto store = *Store::create(folder / "a.remate");
        makeJobs(*store);
        QStringList pages;
        std::optional<db::Use> last;
        for (;;) {
            const auto page = *store->whereUsed().find({"person", "Ana", between(0, until)}, limit, last);
            if (page.empty())
                break;
            pages += shown(page);
            last = page.back();
        }
        QCOMPARE(pages, expected);
    }

    void anotherVersionIsRebuilt()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        {
            auto store = *Store::create(path);
            makeJobs(*store);
        }
        QCOMPARE(files::rawSql(path, "DELETE FROM uses; UPDATE meta SET value = 0 WHERE name = 'where_used.version'"), QString());
        {
            auto reading = *Store::open(path, Access::ReadOnly);
            const auto found = reading->whereUsed().find({"tool", "TW-1"}, 100);
            QCOMPARE(found.error().code, core::ErrorCode::ReadOnly);
        }
        auto store = *Store::open(path, Access::ReadWrite);
        QCOMPARE(usesOf(*store, {"tool", "TW-1"}), "job-b:1 job-a:2 job-b:3");
        QCOMPARE(usesOf(*store, {"person", "Cho"}), "job-b:2");
    }

    void aDamagedEntryDoesNotStopTheRebuilding()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        {
            auto store = *Store::create(path);
            makeJobs(*store);
        }
        QCOMPARE(files::rawSql(path, "DROP TRIGGER entries_are_never_changed;"
                                     "UPDATE entries SET bytes = CAST('{' AS BLOB) WHERE ledger = 2 AND seq = 1;"
                                     "UPDATE meta SET value = 0 WHERE name = 'where_used.version'"),
                 QString());
        auto store = *Store::open(path, Access::ReadWrite);
        QCOMPARE(usesOf(*store, {"tool", "TW-1"}), "job-a:2 job-b:3");
    }

    void aRefusedEntryLeavesNoTrace()
    {
        const files::Folder folder;
        auto store = *Store::create(folder / "a.remate");
        const auto reg = entries::beginRegister(*store);
        auto made = entries::chain(2, {}, entries::ledger("job"), reg, entries::hand("Ana"),
                                   {.kind = "torque.applied", .body = Object{{"tool", QString("TW-9")}}});
        made[1].signature.clear(); // the second row does not fit its table
        QVERIFY(!store->append(made, {}));
        QCOMPARE(usesOf(*store, {"tool", "TW-9"}), "");
        QCOMPARE(*store->head(entries::ledger("job")), core::Head{});
        QCOMPARE(store->ledgers()->size(), 1u);
    }
};

QTEST_GUILESS_MAIN(TestWhereUsed)
#include "tst_where_used.moc"
