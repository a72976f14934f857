// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/layering/layers.hpp"
#include "tests/layering/source_text.hpp"

#include <QDirIterator>
#include <QFile>
#include <QtTest>

using namespace layering;

/// Reads the whole tree and names each line that leaves its layer. The samples first show that it can.
class LayersTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void takesTextApart();
    void badIncludeIsNamed_data();
    void badIncludeIsNamed();
    void badCodeIsNamed_data();
    void badCodeIsNamed();
    void badFormIsNamed_data();
    void badFormIsNamed();
    void treeKeepsItsLayers_data();
    void treeKeepsItsLayers();
    void treeKeepsItsForm();

private:
    QString read(const QString &path) const;
    QStringList filesUnder(const QString &folder, const QStringList &names) const;

    QDir m_root;
    World m_world;
};

void LayersTest::initTestCase()
{
    m_root = QDir(qEnvironmentVariable("REMATE_SOURCE_DIR"));
    QVERIFY2(m_root.exists("CMakeLists.txt"), "REMATE_SOURCE_DIR must name the root of the sources");
    m_world = {installedHeaders("QtCore"), installedHeaders("QtWidgets"),
               [this](const QString &path) { return m_root.exists(path); }};
    QVERIFY(m_world.qtCoreHeaders.contains("QString"));
    QVERIFY(m_world.qtCoreHeaders.contains("qglobal.h"));
    QVERIFY2(!m_world.qtCoreHeaders.contains("QWidget"), "a header of another module passes for Qt Core");
    QVERIFY(m_world.qtWidgetsHeaders.contains("QWidget"));
    QVERIFY2(!m_world.qtWidgetsHeaders.contains("QPageLayout"), "a header of another module passes for a widget");
}

QString LayersTest::read(const QString &path) const
{
    QFile file(m_root.filePath(path));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

QStringList LayersTest::filesUnder(const QString &folder, const QStringList &names) const
{
    QStringList paths;
    for (QDirIterator it(m_root.filePath(folder), names, QDir::Files, QDirIterator::Subdirectories); it.hasNext();)
        paths += m_root.relativeFilePath(it.next());
    paths.sort();
    return paths;
}

void LayersTest::takesTextApart()
{
    const QString text = R"x(#include <QString>
// #include <QWidget>
/* #include "db/store.hpp"
*/ #  include "core/value/id.hpp"
#include "core/value/id.hpp" // why
auto a = "x \" // not a comment"; auto b = R"(raw "inside")"; int c = 1'000; char d = '"';
)x";
    const SourceText source = takeApart(text);
    const QVector<Include> includes = {
        {1, "QString", false}, {4, "core/value/id.hpp", true}, {5, "core/value/id.hpp", true}};
    QCOMPARE(source.includes, includes);
    const QVector<Literal> literals = {{6, R"(x \" // not a comment)"}, {6, R"(raw "inside")"}};
    QCOMPARE(source.literals, literals);
    QVERIFY(!source.code.contains("not a comment"));
    QVERIFY(source.code.contains("int c = 1'000; char d ="));
    QCOMPARE(source.code.count(u'\n'), text.count(u'\n'));
}

void LayersTest::badIncludeIsNamed_data()
{
    QTest::addColumn<QString>("path");
    QTest::addColumn<QString>("line");
    QTest::addColumn<QString>("refused"); // part of the sentence; empty: allowed

    const auto row = [](const char *name, const char *path, const char *line, const char *refused) {
        QTest::newRow(name) << path << line << refused;
    };
    row("core, Qt Core", "core/a.cpp", "#include <QString>", "");
    row("core, Qt Core by module", "core/a.cpp", "#include <QtCore/QString>", "");
    row("core, a widget", "core/a.cpp", "#include <QWidget>", "core may include Qt Core");
    row("core, a widget by module", "core/a.cpp", "#include <QtWidgets/QWidget>", "core may include Qt Core");
    row("core, Qt Gui", "core/a.cpp", "#include <QColor>", "core may include Qt Core");
    row("core, Qt SQL", "core/a.cpp", "#include <QSqlDatabase>", "core may include Qt Core");
    row("core, SQLite", "core/a.cpp", "#include <sqlite3.h>", "core may include Qt Core");
    row("core, crypto", "core/a.cpp", "#include <sodium.h>", "");
    row("core, digests", "core/a.cpp", "#include <openssl/evp.h>", "");
    row("core, JSON parser", "core/a.cpp", "#include <simdjson.h>", "");
    row("core, big numbers", "core/a.cpp", "#include <boost/multiprecision/cpp_int.hpp>", "");
    row("core, another part of Boost", "core/a.cpp", "#include <boost/asio.hpp>", "core may include Qt Core");
    row("core, expected", "core/value/result.hpp", "#include <tl/expected.hpp>", "");
    row("core, expected elsewhere", "core/a.hpp", "#include <tl/expected.hpp>", "core/value/result.hpp");
    row("app, expected", "app/cli/a.hpp", "#include <tl/expected.hpp>", "core/value/result.hpp");
    row("core, standard", "core/a.cpp", "#include <optional>", "");
    row("core, log", "core/a.cpp", "#include <spdlog/spdlog.h>", "core may include Qt Core");
    row("core, a file", "core/a.cpp", "#include <QFile>", "values and pure functions");
    row("core, an object", "core/a.cpp", "#include <QtCore/QObject>", "values and pure functions");
    row("core, a standard file", "core/a.cpp", "#include <fstream>", "values and pure functions");
    row("core, core", "core/a.cpp", "#include \"core/value/result.hpp\"", "");
    row("core, db", "core/a.cpp", "#include \"db/store.hpp\"", "core may include core alone");
    row("core, app", "core/a.cpp", "#include \"app/session/session.hpp\"", "core may include core alone");
    row("core, beside itself", "core/value/a.cpp", "#include \"result.hpp\"", "no such file");
    row("core, upwards", "core/a.cpp", "#include \"../db/store.hpp\"", "no such file");
    row("db, core", "db/a.cpp", "#include \"core/value/result.hpp\"", "");
    row("db, app", "db/a.cpp", "#include \"app/session/session.hpp\"", "db may include db and core alone");
    row("db, a widget", "db/a.cpp", "#include <QMessageBox>", "db may include");
    row("db/sqlite, SQLite", "db/sqlite/a.cpp", "#include <sqlite3.h>", "");
    row("db, SQLite", "db/store.cpp", "#include <sqlite3.h>", "only db/sqlite");
    row("db, SQLite's wrapper", "db/store.cpp", "#include <SQLiteCpp/SQLiteCpp.h>", "only db/sqlite");
    row("app, core and db", "app/cli/a.cpp", "#include \"db/store.hpp\"", "");
    row("app, SQLite", "app/cli/a.cpp", "#include <sqlite3.h>", "through db");
    row("app, Qt SQL", "app/desktop/a.cpp", "#include <QSqlQuery>", "through db");
    row("app, around db", "app/cli/a.cpp", "#include \"db/sqlite/connection.hpp\"", "through db");
    row("app, its tests", "app/cli/a.cpp", "#include \"tests/support/story.hpp\"", "does not depend on its tests");
    row("desktop, a widget", "app/desktop/a.cpp", "#include <QTableView>", "");
    row("session, a widget", "app/session/a.cpp", "#include <QMessageBox>", "widgets belong");
    row("session, a dialog", "app/session/a.cpp", "#include <QtWidgets/QDialog>", "widgets belong");
    row("session, all widgets", "app/session/a.cpp", "#include <QtWidgets>", "widgets belong");
    row("record, a page's layout", "app/record/a.cpp", "#include <QPageLayout>", "");
    row("session, a string view", "app/session/a.cpp", "#include <QStringView>", "");
    row("session, the window", "app/session/a.cpp", "#include \"app/desktop/main_window.hpp\"",
        "nothing but app/desktop");
    row("desktop, the command line", "app/desktop/a.cpp", "#include \"app/cli/command.hpp\"", "nothing but app/cli");
    row("desktop, log library", "app/desktop/a.cpp", "#include <spdlog/spdlog.h>", "through app/logging");
    row("logging, log library", "app/logging/a.cpp", "#include <spdlog/spdlog.h>", "");
    row("moc output", "app/desktop/a.cpp", "#include \"a.moc\"", "");
}

void LayersTest::badIncludeIsNamed()
{
    QFETCH(QString, path);
    QFETCH(QString, line);
    QFETCH(QString, refused);

    static const QSet<QString> files = {
        "core/value/result.hpp",       "db/store.hpp",        "db/sqlite/connection.hpp", "app/session/session.hpp",
        "app/desktop/main_window.hpp", "app/cli/command.hpp", "tests/support/story.hpp"};
    const World world = {m_world.qtCoreHeaders, m_world.qtWidgetsHeaders,
                         [](const QString &name) { return files.contains(name); }};
    const QStringList faults = includeFaults(path, "\n" + line + "\n", world);
    if (refused.isEmpty()) {
        QCOMPARE(faults, QStringList());
        return;
    }
    QCOMPARE(faults.size(), 1);
    QVERIFY2(faults[0].startsWith(path + ":2: includes "), qPrintable(faults[0]));
    QVERIFY2(faults[0].contains(refused), qPrintable(faults[0]));
}

void LayersTest::badCodeIsNamed_data()
{
    QTest::addColumn<QString>("path");
    QTest::addColumn<QString>("line");
    QTest::addColumn<bool>("good");

    QTest::newRow("query in core") << "core/a.cpp"
                                   << R"(auto q = "SELECT seq FROM entries";)" << false;
    QTest::newRow("query in app") << "app/cli/a.cpp"
                                  << R"(auto q = "select seq, hash from entries where x = 1";)" << false;
    QTest::newRow("raw string") << "app/cli/a.cpp"
                                << "auto q = R\"(\n INSERT INTO entries VALUES (1))\";" << false;
    QTest::newRow("pragma") << "app/cli/a.cpp"
                            << R"(run("PRAGMA journal_mode = WAL");)" << false;
    QTest::newRow("query in db") << "db/a.cpp"
                                 << R"(auto q = "SELECT seq FROM entries";)" << true;
    QTest::newRow("plain words") << "app/desktop/a.cpp"
                                 << R"(tr("Select a person from the list");)" << true;
    QTest::newRow("comment") << "core/a.cpp"
                             << R"(// "SELECT seq FROM entries")" << true;
    QTest::newRow("clock in core") << "core/a.cpp"
                                   << "auto now = QDateTime::currentDateTimeUtc();" << false;
    QTest::newRow("clock in app") << "app/session/a.cpp"
                                  << "auto now = QDateTime::currentDateTimeUtc();" << true;
    QTest::newRow("object in core") << "core/a.hpp"
                                    << "Q_OBJECT" << false;
    QTest::newRow("clock named in a comment") << "core/a.hpp"
                                              << "/* never currentDateTime() */" << true;
}

void LayersTest::badCodeIsNamed()
{
    QFETCH(QString, path);
    QFETCH(QString, line);
    QFETCH(bool, good);
    const QStringList faults = codeFaults(path, "\n\n" + line);
    QCOMPARE(faults.isEmpty(), good);
    if (!good)
        QVERIFY2(faults[0].startsWith(path + ":3: "), qPrintable(faults[0]));
}

void LayersTest::badFormIsNamed_data()
{
    QTest::addColumn<QString>("path");
    QTest::addColumn<QString>("text");
    QTest::addColumn<bool>("good");

    const QString marks = "// SPDX-FileCopyrightText: The Remate authors\n// SPDX-License-Identifier: Apache-2.0\n";
    QTest::newRow("marked") << "core/job/fold.cpp" << marks << true;
    QTest::newRow("not marked") << "core/job/fold.cpp" << QString("int a;\n") << false;
    QTest::newRow("half marked") << "core/job/fold.cpp" << marks.section(u'\n', 0, 0) << false;
    QTest::newRow("another licence") << "core/job/fold.cpp" << QString(marks).replace("Apache-2.0", "MIT") << false;
    QTest::newRow("marked far down") << "core/job/fold.cpp"
                                     << "\n\n\n\n\n" + marks << false;
    QTest::newRow("utils") << "core/utils.cpp" << marks << false;
    QTest::newRow("folder of helpers") << "app/helpers/fold.cpp" << marks << false;
    QTest::newRow("part of a name") << "app/string_utils.hpp" << marks << false;
    QTest::newRow("a word that holds it") << "core/utilisation.hpp" << marks << true;
    QTest::newRow("glob") << "core/CMakeLists.txt" << marks + "file(GLOB sources *.cpp)" << false;
    QTest::newRow("folder-wide includes") << "core/CMakeLists.txt" << marks + "include_directories(.)" << false;
    QTest::newRow("target's includes") << "core/CMakeLists.txt" << marks + "target_include_directories(a PRIVATE .)"
                                       << true;
}

void LayersTest::badFormIsNamed()
{
    QFETCH(QString, path);
    QFETCH(QString, text);
    QFETCH(bool, good);
    const QStringList faults = formFaults(path, text);
    QVERIFY2(faults.isEmpty() == good, qPrintable(faults.join(u'\n')));
}

void LayersTest::treeKeepsItsLayers_data()
{
    QTest::addColumn<QString>("folder");
    for (const char *folder : {"core", "db", "app"})
        QTest::newRow(folder) << folder;
}

void LayersTest::treeKeepsItsLayers()
{
    QFETCH(QString, folder);
    const QStringList paths = filesUnder(folder, {"*.hpp", "*.cpp", "*.h", "*.cc", "*.cxx", "*.inl", "*.ipp"});
    QVERIFY2(!paths.isEmpty(), "nothing was read: an empty folder proves nothing");
    QStringList faults;
    for (const QString &path : paths) {
        const QString text = read(path);
        QVERIFY2(!text.isEmpty(), qPrintable(path + " is empty or cannot be read"));
        faults += includeFaults(path, text, m_world) + codeFaults(path, text);
    }
    QVERIFY2(faults.isEmpty(), qPrintable("\n" + faults.join(u'\n')));
}

void LayersTest::treeKeepsItsForm()
{
    QStringList faults;
    for (const char *folder : {"core", "db", "app", "tests", "packaging", "resources"}) {
        const QStringList names = {"*.hpp", "*.cpp", "*.sql", "*.cmake", "CMakeLists.txt", "*.sh", "*.py"};
        for (const QString &path : filesUnder(folder, names))
            faults += formFaults(path, read(path));
    }
    for (const char *path : {"CMakeLists.txt", "packaging/start", "packaging/check", ".ci/run"})
        faults += formFaults(path, read(path));
    QVERIFY2(faults.isEmpty(), qPrintable("\n" + faults.join(u'\n')));
}

QTEST_GUILESS_MAIN(LayersTest)
#include "tst_layers.moc"
