// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/loose_ends.hpp"
#include "core/reports/left_in_words.hpp"
#include "core/reports/progress.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

/// Three counts of what is left, which differ and read as differently.
class TestLeftInWords : public QObject {
    Q_OBJECT

private slots:
    void looseEnds_data();
    void looseEnds();
    void countsOfOneJob();
    void unfinished_data();
    void unfinished();
};

void TestLeftInWords::looseEnds_data()
{
    QTest::addColumn<int>("count");
    QTest::addColumn<QString>("words");
    QTest::addRow("none") << 0 << u"Nothing is loose"_s;
    QTest::addRow("one") << 1 << u"1 loose end"_s;
    QTest::addRow("two") << 2 << u"2 loose ends"_s;
}

void TestLeftInWords::looseEnds()
{
    QFETCH(int, count);
    QTEST(core::looseEndsInWords(count), "words");
}

/// Two are undone, one is inspected, one undisturbed; the others nobody touched.
void TestLeftInWords::countsOfOneJob()
{
    const Story told(u"Ana disconnects K1; Ben reconnects K1; Cho accepts K1; Ana disconnects C1; Ana disconnects D1; Ben finds-undisturbed B1"_s);
    QCOMPARE(told.refusedBy() + told.refusedSentence(), QString());
    const auto all = static_cast<qsizetype>(told.job().items.size());
    const core::ReleaseCounts counts = core::releaseCounts(told.job());
    QCOMPARE(core::unfinishedInWords(counts), u"%1 interfaces not finished: 2 undone and not inspected, %2 not undone"_s.arg(all - 2).arg(all - 4));
    // The line of progress counts those that are undone, in the same words.
    const auto progress = core::progressOf(told.job(), told.reg());
    QCOMPARE(progress->total.steps.back().undone, counts.undone);
    QCOMPARE(core::undoneInWords(counts.undone), u"2 interfaces undone and not inspected"_s);
    // Each interface that is not finished has a loose end, and no other interface has.
    QStringList loose;
    for (const core::LooseEnd &end : core::looseEnds(told.job(), told.reg()))
        loose << end.subject;
    for (const core::InterfaceState &item : told.job().items) {
        const QString id = item.listed.id.text();
        QVERIFY2(loose.contains(id) != (id == u"K1" || id == u"B1"), qPrintable(id));
    }
}

void TestLeftInWords::unfinished_data()
{
    QTest::addColumn<int>("undone");
    QTest::addColumn<int>("untouched");
    QTest::addColumn<QString>("words");
    QTest::addRow("none") << 0 << 0 << u"Every interface is finished"_s;
    QTest::addRow("one") << 1 << 0 << u"1 interface not finished: 1 undone and not inspected, 0 not undone"_s;
    QTest::addRow("one of each") << 1 << 1 << u"2 interfaces not finished: 1 undone and not inspected, 1 not undone"_s;
}

void TestLeftInWords::unfinished()
{
    QFETCH(int, undone);
    QFETCH(int, untouched);
    core::ReleaseCounts counts;
    counts.open = undone + untouched;
    counts.undone = undone;
    QTEST(core::unfinishedInWords(counts), "words");
}

QTEST_APPLESS_MAIN(TestLeftInWords)
#include "tst_left_in_words.moc"
