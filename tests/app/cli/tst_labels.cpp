// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

#include "tests/app/cli/program.hpp"

using namespace Qt::StringLiterals;

/// Tag labels by command. What stands on them is tested beside the labels themselves.
class TstLabels : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { QCOMPARE(makeQuickDemo(at(u"demo.remate"_s)), QString()); }
    void answers_data();
    void answers();
    void everyInterfaceHasOne();

private:
    QString at(const QString &name) const { return m_folder.filePath(name); }
    Said ask(const QString &options) const { return remateCli(QStringList{u"labels"_s, at(u"demo.remate"_s), u"--job"_s, u"WO-2207-14"_s, u"--to"_s, at(u"labels.pdf"_s), u"--json"_s} + options.split(u' ', Qt::SkipEmptyParts)); }

    QTemporaryDir m_folder;
};

void TstLabels::answers_data()
{
    QTest::addColumn<QString>("options");
    QTest::addColumn<int>("exit");
    QTest::addColumn<QByteArray>("says"); ///< in the answer, or in the error

    QTest::addRow("one interface") << u"--item AP1"_s << 0 << QByteArray("\"labels\":1");
    QTest::addRow("two of them") << u"--item AP1 --item D1"_s << 0 << QByteArray("\"labels\":2");
    QTest::addRow("an interface that is none") << u"--item AP99"_s << 2 << QByteArray("no interface \\\"AP99\\\"");
    QTest::addRow("a size") << u"--item AP1 --size 50x25"_s << 0 << QByteArray("\"size\":\"50x25\"");
    QTest::addRow("a size that is none") << u"--item AP1 --size 50x26"_s << 2 << QByteArray("70x37, 50x25, 105x74");
    QTest::addRow("a paper") << u"--item AP1 --paper letter"_s << 0 << QByteArray("\"sheets\":1");
    QTest::addRow("a paper that is none") << u"--item AP1 --paper a5"_s << 2 << QByteArray("a4 or letter");
}

void TstLabels::answers()
{
    QFETCH(QString, options);
    QFETCH(int, exit);
    QFETCH(QByteArray, says);
    QFile::remove(at(u"labels.pdf"_s));
    const Said said = ask(options);
    QCOMPARE(said.exit, exit);
    QVERIFY2((said.out + said.err).contains(says), (said.out + said.err).constData());
    QCOMPARE(QFile::exists(at(u"labels.pdf"_s)), exit == 0);
}

void TstLabels::everyInterfaceHasOne()
{
    const Said shown = remateCli({u"list-export"_s, at(u"demo.remate"_s), u"--job"_s, u"WO-2207-14"_s, u"--json"_s});
    QCOMPARE(shown.exit, 0);
    const Said said = ask({});
    QCOMPARE(said.exit, 0);
    QVERIFY(said.json().integer(u"labels") > 1);
    QCOMPARE(said.json().integer(u"labels"), shown.json().integer(u"interfaces"));
}

QTEST_GUILESS_MAIN(TstLabels)
#include "tst_labels.moc"
