// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QtTest>

#include "db/store.hpp"
#include "tests/db/support/files.hpp"
#include "tests/db/support/signed_entries.hpp"

using core::json::Object;
using db::Access;
using db::Store;

namespace {

/// Two jobs: each has Ana torquing with a wrench, Ben helping now and then, and a seal from a batch.
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

QString usesOf(Store &store, const QString &sort, const QString &value)
{
    const auto found = store.whereUsed().find(sort, value, 100);
    return found ? shown(*found) : found.error().message;
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
        QTest::addRow("tool in two jobs, in the order of the ledgers") << "tool" << "TW-1" << "job-b:1 job-b:3 job-a:2";
        QTest::addRow("tool in one job") << "tool" << "TW-2" << "job-a:1";
        QTest::addRow("person who signed or helped") << "person" << "Ben" << "job-b:2 job-b:3";
        QTest::addRow("person who helped alone") << "person" << "Cho" << "job-b:2";
        QTest::addRow("batch") << "batch" << "B7" << "job-b:2";
        QTest::addRow("part") << "part" << "S-12" << "job-b:2";
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
        QCOMPARE(usesOf(*store, sort, value), uses);
        QStringList visited;
        QVERIFY(store->whereUsed().forEach(sort, value, [&](const core::LedgerId &ledger, const db::StoredEntryView &entry) {
            visited += QString("%1:%2").arg(ledger.text()).arg(entry.seq);
            return entry.bytes.contains(value.toUtf8()) ? db::Walk::On : db::Walk::Stop;
        }));
        QCOMPARE(visited.join(' '), uses);
    }

    void pages()
    {
        const files::Folder folder;
        auto store = *Store::create(folder / "a.remate");
        makeJobs(*store);
        QStringList pages;
        std::optional<db::Use> last;
        for (;;) {
            const auto page = *store->whereUsed().find("tool", "TW-1", 2, last);
            if (page.empty())
                break;
            pages += shown(page);
            last = page.back();
        }
        QCOMPARE(pages, (QStringList{"job-b:1 job-b:3", "job-a:2"}));
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
            const auto found = reading->whereUsed().find("tool", "TW-1", 100);
            QCOMPARE(found.error().code, core::ErrorCode::ReadOnly);
        }
        auto store = *Store::open(path, Access::ReadWrite);
        QCOMPARE(usesOf(*store, "tool", "TW-1"), "job-b:1 job-b:3 job-a:2");
        QCOMPARE(usesOf(*store, "person", "Cho"), "job-b:2");
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
        QCOMPARE(usesOf(*store, "tool", "TW-1"), "job-b:3 job-a:2");
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
        QCOMPARE(usesOf(*store, "tool", "TW-9"), "");
        QCOMPARE(*store->head(entries::ledger("job")), core::Head{});
        QCOMPARE(store->ledgers()->size(), 1u);
    }
};

QTEST_GUILESS_MAIN(TestWhereUsed)
#include "tst_where_used.moc"
