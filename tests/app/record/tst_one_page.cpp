// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/one_page_sheet.hpp"

#include <QFile>
#include <QGuiApplication>
#include <QPageLayout>
#include <QPdfWriter>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QtTest>

#include "tests/app/record/programs.hpp"

using namespace Qt::StringLiterals;

/// Sheets that are read on a wall: one page each, whatever there is to say, in letters that are read at arm's length.
class TestOnePage : public QObject {
    Q_OBJECT

private slots:
    void onePageOfEach_data();
    void onePageOfEach();
    void theLongestPartIsCutFirst();
    void nothingIsCutWhereThereIsRoom();
    void lettersAreNinePoints();
    void nothingRunsOffPaperThatLiesAcross();
    void whatNeverFitsIsRefused();

private:
    /// `many` things in two zones, and two hold points.
    static core::OnePage sheet(int many)
    {
        core::OnePage page{u"Wall sheet: what is open"_s, {{u"Job"_s, u"WO-2207-14, left engine"_s}, {u"Leads"_s, u"Ana Novak"_s}}, {}, u"Entry 41  "_s + QString(64, u'a')};
        core::SheetPart open{u"Open now"_s, {u"How it stands"_s, u"Which"_s}, {}, u"No interface is open."_s};
        for (int i = 0; i < many; ++i)
            open.things.push_back({i % 2 == 0 ? u"Inboard"_s : u"Outboard"_s, u"OFF"_s, u"E%1"_s.arg(i)});
        core::SheetPart holds{u"Hold points"_s, {u"How it stands"_s, u"Missing"_s}, {{u"Free"_s, u"NOT PASSED"_s, u"E7 is connected"_s}, {u"Carry"_s, u"VOID"_s, u"E8 was opened"_s}}, u"None waits."_s};
        page.parts = {open, holds, {u"Applied"_s, {u"What is on"_s, u"Which"_s}, {}, u"Nothing is on."_s}};
        return page;
    }
    QString path() const { return m_folder.filePath(u"sheet.pdf"_s); }
    QString text() const { return programs::run(u"pdftotext"_s, {u"-raw"_s, path(), u"-"_s}).output; }
    QTemporaryDir m_folder;
};

void TestOnePage::onePageOfEach_data()
{
    QTest::addColumn<int>("many");
    QTest::addColumn<bool>("letter");
    QTest::addColumn<QString>("paper");
    for (const int many : {0, 10, 35, 60, 400, 5000}) {
        QTest::addRow("%d on A4", many) << many << false << u"595 x 842"_s;
        QTest::addRow("%d on Letter", many) << many << true << u"612 x 792"_s;
    }
}

void TestOnePage::onePageOfEach()
{
    QFETCH(int, many);
    QFETCH(bool, letter);
    QFETCH(QString, paper);
    QVERIFY(record::writeOnePagePdf(sheet(many), path(), letter ? record::PageSize::Letter : record::PageSize::A4));
    const programs::Ran info = programs::run(u"pdfinfo"_s, {path()});
    QVERIFY2(info.code == 0 && info.output.contains(QRegularExpression(u"Pages: +1\n"_s)) && info.output.contains(paper), qPrintable(info.output));
    const QString said = text().replace(QRegularExpression(u"\\s+"_s), u" "_s);
    for (const QString &words : {u"PRINTED, NOT THE RECORD"_s, u"Ana Novak"_s, u"NOT PASSED"_s, u"VOID"_s, u"Nothing is on."_s, u"Entry 41"_s, QString(64, u'a')})
        QVERIFY2(said.contains(words), qPrintable(words + u" is not in "_s + said));
    QCOMPARE(said.contains(u"No interface is open."_s), many == 0);
    // What is printed and what is said to be left out are all there is.
    const auto more = QRegularExpression(u"and (\\d+) more; see the program"_s).match(said);
    auto printed = QRegularExpression(u"\\bE\\d+(?=;| )"_s).globalMatch(said.section(u"Which"_s, 1, 1).section(u"Hold points"_s, 0, 0));
    int shown = 0;
    for (; printed.hasNext(); printed.next())
        ++shown;
    QCOMPARE(shown + more.captured(1).toInt(), many);
    QCOMPARE(more.hasMatch(), shown < many);
}

void TestOnePage::theLongestPartIsCutFirst()
{
    const core::OnePage page = sheet(5000);
    const auto room = record::roomFor(page, record::PageSize::A4);
    QVERIFY(room);
    QVERIFY2(*room >= 10 && *room < 5000, qPrintable(QString::number(*room)));
    QVERIFY(record::writeOnePagePdf(page, path(), record::PageSize::A4));
    QCOMPARE(text().count(u"see the program"_s), 1); // the hold points stand whole
}

void TestOnePage::nothingIsCutWhereThereIsRoom()
{
    const auto room = record::roomFor(sheet(4), record::PageSize::Letter);
    QVERIFY(room);
    QCOMPARE(*room, 4);
}

/// Measured by another program: the sizes that pdftohtml (poppler) lists, in points.
void TestOnePage::lettersAreNinePoints()
{
    QVERIFY(record::writeOnePagePdf(sheet(60), path(), record::PageSize::A4));
    const programs::Ran ran = programs::run(u"pdftohtml"_s, {u"-xml"_s, u"-stdout"_s, u"-i"_s, u"-zoom"_s, u"1"_s, path()});
    QCOMPARE(ran.code, 0);
    auto sizes = QRegularExpression(u"<fontspec [^>]*size=\"(\\d+)\""_s).globalMatch(ran.output);
    QVERIFY(sizes.hasNext());
    while (sizes.hasNext()) {
        const int size = sizes.next().captured(1).toInt();
        QVERIFY2(size >= 9, qPrintable(QString::number(size)));
    }
}

/// Measured by another program: where pdftotext (poppler) finds each word.
void TestOnePage::nothingRunsOffPaperThatLiesAcross()
{
    {
        QPdfWriter across(path());
        across.setPageLayout(QPageLayout(QPageSize(QPageSize::A4), QPageLayout::Landscape, QMarginsF()));
        QVERIFY(record::printOnePage(sheet(60), across));
    }
    const programs::Ran ran = programs::run(u"pdftotext"_s, {u"-bbox"_s, path(), u"-"_s});
    QVERIFY2(ran.output.contains(u"Entry"_s), qPrintable(ran.output.left(500))); // the foot
    const double height = QRegularExpression(u"<page width=\"[0-9.]+\" height=\"([0-9.]+)\""_s).match(ran.output).captured(1).toDouble();
    QVERIFY2(height > 590 && height < 600, qPrintable(QString::number(height)));
    auto ends = QRegularExpression(u"yMax=\"([0-9.]+)\""_s).globalMatch(ran.output);
    QVERIFY(ends.hasNext());
    while (ends.hasNext())
        QVERIFY(ends.next().captured(1).toDouble() < height);
}

void TestOnePage::whatNeverFitsIsRefused()
{
    core::OnePage page = sheet(1);
    page.title = QString(200, u' ').replace(u" "_s, u"Outboard nacelle "_s);
    QVERIFY(!record::roomFor(page, record::PageSize::A4));
    const auto written = record::writeOnePagePdf(page, path() + u".no"_s, record::PageSize::A4);
    QVERIFY(!written);
    QCOMPARE(written.error().code, core::ErrorCode::BadInput);
    QVERIFY(!QFile::exists(path() + u".no"_s));
}

QTEST_MAIN(TestOnePage)
#include "tst_one_page.moc"
