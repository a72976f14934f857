// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QtTest>

#include <numeric>

#include "app/record/column_widths.hpp"
#include "app/record/flow.hpp"

using namespace Qt::StringLiterals;
using Widths = std::vector<double>;

class ColumnWidthsTest : public QObject {
    Q_OBJECT

private slots:
    void shared_data();
    void shared();
    void wordsAndTimesStayWhole();
};

void ColumnWidthsTest::shared_data()
{
    QTest::addColumn<Widths>("shares");
    QTest::addColumn<Widths>("least");
    QTest::addColumn<Widths>("widths");
    QTest::addRow("as asked for") << Widths{1, 3} << Widths{20, 60} << Widths{25, 75};
    QTest::addRow("just enough") << Widths{1, 3} << Widths{25, 75} << Widths{25, 75};
    QTest::addRow("one is short, the other has it over") << Widths{1, 3} << Widths{35, 30} << Widths{35, 65};
    QTest::addRow("those who have more over give more") << Widths{1, 4, 5} << Widths{16, 30, 20} << Widths{16, 38.5, 45.5};
    QTest::addRow("not enough for all") << Widths{1, 1} << Widths{150, 50} << Widths{75, 25};
}

void ColumnWidthsTest::shared()
{
    QFETCH(Widths, shares);
    QFETCH(Widths, least);
    QFETCH(Widths, widths);
    const Widths got = record::columnWidths(100, shares, least);
    QCOMPARE(got.size(), widths.size());
    for (std::size_t i = 0; i < got.size(); ++i)
        QVERIFY2(qAbs(got[i] - widths[i]) < 1e-9, qPrintable(QString::number(got[i])));
    QVERIFY(qAbs(std::accumulate(got.begin(), got.end(), 0.0) - 100) < 1e-9);
}

/// A column of a share that is far too small.
void ColumnWidthsTest::wordsAndTimesStayWhole()
{
    const auto faces = record::Typefaces::find();
    QVERIFY(faces);
    record::Flow flow(record::frameOf(record::PageSize::A4), *faces, {});
    const record::Table table{{{u"Statement"_s, 97}, {u"Scrapped"_s, 1}, {u"When"_s, 1}, {u"Torque"_s, 1}},
                              {{{}, {u"Disconnected."_s, u"unserviceable"_s, u"2026-03-02 08:14:31 UTC"_s, u"22.0 to 26.5 N·m"_s}}}};
    flow.table(table);
    QStringList lines;
    const std::vector<record::Sheet> sheets = flow.takeSheets(); // outlives the walk through it
    for (const record::Run &run : sheets.front().runs)
        lines << run.text;
    for (const QString &whole : {u"Scrapped"_s, u"unserviceable"_s, u"2026-03-02"_s, u"08:14:31 UTC"_s, u"26.5 N·m"_s})
        QVERIFY2(lines.contains(whole), qPrintable(lines.join(u'|')));
}

QTEST_MAIN(ColumnWidthsTest)
#include "tst_column_widths.moc"
