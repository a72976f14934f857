// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QDir>
#include <QProcess>
#include <QSet>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <map>

#include "app/cli/command.hpp"
#include "core/list/csv.hpp"
#include "tests/app/cli/program.hpp"

using namespace Qt::StringLiterals;

class TstCommands : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void tellsOfItself_data();
    void tellsOfItself();
    void helpNamesEveryCommand();
    void exits_data();
    void exits();
    void answersInJson_data();
    void answersInJson();
    void errorsGoToStderr();
    void linkedJobsAreShown();
    void whereUsedNamesEveryEntry();
    void timelineIsFiltered();
    void sampleIsDrawnAgain();
    void comparesByHash();
    void whereUsedIsWritten();
    void personIsFoundWhereNamed();
    void holdPointsAreNamed();
    void looseEndsAreNamed();
    void showsOneInterface();
    void listComesBack();
    void faultyListIsNotTaken();
    void exportsTheRecord();
    void backsUp();
    void neverOverwritesAStore();
    void jobMayBeNamed();

private:
    QString at(const QString &name) const { return m_folder.filePath(name); }
    /// Replaces {open}, {closed}, {folder} and so on in a command line.
    QStringList words(QString line) const
    {
        line.replace(u"{open}"_s, at(u"open.remate"_s)).replace(u"{closed}"_s, at(u"closed.remate"_s)).replace(u"{folder}"_s, m_folder.path());
        return line.split(u' ', Qt::SkipEmptyParts);
    }
    QTemporaryDir m_folder;
};

void TstCommands::initTestCase()
{
    QCOMPARE(makeDemo(at(u"open.remate"_s)), QString());
    QCOMPARE(makeDemo(at(u"closed.remate"_s), {u"--closed"_s}), QString());
    QVERIFY(writeFile(at(u"text"_s), "This is no store.\n"));
    QVERIFY(writeFile(at(u"faulty.csv"_s), "id,name,kind,zone\nQ1,Clamp,clamp,Left\nQ2,Clamp,thing,Nowhere\nQ1,,clamp,Left\n"));
}

void TstCommands::tellsOfItself_data()
{
    QTest::addColumn<QString>("name");
    for (const cli::Command &command : cli::commands())
        QTest::addRow("%s", command.name.data()) << QString(command.name);
}

void TstCommands::tellsOfItself()
{
    QFETCH(QString, name);
    const Said said = remateCli({name, u"--help"_s});
    QCOMPARE(said.exit, 0);
    QVERIFY(said.out.contains("--json"));
    for (const cli::Option &option : cli::findCommand(name)->options)
        QVERIFY2(said.out.contains(option.sort == cli::OptionSort::Position || option.sort == cli::OptionSort::Positions ? QByteArray(option.placeholder) : "--" + QString(option.name).toUtf8()), option.name.data());
    QCOMPARE(remateCli({name, u"--no-such-option"_s}).exit, 2);
}

void TstCommands::helpNamesEveryCommand()
{
    const Said said = remateCli({u"--help"_s});
    QCOMPARE(said.exit, 0);
    for (const cli::Command &command : cli::commands())
        QVERIFY2(said.out.contains(QString(command.name).toUtf8()), command.name.data());
    QCOMPARE(remateCli({u"--version"_s}).exit, 0);
}

void TstCommands::exits_data()
{
    QTest::addColumn<QString>("line");
    QTest::addColumn<int>("exit");
    QTest::addRow("jobs are listed") << u"jobs {open}"_s << 0;
    QTest::addRow("nothing is loose") << u"loose-ends {closed} --job WO-2207-14"_s << 0;
    QTest::addRow("something is loose") << u"loose-ends {open} --job WO-2207-14"_s << 1;
    QTest::addRow("all is well") << u"verify {closed}"_s << 0;
    QTest::addRow("another root") << u"verify {closed} --root 0000000000000000000000000000000000000000000000000000000000000000"_s << 1;
    QTest::addRow("an open job is not exported") << u"export {open} --job WO-2207-14 --to {folder}/no"_s << 1;
    QTest::addRow("no command") << u""_s << 2;
    QTest::addRow("unknown command") << u"close-it {open}"_s << 2;
    QTest::addRow("no store named") << u"jobs"_s << 2;
    QTest::addRow("unknown job") << u"show {open} --job WO-9"_s << 2;
    QTest::addRow("unknown interface") << u"show {open} --job WO-2207-14 --interface ZZ9"_s << 2;
    QTest::addRow("no such kind") << u"timeline {open} --job WO-2207-14 --kind torque.guessed"_s << 2;
    QTest::addRow("nobody of that id") << u"timeline {open} --job WO-2207-14 --person noavk"_s << 2;
    QTest::addRow("somebody who is known and signed nothing there") << u"timeline {open} --job WO-2207-14 --person whitlock"_s << 0;
    QTest::addRow("no such zone") << u"timeline {open} --job WO-2207-14 --zone Nowhere"_s << 2;
    QTest::addRow("a sample of nothing") << u"sample {closed} --job WO-2207-14 --count 0"_s << 2;
    QTest::addRow("compared with what is not its own") << u"compare {closed} --job WO-2207-14 --from 0000000000000000000000000000000000000000000000000000000000000000"_s << 2;
    QTest::addRow("no sheet named") << u"sheet {open} --job WO-2207-14 --to {folder}/no.pdf"_s << 2;
    QTest::addRow("two sheets at once") << u"sheet {open} --job WO-2207-14 --wall --handover --to {folder}/no.pdf"_s << 2;
    QTest::addRow("a sheet on no paper") << u"sheet {open} --job WO-2207-14 --wall --to {folder}/no.pdf --paper a3"_s << 2;
    QTest::addRow("a sheet nowhere") << u"sheet {open} --job WO-2207-14 --wall --to {folder}/no/such/folder/wall.pdf"_s << 3;
    QTest::addRow("compared backwards") << u"compare {closed} --job WO-2207-14 --from 9 --to 8"_s << 2;
    QTest::addRow("no digest") << u"verify {closed} --root abc"_s << 2;
    QTest::addRow("no paper") << u"export {closed} --job WO-2207-14 --to {folder}/no --paper a3"_s << 2;
    QTest::addRow("no store there") << u"jobs {folder}/nothing.remate"_s << 3;
    QTest::addRow("something else") << u"jobs {folder}/text"_s << 3;
    QTest::addRow("no list there") << u"list-import {open} --job WO-2207-14 {folder}/nothing.csv --by tanaka"_s << 3;
    QTest::addRow("nowhere to write") << u"list-export {open} --job WO-2207-14 --to {folder}/no/such/folder/list.csv"_s << 3;
}

void TstCommands::exits()
{
    QFETCH(QString, line);
    QFETCH(int, exit);
    const Said said = remateCli(words(line));
    QVERIFY2(said.exit == exit, said.err.constData());
    QVERIFY(said.exit == 0 || exit == 1 || !said.err.isEmpty());
}

void TstCommands::answersInJson_data()
{
    QTest::addColumn<QString>("line");
    QTest::addColumn<QString>("member");
    QTest::addRow("jobs") << u"jobs {open} --json"_s << u"jobs"_s;
    QTest::addRow("show") << u"show {open} --job WO-2207-14 --json --entries"_s << u"entries"_s;
    QTest::addRow("loose-ends") << u"loose-ends {open} --job WO-2207-14 --json"_s << u"loose_ends"_s;
    QTest::addRow("holds") << u"holds {open} --job WO-2207-14 --json"_s << u"hold_points"_s;
    QTest::addRow("holds, the standard set") << u"holds {open} --job WO-2207-14 --standard okafor --json"_s << u"drafts"_s;
    QTest::addRow("where-used") << u"where-used {closed} --tool TW-15 --kind torque.applied --json"_s << u"uses"_s;
    QTest::addRow("timeline") << u"timeline {closed} --job WO-2207-14 --json"_s << u"entries"_s;
    QTest::addRow("sample") << u"sample {closed} --job WO-2207-14 --count 2 --json"_s << u"seed"_s;
    QTest::addRow("wall sheet") << u"sheet {open} --job WO-2207-14 --wall --to {folder}/wall.pdf --json"_s << u"left_out"_s;
    QTest::addRow("handover sheet") << u"sheet {open} --job WO-2207-14 --handover --to {folder}/handover.pdf --paper letter --json"_s << u"sheet"_s;
    QTest::addRow("compare") << u"compare {closed} --job WO-2207-14 --from 100 --json"_s << u"changes"_s;
    QTest::addRow("register") << u"register {open} --json"_s << u"tools"_s;
    QTest::addRow("list-export") << u"list-export {open} --job WO-2207-14 --json"_s << u"csv"_s;
    QTest::addRow("list-import") << u"list-import {open} --job WO-2207-14 {folder}/faulty.csv --by tanaka --dry-run --json"_s << u"faults"_s;
    QTest::addRow("verify") << u"verify {open} --json"_s << u"good"_s;
    QTest::addRow("export") << u"export {closed} --job WO-2207-14 --to {folder}/json --json"_s << u"record"_s;
    QTest::addRow("backup") << u"backup {open} {folder}/json.remate --json"_s << u"entries"_s;
}

void TstCommands::answersInJson()
{
    QFETCH(QString, line);
    QFETCH(QString, member);
    const Said said = remateCli(words(line));
    QVERIFY2(said.json().contains(member), (said.out + said.err).constData());
    QCOMPARE(said.out.count('\n'), 1);
}

/// The demo's change is linked with the build-up of the engine, which waits for an inspection when the story pauses.
void TstCommands::linkedJobsAreShown()
{
    const Said text = remateCli({u"show"_s, at(u"open.remate"_s), u"--job"_s, u"WO-2207-14"_s});
    QVERIFY2(text.out.contains("WO-2207-15") && text.out.contains("1 loose end; the first: "), text.out.constData());
    const core::json::Object change = remateCli({u"show"_s, at(u"open.remate"_s), u"--job"_s, u"WO-2207-14"_s, u"--json"_s}).json();
    const core::json::Object other = *change.find(u"linked"_s)->array()->front().object();
    QCOMPARE(other.text(u"work_order"), u"WO-2207-15"_s);
    QVERIFY(other.isTrue(u"names_this_job") && other.isTrue(u"seen") && !other.isTrue(u"closed"));
    QCOMPARE(other.integer(u"loose_ends"), 1);
    const Said shop = remateCli({u"show"_s, at(u"open.remate"_s), u"--job"_s, u"WO-2207-15"_s});
    QVERIFY2(shop.out.contains("Sent to WO-2207-14 (Engine change, right nacelle)"), shop.out.constData());
    const Said loose = remateCli({u"loose-ends"_s, at(u"open.remate"_s), u"--job"_s, u"WO-2207-15"_s});
    QVERIFY2(loose.out.contains("WO-2207-14"), loose.out.constData());
    // Several jobs in a store: which is meant is said, not guessed.
    const Said unnamed = remateCli({u"show"_s, at(u"open.remate"_s)});
    QVERIFY2(unnamed.exit == 2 && unnamed.err.contains("WO-2207-15"), unnamed.err.constData());
}

void TstCommands::errorsGoToStderr()
{
    const Said said = remateCli({u"jobs"_s, at(u"nothing.remate"_s), u"--json"_s});
    QCOMPARE(said.out, QByteArray());
    const core::json::Object json = said.errorJson();
    const core::json::Value *error = json.find(u"error");
    QVERIFY2(error && error->object(), said.err.constData());
    QCOMPARE(error->object()->text(u"code"), u"not_found"_s);
}

/// A recalled wrench, over every job: the demo's mounts and the joints of its range were torqued with TW-15.
void TstCommands::whereUsedNamesEveryEntry()
{
    const auto uses = [&](const QString &more) {
        const core::json::Object json = remateCli(words(u"where-used {closed} --json "_s + more)).json();
        const core::json::Value *list = json.find(u"uses");
        return list && list->array() ? static_cast<qint64>(list->array()->size()) : -1;
    };
    const qint64 torqued = uses(u"--tool TW-15 --kind torque.applied"_s);
    QVERIFY(torqued >= 12);
    QVERIFY(uses(u"--tool TW-15"_s) > torqued); // and the register's own words on it
    QCOMPARE(uses(u"--tool TW-15 --kind torque.applied --until 2001-01-01"_s), 0);
    QCOMPARE(uses(u"--tool TW-15 --kind torque.applied --from 2001-01-01"_s), torqued);
    QCOMPARE(uses(u"--tool TW-99"_s), 0);
    QCOMPARE(remateCli(words(u"where-used {closed}"_s)).exit, 2);
    QCOMPARE(remateCli(words(u"where-used {closed} --tool TW-15 --person novak"_s)).exit, 2);
}

/// What is asked for together is found together.
void TstCommands::timelineIsFiltered()
{
    const auto found = [&](const QString &more) { return remateCli(words(u"timeline {closed} --job WO-2207-14 --json "_s + more)).json(); };
    const auto size = [](const core::json::Object &json) { return static_cast<qint64>(json.find(u"entries")->array()->size()); };
    const core::json::Object all = found({});
    QCOMPARE(size(all), all.integer(u"all").value_or(0));
    const qint64 torqued = size(found(u"--kind torque.applied"_s));
    const qint64 byNovak = size(found(u"--kind torque.applied --person novak"_s));
    QVERIFY(torqued > byNovak && byNovak > 0);
    const core::json::Object struck = found(u"--struck"_s);
    QVERIFY(size(struck) > 0);
    for (const core::json::Value &entry : *struck.find(u"entries"_s)->array())
        QVERIFY(entry.object()->text(u"standing") != u"stands");
    // In a zone is found at least that each of its interfaces was listed, and not all that was said.
    std::map<QString, qint64> zones;
    const core::json::Object job = remateCli(words(u"show {closed} --job WO-2207-14 --json"_s)).json();
    for (const core::json::Value &item : *job.find(u"interfaces"_s)->array())
        ++zones[item.object()->text(u"zone")];
    QVERIFY(zones.size() > 1);
    for (const auto &[zone, interfaces] : zones) {
        const qint64 zoned = size(remateCli(words(u"timeline {closed} --job WO-2207-14 --json"_s) + QStringList{u"--zone"_s, zone}).json());
        QVERIFY2(zoned >= interfaces && zoned < size(all), qPrintable(zone));
    }
    QCOMPARE(size(found(u"--words ZZZZZZ"_s)), 0);
    const Said text = remateCli(words(u"timeline {closed} --job WO-2207-14 --kind torque.applied --person novak"_s));
    QVERIFY2(text.out.contains(u"%1 of %2 entries"_s.arg(byNovak).arg(size(all)).toUtf8()), text.out.constData());
}

/// The seed that was made and shown draws the same again; the files hold the evidence.
void TstCommands::sampleIsDrawnAgain()
{
    const core::json::Object first = remateCli(words(u"sample {closed} --job WO-2207-14 --count 3 --csv {folder}/sample.csv --pdf {folder}/sample.pdf --json"_s)).json();
    QCOMPARE(first.text(u"seed").size(), 16);
    const core::json::Object again = remateCli(words(u"sample {closed} --job WO-2207-14 --count 3 --json --seed "_s + first.text(u"seed"))).json();
    const auto &drawn = *first.find(u"drawn")->array();
    QCOMPARE(drawn.size(), 3U);
    QVERIFY(drawn == *again.find(u"drawn")->array());
    std::size_t entries = 0;
    for (const core::json::Value &one : drawn)
        entries += one.object()->find(u"entries")->array()->size();
    QVERIFY(entries >= 9); // listed, off, on at least
    QFile file(at(u"sample.csv"_s));
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(core::csv::read(file.readAll(), u"sample.csv"_s).records.size(), entries + 1);
    QVERIFY(QFile::exists(at(u"sample.pdf"_s)));
    // Another seed, another sample: not one of a hundred thousand draws of three comes twice in a row by chance here, and the seeds are fixed.
    QVERIFY(!(*remateCli(words(u"sample {closed} --job WO-2207-14 --count 3 --json --seed one"_s)).json().find(u"drawn")->array()
              == *remateCli(words(u"sample {closed} --job WO-2207-14 --count 3 --json --seed two"_s)).json().find(u"drawn")->array()));
}

/// The hash that another command shows of an entry names the same entry.
void TstCommands::comparesByHash()
{
    const core::json::Object uses = remateCli(words(u"where-used {closed} --tool TW-15 --kind torque.applied --json"_s)).json();
    const core::json::Object &use = *uses.find(u"uses")->array()->front().object();
    const core::json::Object json = remateCli(words(u"compare {closed} --job WO-2207-14 --json --from "_s + use.text(u"hash"))).json();
    QCOMPARE(json.find(u"from")->object()->integer(u"seq"), use.integer(u"seq"));
    const auto &changes = *json.find(u"changes")->array();
    const auto added = std::count_if(changes.begin(), changes.end(), [](const core::json::Value &change) { return change.object()->text(u"part") == u"added"; });
    QCOMPARE(qint64{added}, json.find(u"to")->object()->integer(u"seq").value_or(0) - use.integer(u"seq").value_or(0));
    const Said unknown = remateCli(words(u"compare {closed} --job WO-2207-14 --from "_s + QString(64, u'a')));
    QVERIFY2(unknown.err.contains("The record with that hash is not part of this job's history"), unknown.err.constData());
}

/// All of it as CSV, and as PDF with what was asked of which store.
void TstCommands::whereUsedIsWritten()
{
    const core::json::Object json = remateCli(words(u"where-used {closed} --tool TW-15 --csv {folder}/used.csv --pdf {folder}/used.pdf --paper letter --json"_s)).json();
    QCOMPARE(json.text(u"csv"), at(u"used.csv"_s));
    const auto uses = json.find(u"uses"_s)->array()->size();
    qint64 counted = 0;
    for (const core::json::Value &job : *json.find(u"jobs"_s)->array())
        counted += job.object()->integer(u"entries").value_or(0);
    QCOMPARE(static_cast<std::size_t>(counted), uses);
    QFile file(at(u"used.csv"_s));
    QVERIFY(file.open(QIODevice::ReadOnly));
    const core::csv::Table table = core::csv::read(file.readAll(), u"used.csv"_s);
    QVERIFY(table.faults.empty());
    QCOMPARE(table.records.size(), uses + 1);
    QStringList names;
    for (const core::csv::Field &field : table.records.front().fields)
        names << field.text;
    QCOMPARE(names.join(u' '), u"work_order aircraft job ledger entry at kind subject author signed_by statement standing signature_doubt hash"_s);
    // Each hash is of an entry that was found, and the same as the store's own.
    QSet<QString> hashes;
    for (const core::json::Value &use : *json.find(u"uses"_s)->array())
        hashes.insert(use.object()->text(u"hash"));
    QCOMPARE(static_cast<std::size_t>(hashes.size()), uses);
    for (std::size_t row = 1; row < table.records.size(); ++row)
        QVERIFY(hashes.contains(table.records[row].fields.back().text));
    QVERIFY(QFile::exists(at(u"used.pdf"_s)));
    if (const QString reader = QStandardPaths::findExecutable(u"pdftotext"_s); !reader.isEmpty()) {
        QProcess process;
        process.start(reader, {u"-layout"_s, at(u"used.pdf"_s), u"-"_s});
        QVERIFY(process.waitForFinished());
        const QString text = QString::fromUtf8(process.readAllStandardOutput()).simplified();
        const QString root = remateCli(words(u"register {closed} --json"_s)).json().text(u"root_fingerprint");
        QCOMPARE(root.size(), 64);
        for (const QString &part : {u"Tool TW-15"_s, u"of all its time"_s, u"Work order WO-2207-14"_s, u"closed: entries"_s, root.left(24), *hashes.begin()})
            QVERIFY2(text.contains(part), qPrintable(part + text));
    }
    QCOMPARE(remateCli(words(u"where-used {closed} --tool TW-15 --pdf {folder}/no/such/used.pdf"_s)).exit, 3);
    QCOMPARE(remateCli(words(u"where-used {closed} --tool TW-15 --pdf {folder}/used.pdf --paper a3"_s)).exit, 2);
}

/// Who took over a shift or helped is found as well as who signed.
void TstCommands::personIsFoundWhereNamed()
{
    const auto isFound = [&](const core::json::Object &entry, const QString &person) {
        const core::json::Object json = remateCli(words(u"where-used {closed} --json --person "_s + person)).json();
        const auto *uses = json.find(u"uses")->array();
        return std::any_of(uses->begin(), uses->end(), [&](const core::json::Value &use) { return use.object()->integer(u"seq") == entry.integer(u"seq") && use.object()->text(u"kind") == entry.text(u"kind"); });
    };
    const core::json::Object job = remateCli(words(u"show {closed} --job WO-2207-14 --entries --json"_s)).json();
    int helped = 0;
    int tookOver = 0;
    for (const core::json::Value &value : *job.find(u"entries"_s)->array()) {
        const core::json::Object &entry = *value.object();
        const core::json::Object &body = *entry.find(u"body"_s)->object();
        if (entry.text(u"kind") == u"handover.given" && ++tookOver)
            QVERIFY(isFound(entry, body.text(u"to")));
        if (const std::vector<QString> helpers = body.texts(u"helpers"); !helpers.empty() && helped < 2 && ++helped)
            QVERIFY(isFound(entry, helpers.front()));
        if (entry.integer(u"seq") == 1)
            QVERIFY(isFound(entry, entry.text(u"author")));
    }
    QVERIFY(helped > 0 && tookOver > 0);
}

/// Every hold point with what it asks for; those of a closed job are all passed.
void TstCommands::holdPointsAreNamed()
{
    const Said open = remateCli({u"holds"_s, at(u"open.remate"_s), u"--job"_s, u"WO-2207-14"_s});
    QCOMPARE(open.exit, 1);
    for (const char *part : {"free  passed", "power  waits", "! Every interface (except access panel) is restored, all but the leak check.", "? Everybody is clear, told, and accounted for."})
        QVERIFY2(open.out.contains(part), (QByteArray(part) + open.out).constData());
    const Said closed = remateCli({u"holds"_s, at(u"closed.remate"_s), u"--job"_s, u"WO-2207-14"_s});
    QVERIFY2(closed.exit == 0, closed.out.constData());
}

void TstCommands::looseEndsAreNamed()
{
    const Said said = remateCli({u"loose-ends"_s, at(u"open.remate"_s), u"--job"_s, u"WO-2207-14"_s});
    for (const char *part : {"BD2", "loose.disconnected", "loose.inspection", "loose.finding", "Cleared by:"})
        QVERIFY2(said.out.contains(part), part);
}

void TstCommands::showsOneInterface()
{
    const core::json::Object json = remateCli({u"show"_s, at(u"open.remate"_s), u"--job"_s, u"WO-2207-14"_s, u"--interface"_s, u"BD2"_s, u"--json"_s}).json();
    const core::json::Value *interfaces = json.find(u"interfaces");
    const core::json::Value *entries = json.find(u"entries");
    QVERIFY(interfaces && entries);
    QCOMPARE(interfaces->array()->size(), 1u);
    // Listed, disconnected, confirmed free, reconnected, torqued, rejected.
    QCOMPARE(entries->array()->size(), 6u);
}

void TstCommands::listComesBack()
{
    QCOMPARE(remateCli({u"list-export"_s, at(u"open.remate"_s), u"--job"_s, u"WO-2207-14"_s, u"--to"_s, at(u"list.csv"_s)}).exit, 0);
    QFile file(at(u"list.csv"_s));
    QVERIFY(file.open(QIODevice::ReadOnly));
    const Said said = remateCli({u"list-export"_s, at(u"open.remate"_s), u"--job"_s, u"WO-2207-14"_s});
    QCOMPARE(said.out.trimmed(), file.readAll().trimmed());
    QVERIFY(said.out.contains("AP1"));
    QVERIFY(!said.out.contains("on no list"));
    QVERIFY(remateCli({u"list-export"_s, at(u"open.remate"_s), u"--job"_s, u"WO-2207-14"_s, u"--lessons"_s}).out.contains(": undone, and on no list."));
}

void TstCommands::faultyListIsNotTaken()
{
    const Said said = remateCli({u"list-import"_s, at(u"open.remate"_s), u"--job"_s, u"WO-2207-14"_s, at(u"faulty.csv"_s), u"--by"_s, u"tanaka"_s});
    QCOMPARE(said.exit, 1);
    // All faults at once, each with file, row and column.
    for (const char *part : {"faulty.csv:3:3: ", "faulty.csv:3:4: ", "faulty.csv:4:1: ", "faulty.csv:4:2: "})
        QVERIFY2(said.err.contains(part), said.err.constData());
    QVERIFY(!remateCli({u"list-export"_s, at(u"open.remate"_s), u"--job"_s, u"WO-2207-14"_s}).out.contains("Q1"));
}

void TstCommands::exportsTheRecord()
{
    const Said said = remateCli({u"export"_s, at(u"closed.remate"_s), u"--job"_s, u"WO-2207-14"_s, u"--to"_s, at(u"record"_s), u"--paper"_s, u"letter"_s});
    QVERIFY2(said.exit == 0, said.err.constData());
    QFile pdf(at(u"record/record.pdf"_s));
    QVERIFY(pdf.open(QIODevice::ReadOnly));
    QVERIFY(pdf.read(5) == "%PDF-");
    QVERIFY(QFile::exists(at(u"record/interfaces.csv"_s)));
    QCOMPARE(remateCli({u"export"_s, at(u"open.remate"_s), u"--job"_s, u"WO-2207-14"_s, u"--to"_s, at(u"draft"_s), u"--draft"_s}).exit, 0);
}

void TstCommands::backsUp()
{
    const QStringList line{u"backup"_s, at(u"closed.remate"_s), at(u"copy.remate"_s)};
    QCOMPARE(remateCli(line).exit, 0);
    QCOMPARE(remateCli({u"verify"_s, at(u"copy.remate"_s)}).exit, 0);
    QCOMPARE(remateCli(line).exit, 2);
    QCOMPARE(remateCli(line + QStringList{u"--overwrite"_s}).exit, 0);
}

void TstCommands::neverOverwritesAStore()
{
    QVERIFY(remateCli({u"demo"_s, at(u"closed.remate"_s)}).exit != 0);
    QCOMPARE(remateCli({u"verify"_s, at(u"closed.remate"_s)}).exit, 0);
    QVERIFY(remateCli({u"demo"_s, at(u"text"_s)}).exit != 0);
    QFile text(at(u"text"_s));
    QVERIFY(text.open(QIODevice::ReadOnly));
    QCOMPARE(text.readAll(), QByteArray("This is no store.\n"));
}

void TstCommands::jobMayBeNamed()
{
    const core::json::Object json = remateCli({u"show"_s, at(u"open.remate"_s), u"--job"_s, u"WO-2207-14"_s, u"--json"_s}).json();
    const QString ledger = json.find(u"job") ? json.find(u"job")->object()->text(u"ledger") : QString();
    QVERIFY(!ledger.isEmpty());
    QCOMPARE(remateCli({u"show"_s, at(u"open.remate"_s), u"--job"_s, ledger}).exit, 0);
}

QTEST_GUILESS_MAIN(TstCommands)
#include "tst_commands.moc"
