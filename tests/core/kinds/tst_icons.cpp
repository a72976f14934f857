// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QPainter>
#include <QSvgRenderer>
#include <QtTest>

#include "core/acts/act.hpp"
#include "core/job/stage.hpp"
#include "resources/resources.hpp"

using namespace Qt::StringLiterals;

class IconsTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { resources::readyResources(); }
    void everyActHasOne();
    void everyStageHasOneOfItsOwnShape();
    void everyFileIsInTheProgramAndDraws();
    void manualIsInTheProgram();

private:
    static QStringList filesIn(const QString &folder);
};

namespace {

/// What is drawn, without its colours: where there is ink.
QImage shapeOf(const QString &path)
{
    QImage image(96, 96, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    QSvgRenderer renderer(path);
    QPainter painter(&image);
    renderer.render(&painter);
    painter.end();
    return image.convertToFormat(QImage::Format_Alpha8);
}

} // namespace

QStringList IconsTest::filesIn(const QString &folder)
{
    QStringList files;
    for (QDirIterator at(folder, {u"*.svg"_s, u"*.md"_s}, QDir::Files, QDirIterator::Subdirectories); at.hasNext();)
        files << QDir(folder).relativeFilePath(at.next());
    files.sort();
    return files;
}

void IconsTest::everyActHasOne()
{
    for (const core::Act &act : core::acts())
        QVERIFY2(QFile::exists(u":/icons/acts/%1.svg"_s.arg(act.kind)), act.kind.data());
    QCOMPARE(QDir(u":/icons/acts"_s).entryList(QDir::Files).size(), static_cast<qsizetype>(core::acts().size()));
}

void IconsTest::everyStageHasOneOfItsOwnShape()
{
    QList<QImage> shapes;
    for (const core::Stage stage : {core::Stage::Connected, core::Stage::Disconnected, core::Stage::Reconnected, core::Stage::Secured, core::Stage::Inspected}) {
        const QString path = u":/icons/stages/%1.svg"_s.arg(core::stageName(stage));
        QVERIFY2(QFile::exists(path), qPrintable(path));
        const QImage shape = shapeOf(path);
        QVERIFY2(!shapes.contains(shape), qPrintable(path));
        shapes << shape;
    }
}

void IconsTest::everyFileIsInTheProgramAndDraws()
{
    const QStringList files = filesIn(qEnvironmentVariable("REMATE_SOURCE_DIR") + u"/resources/icons"_s);
    QVERIFY(!files.isEmpty());
    QCOMPARE(filesIn(u":/icons"_s), files);
    QImage nothing(96, 96, QImage::Format_Alpha8);
    nothing.fill(Qt::transparent);
    for (const QString &file : files) {
        QVERIFY2(QSvgRenderer(u":/icons/"_s + file).isValid(), qPrintable(file));
        QVERIFY2(shapeOf(u":/icons/"_s + file) != nothing, qPrintable(file));
    }
}

void IconsTest::manualIsInTheProgram()
{
    const QStringList pages = filesIn(qEnvironmentVariable("REMATE_SOURCE_DIR") + u"/resources/manual"_s);
    QVERIFY(!pages.isEmpty());
    QCOMPARE(filesIn(u":/manual"_s), pages);
}

QTEST_MAIN(IconsTest)
#include "tst_icons.moc"
