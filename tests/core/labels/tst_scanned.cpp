// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/labels/scanned.hpp"

#include <QTest>

#include "core/labels/labels.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using core::ScanMeans;
using story::Story;

/// What a scanner's text means in a job, and what the job's labels say.
class TestScanned : public QObject {
    Q_OBJECT

private slots:
    void meaning_data();
    void meaning();
    void labelsFollowTheList();
    void everyLabelLeadsBack();
    void labelMayBeTheTag();
};

void TestScanned::meaning_data()
{
    QTest::addColumn<QString>("story");
    QTest::addColumn<QString>("text");
    QTest::addColumn<ScanMeans>("means");
    QTest::addColumn<QString>("item");

    QTest::addRow("label") << u""_s << u"remate:%1/D1"_s << ScanMeans::Item << u"D1"_s;
    QTest::addRow("label of another job") << u""_s << u"remate:%1x/D1"_s << ScanMeans::OtherJob << u""_s;
    QTest::addRow("label of an interface that is not listed") << u""_s << u"remate:%1/D999"_s << ScanMeans::UnknownItem << u""_s;
    QTest::addRow("its label in small letters is another's") << u""_s << u"remate:%1/d1"_s << ScanMeans::UnknownItem << u""_s;
    QTest::addRow("tag") << u"Ana disconnects D1 tag=40"_s << u"40"_s << ScanMeans::Item << u"D1"_s;
    QTest::addRow("part of a tag") << u"Ana disconnects D1 tag=40"_s << u"4"_s << ScanMeans::Nothing << u""_s;
    QTest::addRow("tag that hangs nowhere") << u"Ana disconnects D1 tag=40"_s << u"41"_s << ScanMeans::Nothing << u""_s;
    QTest::addRow("tag that was recovered") << u"Ana disconnects D1 tag=40; Ben reconnects D1"_s << u"40"_s << ScanMeans::Item << u"D1"_s;
    QTest::addRow("id") << u""_s << u"D1"_s << ScanMeans::Item << u"D1"_s;
    QTest::addRow("part of an id") << u""_s << u"D"_s << ScanMeans::Nothing << u""_s;
    QTest::addRow("tag that is called as another interface") << u"Ana disconnects D1 tag=C1"_s << u"C1"_s << ScanMeans::Item << u"D1"_s;
    QTest::addRow("nothing") << u""_s << u""_s << ScanMeans::Nothing << u""_s;
}

void TestScanned::meaning()
{
    QFETCH(QString, story);
    QFETCH(QString, text);
    QFETCH(ScanMeans, means);
    QFETCH(QString, item);
    const Story told(story);
    QCOMPARE(told.refusedBy(), QString());
    const core::Scanned scanned = core::meantBy(told.job(), text.contains(u"%1"_s) ? text.arg(told.job().facts.workOrder) : text);
    QCOMPARE(scanned.means, means);
    QCOMPARE(scanned.item ? scanned.item->text() : QString(), item);
}

void TestScanned::labelsFollowTheList()
{
    const Story told(u"Ana disconnects D1 tag=40; Ana disconnects C1 tag=41; Ben reconnects C1"_s);
    QCOMPARE(told.refusedBy(), QString());
    const auto labels = core::labelsOf(told.job());
    QCOMPARE(labels.size(), told.job().items.size());
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const core::Listing &listed = told.job().items[i].listed;
        QCOMPARE(labels[i].id, listed.id.text());
        QCOMPARE(labels[i].name, listed.name);
        QCOMPARE(labels[i].zone, listed.zone);
        QCOMPARE(labels[i].workOrder, told.job().facts.workOrder);
        // The tag that hangs; not the one that was recovered.
        QCOMPARE(labels[i].tag, listed.id.text() == u"D1" ? u"40"_s : QString());
    }
}

void TestScanned::everyLabelLeadsBack()
{
    const Story told;
    QVERIFY(!told.job().items.empty());
    for (const core::Label &label : core::labelsOf(told.job())) {
        const core::Scanned scanned = core::meantBy(told.job(), label.code);
        QCOMPARE(scanned.means, ScanMeans::Item);
        QCOMPARE(scanned.item->text(), label.id);
    }
}

/// Common practice: what is tied to an open end is its tag.
void TestScanned::labelMayBeTheTag()
{
    const QString code = core::labelsOf(Story().job()).front().code;
    const QString id = core::labelsOf(Story().job()).front().id;
    Story told(u"Ana disconnects %1 tag=%2"_s.arg(id, code));
    QCOMPARE(told.refusedBy(), QString());
    QCOMPARE(told.item(id).removal->tag, code);
    QCOMPARE(core::labelsOf(told.job()).front().tag, QString());
    QCOMPARE(core::meantBy(told.job(), code).item->text(), id);
    told.tell(u"Ben reconnects %1 tag_recovered=%2"_s.arg(id, code));
    QCOMPARE(told.refusedBy(), QString());
}

QTEST_APPLESS_MAIN(TestScanned)
#include "tst_scanned.moc"
