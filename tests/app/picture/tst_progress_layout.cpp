// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFontMetricsF>
#include <QTest>

#include <cmath>

#include "app/picture/progress_layout.hpp"

using namespace Qt::StringLiterals;

/// Where the steps of a job stand in its picture.
class TestProgressLayout : public QObject {
    Q_OBJECT

    static core::Instant after(qint64 minutes) { return core::Instant::fromMilliseconds(1'772'431'200'000 + minutes * 60'000); }
    /// Four hours: two loose after one hour, one of them inspected after three.
    static core::Progress fourHours()
    {
        return {{{}, {{1, after(0), 0}, {9, after(60), 2}, {12, after(180), 1}}}, {{u"left"_s, {{1, after(0), 0}, {9, after(60), 1}}}}, {}, after(0), after(240)};
    }

private slots:
    void stepsStandWhereTheyHappened()
    {
        const core::Progress progress = fourHours();
        const picture::ProgressLayout layout = picture::layProgress(progress, nullptr, QRectF(0, 0, 900, 400), QFont());
        QCOMPARE(layout.lines.size(), std::size_t(1));
        const QRectF plot = layout.plot;
        const auto at = [&](double hours, double loose) { return QPointF(plot.left() + plot.width() * hours / 4, plot.bottom() - plot.height() * loose / 2); };
        const QPolygonF wanted({at(0, 0), at(1, 0), at(1, 2), at(3, 2), at(3, 1), at(4, 1)});
        QCOMPARE(layout.lines[0].path.size(), wanted.size());
        for (qsizetype i = 0; i < wanted.size(); ++i)
            QVERIFY2(QLineF(layout.lines[0].path[i], wanted[i]).length() < 0.01, qPrintable(QString::number(i)));
        QVERIFY(layout.lines[0].isWhole);
    }

    void namesDoNotStandOnEachOther()
    {
        const core::Progress progress = fourHours();
        const picture::ProgressLayout layout = picture::layProgress(progress, &progress.zones.front(), QRectF(0, 0, 900, 400), QFont());
        QCOMPARE(layout.lines.size(), std::size_t(2));
        QCOMPARE(layout.lines[1].label.text, u"1 left"_s);
        QVERIFY(!layout.lines[0].label.rect.intersects(layout.lines[1].label.rect)); // both end at 1
        QVERIFY(!layout.lines[1].isWhole);
    }

    void everythingIsInThePicture_data()
    {
        QTest::addColumn<QSizeF>("size");
        QTest::newRow("wide") << QSizeF(1600, 500);
        QTest::newRow("small") << QSizeF(500, 260);
    }
    void everythingIsInThePicture()
    {
        QFETCH(QSizeF, size);
        core::Progress progress = fourHours();
        progress.zones.front().name = QString(80, u'W');
        const picture::ProgressLayout layout = picture::layProgress(progress, &progress.zones.front(), QRectF(QPointF(), size), QFont());
        const QRectF area = QRectF(QPointF(), size).adjusted(-1, -1, 1, 1);
        for (const picture::AxisText &text : layout.texts)
            QVERIFY2(area.contains(QFontMetricsF(layout.font).boundingRect(text.rect, static_cast<int>(text.alignment), text.text)), qPrintable(text.text));
        for (const picture::StepPath &line : layout.lines) {
            QVERIFY(area.contains(line.path.boundingRect()));
            QVERIFY2(area.contains(line.label.rect), qPrintable(line.label.text));
        }
        QVERIFY(layout.plot.width() > size.width() / 3);
    }

    void oneMomentIsNoDivisionByNought()
    {
        const core::Progress progress{{{}, {{1, after(0), 0}}}, {}, {}, after(0), after(0)};
        const picture::ProgressLayout layout = picture::layProgress(progress, nullptr, QRectF(0, 0, 600, 300), QFont());
        for (const QPointF &point : layout.lines[0].path)
            QVERIFY(std::isfinite(point.x()) && std::isfinite(point.y()));
    }

    void stepsOfAnAxis_data()
    {
        QTest::addColumn<qint64>("last");
        QTest::addColumn<qint64>("step");
        QTest::newRow("one") << qint64{1} << qint64{1};
        QTest::newRow("six by one") << qint64{6} << qint64{1};
        QTest::newRow("seven by two") << qint64{7} << qint64{2};
        QTest::newRow("thirteen by five") << qint64{13} << qint64{5};
        QTest::newRow("thirty-one by ten") << qint64{31} << qint64{10};
        QTest::newRow("thousands") << qint64{5000} << qint64{1000};
    }
    void stepsOfAnAxis()
    {
        QFETCH(qint64, last);
        QFETCH(qint64, step);
        QCOMPARE(picture::countStep(last, 6), step);
    }

    void stepsOfHours_data()
    {
        QTest::addColumn<qint64>("minutes");
        QTest::addColumn<qint64>("step");
        QTest::newRow("half an hour") << qint64{30} << qint64{15};
        QTest::newRow("four hours") << qint64{240} << qint64{60};
        QTest::newRow("a shift and a bit") << qint64{600} << qint64{120};
        QTest::newRow("two days") << qint64{48 * 60} << qint64{12 * 60};
        QTest::newRow("a week") << qint64{7 * 24 * 60} << qint64{2 * 24 * 60};
        QTest::newRow("a month") << qint64{30 * 24 * 60} << qint64{5 * 24 * 60};
    }
    void stepsOfHours()
    {
        QFETCH(qint64, minutes);
        QFETCH(qint64, step);
        QCOMPARE(picture::hourStep(minutes * 60'000, 6), step * 60'000);
    }
};

QTEST_MAIN(TestProgressLayout)
#include "tst_progress_layout.moc"
