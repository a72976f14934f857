// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/reports/progress.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

namespace {

constexpr qint64 minute = 60'000;

/// `Ana disconnects`, … of so many further clamps, each accepted so many minutes after ten o'clock.
QString clampsAccepted(const QList<int> &minutes)
{
    QString told;
    for (qsizetype i = 0; i < minutes.size(); ++i)
        told += u"Ana lists X%1; Ana disconnects X%1; Ben reconnects X%1; "_s.arg(i);
    for (qsizetype i = 0; i < minutes.size(); ++i)
        told += u"Cho accepts X%1 at=%2; "_s.arg(i).arg(core::Instant::fromMilliseconds(core::Instant::parse(u"2026-03-02T10:00:00Z")->milliseconds() + minutes[i] * minute).text());
    return told;
}

} // namespace

/// How a job went on, and what its own pace says about the rest.
class TestProgress : public QObject {
    Q_OBJECT

    /// `left: +0 0, +1 1`: entries counted from the first one of the story.
    static QString inWords(const core::ProgressLine &line, qint64 listed)
    {
        QStringList steps;
        for (const core::ProgressStep &step : line.steps)
            steps << u"+%1 %2"_s.arg(std::max(step.seq - listed, qint64{0})).arg(step.undone);
        return line.name + u": "_s + steps.join(u", "_s);
    }

private slots:
    void stepsOfAStory_data();
    void stepsOfAStory();
    void stepsAgreeWithTheStateWhateverHappened_data();
    void stepsAgreeWithTheStateWhateverHappened();
    void nothingOfNoJob();
    void lineInWords();
    void pace_data();
    void pace();
    void paceSaysWhatItIs();
    void durations_data();
    void durations();
};

void TestProgress::stepsOfAStory_data()
{
    QTest::addColumn<QString>("story");
    QTest::addColumn<QStringList>("lines");
    const qint64 listed = static_cast<qint64>(Story().job().said.size());

    QTest::addRow("nothing undone") << u"Ben issues R-14"_s << QStringList{u": +0 0"_s};
    QTest::addRow("undone, inspected, undone elsewhere")
        << u"Ana disconnects D1; Ana disconnects K1; Ben reconnects K1; Cho accepts K1; Dee disconnects B1"_s
        << QStringList{u": +0 0, +1 1, +2 2, +4 1, +5 2"_s, u"left: +0 0, +1 1, +5 2"_s, u"right: +0 0, +2 1, +4 0"_s, u"Ana: +0 0, +1 1, +2 2, +4 1"_s, u"Dee: +0 0, +5 1"_s};
    QTest::addRow("disturbed after its inspection")
        << u"Ana disconnects K1; Ben reconnects K1; Cho accepts K1; Dee disturbs K1"_s
        << QStringList{u": +0 0, +1 1, +3 0, +4 1"_s, u"right: +0 0, +1 1, +3 0, +4 1"_s, u"Ana: +0 0, +1 1, +3 0, +4 1"_s};
    QTest::addRow("struck")
        << u"Ana disconnects D1; Ana strikes entry=%1"_s.arg(listed + 1)
        << QStringList{u": +0 0, +1 1, +2 0"_s, u"left: +0 0, +1 1, +2 0"_s, u"Ana: +0 0, +1 1, +2 0"_s};
    QTest::addRow("one inspection of two") // a mount asks for two
        << u"Ana disconnects K1; Ben reconnects K1; Ana lists X9 inspections=2; Ana disconnects X9; Ben reconnects X9; Cho accepts X9"_s
        << QStringList{u": +0 0, +1 1, +4 2"_s, u"left: +0 0, +4 1"_s, u"right: +0 0, +1 1"_s, u"Ana: +0 0, +1 1, +4 2"_s};
}

void TestProgress::stepsOfAStory()
{
    QFETCH(QString, story);
    QFETCH(QStringList, lines);
    const Story told(story);
    QCOMPARE(told.refusedBy() + told.refusedSentence(), QString());
    const auto progress = core::progressOf(told.job(), told.reg());
    QVERIFY(progress);
    const qint64 listed = static_cast<qint64>(Story().job().said.size());
    QStringList shown{inWords(progress->total, listed)};
    for (const auto *some : {&progress->zones, &progress->persons}) {
        for (const core::ProgressLine &line : *some)
            shown << inWords(line, listed);
    }
    QCOMPARE(shown, lines);
    QCOMPARE(progress->from, told.job().said.front().at);
    QCOMPARE(progress->until, told.job().said.back().at);
}

void TestProgress::stepsAgreeWithTheStateWhateverHappened_data()
{
    QTest::addColumn<QString>("story");
    QTest::addRow("one of no list struck") << u"Ana disconnects D1; Ben logs X1; Cho strikes entry=%1; Ana disconnects K1"_s.arg(Story().job().said.size() + 2);
    QTest::addRow("sent to a linked job") << u"Ana links ledger=shop; shop: Lee links ledger=here; Ana disconnects C1; Ana sends C1; Ana disconnects K1"_s;
    QTest::addRow("many") << clampsAccepted({0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30}) + u"Ana disconnects X3; Dee disturbs X30"_s;
}

/// The last step counts what is loose in the folded job, item by item.
void TestProgress::stepsAgreeWithTheStateWhateverHappened()
{
    QFETCH(QString, story);
    const Story told(story);
    QCOMPARE(told.refusedBy() + told.refusedSentence(), QString());
    const auto progress = core::progressOf(told.job(), told.reg());
    qint64 loose = 0;
    for (const core::InterfaceState &item : told.job().items)
        loose += item.removal && !item.sent && static_cast<qint64>(item.acceptances.size()) < item.listed.inspections ? 1 : 0;
    QVERIFY(loose > 0);
    QCOMPARE(progress->total.steps.back().undone, loose);
    qint64 ofZones = 0;
    for (const core::ProgressLine &line : progress->zones)
        ofZones += line.steps.back().undone;
    QCOMPARE(ofZones, loose);
}

void TestProgress::nothingOfNoJob() { QVERIFY(!core::progressOf({}, {})); }

void TestProgress::lineInWords()
{
    const Story told(u"Ana disconnects D1; Ana disconnects K1; Ben reconnects K1; Cho accepts K1"_s);
    const auto progress = core::progressOf(told.job(), told.reg());
    QCOMPARE(core::progressInWords(progress->total), u"The whole job: at most 2 interfaces undone and not inspected, first at entry %1 (2026-03-02 06:02:00 UTC); now 1."_s.arg(Story().job().said.size() + 2));
    QCOMPARE(core::progressInWords(core::progressOf(Story().job(), told.reg())->total), u"The whole job: no interface undone so far."_s);
}

/// Twelve clamps of a job with ten other interfaces, all of these still open. Six completions at a time are timed, for ten that are open.
/// The numbers are worked out by hand from the rule in progress.hpp and the quartiles of NIST/SEMATECH e-Handbook, 7.2.6.2.
void TestProgress::pace_data()
{
    QTest::addColumn<QList<int>>("minutes");
    QTest::addColumn<QString>("after");
    QTest::addColumn<int>("open");
    QTest::addColumn<int>("stretch"); // 0: no estimate
    QTest::addColumn<QList<double>>("quartiles"); // in minutes

    QTest::addRow("too few by one") << QList<int>{0, 10, 20, 30, 40, 50, 60, 70, 80} << QString() << 10 << 0 << QList<double>{0, 0, 0};
    // Five at a time take 50 min; ten are open.
    QTest::addRow("just enough") << QList<int>{0, 10, 20, 30, 40, 50, 60, 70, 80, 90} << QString() << 10 << 5 << QList<double>{100, 100, 100};
    // Six at a time take 60, 70, 80, 90, 100 and 110 min, so ten take 100, 116 2/3, 133 1/3, 150, 166 2/3 and 183 1/3.
    const QList<int> slower{0, 10, 20, 30, 40, 50, 60, 80, 100, 120, 140, 160};
    QTest::addRow("becoming slower") << slower << QString() << 10 << 6 << QList<double>{112.5, 850.0 / 6, 1025.0 / 6};
    // 119 min without any entry are waited for, and 120 are no work: six at a time take 169, or 50.
    QTest::addRow("a long wait") << QList<int>{0, 10, 20, 30, 40, 50, 169, 179, 189, 199, 209, 219} << QString() << 10 << 6 << QList<double>{1690.0 / 6, 1690.0 / 6, 1690.0 / 6};
    QTest::addRow("a pause") << QList<int>{0, 10, 20, 30, 40, 50, 170, 180, 190, 200, 210, 220} << QString() << 10 << 6 << QList<double>{500.0 / 6, 500.0 / 6, 500.0 / 6};
    // One that was opened again is not completed, and has to be done again: eleven are completed, eleven are open, five at a time take 50 min.
    QTest::addRow("one opened again") << QList<int>{0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110} << u"Dee disturbs X11"_s << 11 << 5 << QList<double>{110, 110, 110};
    // What nobody has to undo is not open.
    QTest::addRow("one let alone") << QList<int>{0, 10, 20, 30, 40, 50, 60, 70, 80, 90} << u"Ben finds-undisturbed K1"_s << 9 << 5 << QList<double>{90, 90, 90};
}

void TestProgress::pace()
{
    QFETCH(QList<int>, minutes);
    QFETCH(QString, after);
    QFETCH(int, open);
    QFETCH(int, stretch);
    QFETCH(QList<double>, quartiles);
    const Story told(clampsAccepted(minutes) + after);
    QCOMPARE(told.refusedBy() + told.refusedSentence(), QString());
    const core::Pace pace = core::paceOf(told.job());
    QCOMPARE(pace.open, open);
    QCOMPARE(pace.stretch, stretch);
    QCOMPARE(pace.isKnown(), stretch > 0);
    // To the millisecond: each is rounded once for the stretch and once for the quartile.
    QVERIFY2(std::abs(static_cast<double>(pace.lower) - quartiles[0] * minute) < 2, qPrintable(QString::number(pace.lower)));
    QVERIFY2(std::abs(static_cast<double>(pace.median) - quartiles[1] * minute) < 2, qPrintable(QString::number(pace.median)));
    QVERIFY2(std::abs(static_cast<double>(pace.upper) - quartiles[2] * minute) < 2, qPrintable(QString::number(pace.upper)));
}

void TestProgress::paceSaysWhatItIs()
{
    const QString few = core::paceInWords({.completed = 9, .open = 10, .undone = 8});
    QVERIFY2(few.startsWith(u"10 interfaces not finished: 8 undone and not inspected, 2 not undone. Too little done to say"_s) && few.contains(u"9 inspected so far, and an estimate needs 10"_s), qPrintable(few));
    const QString known = core::paceInWords({12, 10, 10, 6, 405'000 * 10, 510'000 * 10, 615'000 * 10});
    for (const QString &words : {u"About 1 h 25 min of work left"_s, u"between 1 h 8 min and 1 h 43 min"_s, u"own pace of 12 inspected"_s, u"counts no pauses"_s, u"nothing else"_s})
        QVERIFY2(known.contains(words), qPrintable(known));
    QCOMPARE(core::paceInWords({.completed = 20, .open = 0}), u"Every interface is finished."_s);
}

void TestProgress::durations_data()
{
    QTest::addColumn<qint64>("milliseconds");
    QTest::addColumn<QString>("words");
    QTest::addRow("half a minute") << qint64{30'000} << u"1 min"_s;
    QTest::addRow("less") << qint64{29'999} << u"0 min"_s;
    QTest::addRow("nearly an hour") << 59 * minute + 29'999 << u"59 min"_s;
    QTest::addRow("an hour") << 59 * minute + 30'000 << u"1 h 0 min"_s;
    QTest::addRow("days") << 50 * 60 * minute << u"50 h 0 min"_s;
}

void TestProgress::durations()
{
    QFETCH(qint64, milliseconds);
    QFETCH(QString, words);
    QCOMPARE(core::durationInWords(milliseconds), words);
}

QTEST_GUILESS_MAIN(TestProgress)
#include "tst_progress.moc"
