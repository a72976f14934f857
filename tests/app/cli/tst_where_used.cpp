// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

#include "core/list/csv.hpp"
#include "tests/app/cli/program.hpp"
#include "tests/app/cli/raw_sql.hpp"

using namespace Qt::StringLiterals;

/// A look-up that finds nothing says what it looked for and through: a slip of the pen must not read as an all-clear.
class TstWhereUsed : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void badQuestionIsRefused_data();
    void badQuestionIsRefused();
    void nothingFoundSaysWhy_data();
    void nothingFoundSaysWhy();
    void nothingFoundIsWritten();
    void personIsFoundByName();
    void damageIsSaid();
    void signatureInDoubtIsMarked();

private:
    QString at(const QString &name) const { return m_folder.filePath(name); }
    Said ask(const QString &store, const QString &options) const { return remateCli(QStringList{u"where-used"_s, at(store)} + options.split(u' ', Qt::SkipEmptyParts)); }

    QTemporaryDir m_folder;
};

void TstWhereUsed::initTestCase() { QCOMPARE(makeQuickDemo(at(u"closed.remate"_s), demo::Until::Closed), QString()); }

void TstWhereUsed::badQuestionIsRefused_data()
{
    QTest::addColumn<QString>("options");
    QTest::addColumn<QByteArray>("says"); ///< empty: it is answered
    QTest::addRow("kind") << u"--tool TW-15 --kind torque.applied"_s << QByteArray();
    QTest::addRow("kind that is none") << u"--tool TW-15 --kind torque.guessed"_s << QByteArray("There is no kind of entry \"torque.guessed\".");
    QTest::addRow("kind with a letter too few") << u"--tool TW-15 --kind torque.aplied"_s << QByteArray("spelt alike: torque.applied.");
    QTest::addRow("one day") << u"--tool TW-15 --from 2026-03-02 --until 2026-03-02"_s << QByteArray();
    QTest::addRow("days that run backwards") << u"--tool TW-15 --from 2026-03-03 --until 2026-03-02"_s << QByteArray("2026-03-03 is later than 2026-03-02");
    QTest::addRow("no such day") << u"--tool TW-15 --from 2026-02-30"_s << QByteArray("\"2026-02-30\" is no day");
    QTest::addRow("no such day at the end") << u"--tool TW-15 --until tomorrow"_s << QByteArray("\"tomorrow\" is no day");
}

void TstWhereUsed::badQuestionIsRefused()
{
    QFETCH(QString, options);
    QFETCH(QByteArray, says);
    const Said said = ask(u"closed.remate"_s, options);
    QCOMPARE(said.exit, says.isEmpty() ? 0 : 2);
    QVERIFY2(says.isEmpty() || said.err.contains(says), said.err.constData());
}

/// What is registered and unused is told from what nobody registered; what stands in no register is told from both.
void TstWhereUsed::nothingFoundSaysWhy_data()
{
    QTest::addColumn<QString>("options");
    QTest::addColumn<int>("exit");
    QTest::addColumn<QString>("says");
    QTest::addColumn<QString>("doesNotSay");
    const QString never = u" --until 2001-01-01"_s;
    QTest::addRow("tool that is registered, at another time") << u"--tool TW-15"_s + never << 0 << u"No entry of those asked for names tool TW-15 (Torque wrench"_s << u"knows no"_s;
    QTest::addRow("tool that nobody registered") << u"--tool TX-77"_s << 1 << u"The register knows no tool TX-77"_s << u"spelt alike"_s;
    QTest::addRow("the same, at another time") << u"--tool TX-77"_s + never << 1 << u"The register knows no tool TX-77"_s << u"spelt alike"_s;
    QTest::addRow("tool in small letters") << u"--tool tw-15"_s << 1 << u"Known that are spelt alike: TW-15 (Torque wrench"_s << QString();
    QTest::addRow("person with two letters swapped") << u"--person noavk"_s << 1 << u"Known that are spelt alike: novak (Petra Novak)."_s << QString();
    QTest::addRow("batch") << u"--batch ZZ-70"_s << 0 << u"No entry of any job names batch ZZ-70. The register keeps no list of these"_s << u"knows no"_s;
    QTest::addRow("serial number") << u"--serial ZZ-70"_s << 0 << u"No entry of any job names serial number ZZ-70."_s << u"knows no"_s;
    QTest::addRow("a registered thing tells how much there is without the days") << u"--tool TW-15"_s + never << 0 << u"of every kind and all its time there are: "_s << u"there are: 0"_s;
}

void TstWhereUsed::nothingFoundSaysWhy()
{
    QFETCH(QString, options);
    QFETCH(int, exit);
    QFETCH(QString, says);
    QFETCH(QString, doesNotSay);
    const Said said = ask(u"closed.remate"_s, options);
    const QString text = QString::fromUtf8(said.out);
    QCOMPARE(said.exit, exit);
    QVERIFY2(text.contains(says), said.out.constData());
    QVERIFY2(doesNotSay.isEmpty() || !text.contains(doesNotSay), said.out.constData());
    // As many as the store's own tables have.
    const QString store = at(u"closed.remate"_s);
    const auto count = [&](const QString &what, int isRegister) { return QString::fromLatin1(rawValue(store, u"SELECT CAST(count(*) AS TEXT) FROM %1 WHERE is_register = %2"_s.arg(what).arg(isRegister))); };
    const QString joined = u"entries JOIN ledgers ON ledgers.id = entries.ledger"_s;
    const QString looked = u"Looked through were jobs: %1; their entries: %2; entries of the register: %3."_s.arg(count(u"ledgers"_s, 0), count(joined, 0), count(joined, 1));
    QVERIFY2(text.contains(looked), qPrintable(looked + text));
    const core::json::Object json = ask(u"closed.remate"_s, options + u" --json"_s).json();
    QVERIFY(json.find(u"uses"_s)->array()->empty());
    QVERIFY(json.find(u"nothing_found"_s)->object()->text(u"sentences"_s).contains(says));
}

/// A file with a title alone would say as little as an empty list.
void TstWhereUsed::nothingFoundIsWritten()
{
    const Said said = ask(u"closed.remate"_s, u"--tool TW-51 --csv %1 --pdf %2"_s.arg(at(u"none.csv"_s), at(u"none.pdf"_s)));
    QCOMPARE(said.exit, 1);
    QFile file(at(u"none.csv"_s));
    QVERIFY(file.open(QIODevice::ReadOnly));
    const core::csv::Table table = core::csv::read(file.readAll(), u"none.csv"_s);
    QVERIFY(table.faults.empty());
    QCOMPARE(table.records.size(), 2U);
    QCOMPARE(table.records[1].fields.size(), table.records[0].fields.size());
    QVERIFY(table.records[1].fields.front().text.startsWith(u"The register knows no tool TW-51"_s));
    QVERIFY(table.records[1].fields.back().text.isEmpty()); // no hash: it is no entry
    const QString reader = QStandardPaths::findExecutable(u"pdftotext"_s);
    if (reader.isEmpty())
        QSKIP("pdftotext (poppler-utils) is not installed");
    QProcess process;
    process.start(reader, {at(u"none.pdf"_s), u"-"_s});
    QVERIFY(process.waitForFinished());
    const QString text = QString::fromUtf8(process.readAllStandardOutput()).simplified();
    QVERIFY2(text.contains(u"The register knows no tool TW-51"_s), qPrintable(text));
    QVERIFY2(text.contains(u"TW-15 (Torque wrench"_s), qPrintable(text));
}

void TstWhereUsed::personIsFoundByName()
{
    const auto found = [&](const QString &person) { return remateCli({u"where-used"_s, at(u"closed.remate"_s), u"--json"_s, u"--person"_s, person}).json().find(u"uses"_s)->array()->size(); };
    QVERIFY(found(u"novak"_s) > 0);
    QCOMPARE(found(u"petra novak"_s), found(u"novak"_s));
}

/// An entry that cannot be read names nothing: whoever finds nothing has to know.
void TstWhereUsed::damageIsSaid()
{
    QVERIFY(QFile::copy(at(u"closed.remate"_s), at(u"damaged.remate"_s)));
    const QString job = QString::fromUtf8(rawValue(at(u"damaged.remate"_s), u"SELECT CAST(min(id) AS TEXT) FROM ledgers WHERE is_register = 0"_s));
    QCOMPARE(tamper(at(u"damaged.remate"_s), u"UPDATE entries SET bytes = X'7B7D' WHERE seq = 20 AND ledger = "_s + job), QString());
    const Said none = ask(u"damaged.remate"_s, u"--batch ZZ-70"_s);
    QCOMPARE(none.exit, 4);
    QVERIFY2(none.out.contains("something may not have been found: WO-2207-1"), none.out.constData());
    const Said sound = ask(u"closed.remate"_s, u"--batch ZZ-70"_s);
    QCOMPARE(sound.exit, 0);
    QVERIFY2(!sound.out.contains("Damaged"), sound.out.constData());
}

/// Work signed while somebody else may have had the key is marked wherever it is listed; work signed before is not.
void TstWhereUsed::signatureInDoubtIsMarked()
{
    const QString store = at(u"doubt.remate"_s);
    QVERIFY(QFile::copy(at(u"closed.remate"_s), store));
    const auto before = *ask(u"doubt.remate"_s, u"--person novak --json"_s).json().find(u"uses"_s)->array();
    std::vector<QString> moments;
    for (const core::json::Value &use : before) {
        if (use.object()->text(u"author"_s) == u"novak")
            moments.push_back(use.object()->text(u"at"_s));
        QVERIFY(use.object()->text(u"signature_doubt"_s).isEmpty());
    }
    QVERIFY(moments.size() > 2);
    std::sort(moments.begin(), moments.end());
    const QString since = moments[moments.size() / 2];
    const Said stopped = remateCli({u"stop-key"_s, store, u"--person"_s, u"novak"_s, u"--since"_s, since, u"--reason"_s, u"PIN seen at the bench"_s, u"--by"_s, u"rotmann"_s, u"--pins"_s, pinsOf(at(u"closed.remate"_s))});
    QVERIFY2(stopped.exit == 0, stopped.err.constData());
    const Said told = ask(u"doubt.remate"_s, u"--person novak --json --csv "_s + at(u"doubt.csv"_s));
    QFile file(at(u"doubt.csv"_s));
    QVERIFY(file.open(QIODevice::ReadOnly));
    const core::csv::Table table = core::csv::read(file.readAll(), u"doubt.csv"_s);
    const auto &titles = table.records.front().fields;
    const auto column = [&](const QString &name) { return static_cast<std::size_t>(std::find_if(titles.begin(), titles.end(), [&](const core::csv::Field &field) { return field.text == name; }) - titles.begin()); };
    std::map<QString, std::pair<QString, QString>> doubtOf; // by hash: the column, and who signed
    for (std::size_t i = 1; i < table.records.size(); ++i) {
        const auto &cells = table.records[i].fields;
        doubtOf.emplace(cells[column(u"hash"_s)].text, std::pair(cells[column(u"signature_doubt"_s)].text, cells[column(u"signed_by"_s)].text));
    }
    int doubted = 0;
    const core::json::Object json = told.json();
    for (const core::json::Value &value : *json.find(u"uses"_s)->array()) {
        const core::json::Object &use = *value.object();
        const bool isIn = use.text(u"author"_s) == u"novak" && use.text(u"at"_s) >= since; // the moments are of one form, in UTC
        doubted += isIn ? 1 : 0;
        QCOMPARE(use.text(u"signature_doubt"_s), isIn ? u"PIN seen at the bench"_s : QString());
        const auto &[doubt, signedBy] = doubtOf.at(use.text(u"hash"_s));
        QCOMPARE(doubt, use.text(u"signature_doubt"_s));
        QCOMPARE(signedBy.endsWith(u"(signature in doubt)"_s), isIn);
    }
    // Entries that were signed together have one moment.
    QCOMPARE(doubted, static_cast<int>(moments.end() - std::lower_bound(moments.begin(), moments.end(), since)));
    QVERIFY(doubted > 0 && doubted < static_cast<int>(moments.size()));
    QVERIFY(ask(u"doubt.remate"_s, u"--person novak"_s).out.contains("(Signature in doubt: PIN seen at the bench)"));
    // A list of doubts of nobody is no all-clear either.
    QCOMPARE(remateCli({u"doubtful"_s, store, u"--person"_s, u"novak"_s}).exit, 1);
    QCOMPARE(remateCli({u"doubtful"_s, store, u"--person"_s, u"tanaka"_s}).exit, 0);
    const Said nobody = remateCli({u"doubtful"_s, store, u"--person"_s, u"noavk"_s});
    QCOMPARE(nobody.exit, 2);
    QVERIFY2(nobody.err.contains("The register knows no person noavk"), nobody.err.constData());
}

QTEST_GUILESS_MAIN(TstWhereUsed)
#include "tst_where_used.moc"
