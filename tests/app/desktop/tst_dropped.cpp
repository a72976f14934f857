// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QImage>
#include <QMimeData>
#include <QTest>
#include <QUrl>

#include "app/desktop/dropped.hpp"

using namespace Qt::StringLiterals;
using desktop::Dropped;
using desktop::Shown;

Q_DECLARE_METATYPE(Dropped)
Q_DECLARE_METATYPE(Shown)

/// What a window takes that is dropped on it, by what it shows.
class TstDropped : public QObject {
    Q_OBJECT

private slots:
    void files_data();
    void files();
    void aPictureWithoutAFile();
    void words();
};

void TstDropped::files_data()
{
    QTest::addColumn<QStringList>("urls");
    QTest::addColumn<Shown>("shown");
    QTest::addColumn<Dropped>("is");

    QTest::addRow("photo on a job") << QStringList{u"file:///c/IMG_1.jpg"_s} << Shown::Job << Dropped::Photos;
    QTest::addRow("photos on a job") << QStringList{u"file:///c/IMG_1.jpg"_s, u"file:///c/IMG_2.JPG"_s} << Shown::Job << Dropped::Photos;
    QTest::addRow("photos while no job is shown") << QStringList{u"file:///c/IMG_1.jpg"_s, u"file:///c/IMG_2.JPG"_s} << Shown::SomethingElse << Dropped::Nothing;
    QTest::addRow("list on a job") << QStringList{u"file:///c/list.csv"_s} << Shown::Job << Dropped::List;
    QTest::addRow("list named in capitals") << QStringList{u"file:///c/LIST.CSV"_s} << Shown::Job << Dropped::List;
    QTest::addRow("list while no job is shown") << QStringList{u"file:///c/list.csv"_s} << Shown::SomethingElse << Dropped::List;
    QTest::addRow("two lists") << QStringList{u"file:///c/left.csv"_s, u"file:///c/right.csv"_s} << Shown::Job << Dropped::Nothing;
    QTest::addRow("store on a job") << QStringList{u"file:///c/jobs.remate"_s} << Shown::Job << Dropped::StoreOrPackage;
    QTest::addRow("package while no job is shown") << QStringList{u"file:///c/record.zip"_s} << Shown::SomethingElse << Dropped::StoreOrPackage;
    QTest::addRow("store on another machine") << QStringList{u"https://hangar.example/jobs.remate"_s} << Shown::SomethingElse << Dropped::Nothing;
}

void TstDropped::files()
{
    QFETCH(QStringList, urls);
    QFETCH(Shown, shown);
    QFETCH(Dropped, is);
    QMimeData data;
    data.setUrls(QUrl::fromStringList(urls));
    QCOMPARE(desktop::whatIsDropped(data, shown), is);
}

void TstDropped::aPictureWithoutAFile()
{
    QImage picture(8, 6, QImage::Format_RGB32);
    picture.fill(Qt::darkGreen);
    QMimeData data;
    data.setImageData(picture);
    QCOMPARE(desktop::whatIsDropped(data, Shown::Job), Dropped::Photos);
    QCOMPARE(desktop::whatIsDropped(data, Shown::SomethingElse), Dropped::Nothing);
}

void TstDropped::words()
{
    QMimeData data;
    data.setText(u"jobs.remate"_s);
    QCOMPARE(desktop::whatIsDropped(data, Shown::Job), Dropped::Nothing);
}

QTEST_MAIN(TstDropped)
#include "tst_dropped.moc"
