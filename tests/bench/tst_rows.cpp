// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

#include <cmath>

using namespace Qt::StringLiterals;

/// Runs every row of remate_bench for a moment. It shows that rows can be measured and are printed, never how fast.
class RowsTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void rowRunsAndPrints_data();
    void rowRunsAndPrints();
    void unknownRowIsRefused();

private:
    struct Ran {
        int code;
        QString out;
        QString err;
    };
    Ran run(const QStringList &arguments) const;

    QTemporaryDir m_folder;
    QStringList m_rows;
};

RowsTest::Ran RowsTest::run(const QStringList &arguments) const
{
    QProcess bench;
    bench.start(QCoreApplication::applicationDirPath() + u"/remate_bench"_s, arguments + QStringList{u"--folder"_s, m_folder.filePath(u"cache"_s)});
    const bool hasEnded = bench.waitForFinished(240'000) && bench.exitStatus() == QProcess::NormalExit;
    return {hasEnded ? bench.exitCode() : -1, QString::fromUtf8(bench.readAllStandardOutput()), QString::fromUtf8(bench.readAllStandardError())};
}

void RowsTest::initTestCase()
{
    for (const QString &line : run({u"--list"_s}).out.split(u'\n', Qt::SkipEmptyParts))
        m_rows << line.section(u'\t', 0, 0);
    QVERIFY2(m_rows.size() >= 9, qPrintable(m_rows.join(u' ')));
}

void RowsTest::rowRunsAndPrints_data()
{
    QTest::addColumn<QString>("row");
    for (const QString &row : std::as_const(m_rows))
        QTest::addRow("%s", qPrintable(row)) << row;
}

void RowsTest::rowRunsAndPrints()
{
    QFETCH(QString, row);
    const QString json = m_folder.filePath(u"figures.json"_s);
    const Ran ran = run({u"--smoke"_s, u"--only"_s, row, u"--json"_s, json});
    QVERIFY2(ran.code == 0, qPrintable(ran.err));
    QVERIFY2(ran.out.contains(u"smoke run"), qPrintable(ran.out)); // nobody takes these figures for more

    QFile file(json);
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QJsonObject told = QJsonDocument::fromJson(file.readAll()).object();
    for (const QString &fact : {u"date"_s, u"build"_s, u"processor"_s, u"libraries"_s})
        QVERIFY2(!told.value(fact).toString().isEmpty(), qPrintable(fact));
    const QJsonArray rows = told.value(u"rows"_s).toArray();
    QCOMPARE(rows.size(), 1);
    QCOMPARE(rows[0].toObject().value(u"row"_s).toString(), row);
    const QJsonArray figures = rows[0].toObject().value(u"figures"_s).toArray();
    QVERIFY(!figures.isEmpty());
    for (const QJsonValue &one : figures) {
        const QJsonObject figure = one.toObject();
        QVERIFY(!figure.value(u"repetitions"_s).toArray().isEmpty());
        QVERIFY2(std::isfinite(figure.value(u"value"_s).toDouble(qQNaN())), qPrintable(figure.value(u"name"_s).toString()));
        QVERIFY2(ran.out.contains(u"| %1 | %2 |"_s.arg(row, figure.value(u"name"_s).toString())), qPrintable(ran.out));
    }
}

void RowsTest::unknownRowIsRefused()
{
    const Ran ran = run({u"--smoke"_s, u"--only"_s, u"nosuchrow"_s});
    QCOMPARE(ran.code, 1);
    QVERIFY(ran.err.contains(u"--list"));
}

QTEST_GUILESS_MAIN(RowsTest)
#include "tst_rows.moc"
