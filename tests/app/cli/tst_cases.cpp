// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>

#include "tests/app/cli/program.hpp"

using namespace Qt::StringLiterals;

namespace {

QString source() { return qEnvironmentVariable("REMATE_SOURCE_DIR"); }

QByteArray bytesOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// Line and rules of each refusal: `7 torque.half-done`.
QStringList refusedIn(const core::json::Object &answer)
{
    QStringList lines;
    const core::json::Value *list = answer.find(u"lines");
    for (const core::json::Value &line : list && list->array() ? *list->array() : core::json::Array()) {
        const core::json::Value *refusals = line.object()->find(u"refusals");
        QStringList rules;
        for (const core::json::Value &refusal : refusals ? *refusals->array() : core::json::Array())
            rules << refusal.object()->text(u"rule");
        if (!rules.isEmpty())
            lines << QString::number(line.object()->integer(u"line").value_or(0)) + u' ' + rules.join(u' ');
    }
    return lines;
}

} // namespace

/// What went wrong in public reports, told as drafts with invented names, and what the rules say to it. cases.json names the report and the
/// refusals expected; everything else in a file is admitted.
class TstCases : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { QCOMPARE(makeQuickDemo(m_folder.filePath(u"demo.remate"_s)), QString()); }
    void isCaught_data();
    void isCaught();
    void everyFileIsACase();

private:
    core::json::Array cases() const
    {
        const auto read = core::json::parseObject(bytesOf(source() + u"/tests/cases/cases.json"_s));
        const core::json::Value *list = read ? read->find(u"cases") : nullptr;
        return list && list->array() ? *list->array() : core::json::Array();
    }
    QTemporaryDir m_folder;
};

void TstCases::isCaught_data()
{
    QTest::addColumn<QString>("name");
    QTest::addColumn<QString>("report");
    QTest::addColumn<QStringList>("refused");
    for (const core::json::Value &one : cases()) {
        const core::json::Object &it = *one.object();
        const std::vector<QString> refused = it.texts(u"refused");
        QTest::addRow("%s", qPrintable(it.text(u"name") + u", "_s + it.text(u"report"))) << it.text(u"name") << it.text(u"report") << QStringList(refused.begin(), refused.end());
    }
}

void TstCases::isCaught()
{
    QFETCH(QString, name);
    QFETCH(QString, report);
    QFETCH(QStringList, refused);
    const QString file = source() + u"/tests/cases/%1.jsonl"_s.arg(name);
    const Said said = remateCli({u"enter"_s, m_folder.filePath(u"demo.remate"_s), u"--job"_s, u"WO-2207-14"_s, file, u"--dry-run"_s, u"--json"_s});
    QCOMPARE(said.exit, 1);
    QCOMPARE(refusedIn(said.json()), refused);
    // The manual tells it, with the report.
    QVERIFY2(bytesOf(source() + u"/resources/manual/cases.md"_s).contains(report.toUtf8()), qPrintable(report));
}

void TstCases::everyFileIsACase()
{
    const QStringList files = QDir(source() + u"/tests/cases"_s).entryList({u"*.jsonl"_s}, QDir::Files);
    QVERIFY(files.size() >= 16);
    QCOMPARE(files.size(), static_cast<qsizetype>(cases().size()));
}

QTEST_GUILESS_MAIN(TstCases)
#include "tst_cases.moc"
