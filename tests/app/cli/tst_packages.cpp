// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

#include "tests/app/cli/program.hpp"
#include "tests/app/cli/raw_sql.hpp"
#include "tests/app/package/unpacked.hpp"

using namespace Qt::StringLiterals;

namespace {

constexpr const char *oneTorque = R"({"author":"novak","kind":"torque.applied","subject":"D6","body":{"fastener":1,"value":"3.5","unit":"N·m","tool":"TW-11"}})";
constexpr const char *anotherTorque = R"({"author":"novak","kind":"torque.applied","subject":"D6","body":{"fastener":1,"value":"3.4","unit":"N·m","tool":"TW-11"}})";

} // namespace

/// Record packages between stores: a hangar exports its job, goes on, exports again; another store takes them in and keeps them apart.
class TstPackages : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void exportSaysWhereTo();
    void openJobNeedsDraft();
    void pagesNeedTheirLibrary_data();
    void pagesNeedTheirLibrary();
    void whatWasForgedIsNotExported_data();
    void whatWasForgedIsNotExported();
    void verifyTellsPackageFromStore();
    void anotherVersionsPagesAreNotTakenForGood();
    void progressIsToldOnATerminal();
    void importIsKeptApart();
    void sameAgainIsRefused();
    void laterStateIsNamed();
    void forkIsNamed();
    void theStoresOwnJob();
    void alteredPackageIsNotImported();
    void alteredInTheStoreIsFound();

private:
    QString file(const QString &name) const { return m_folder.filePath(name); }
    Said exported(const QString &store, const QString &package, const QStringList &options = {u"--draft"_s}) const
    {
        return remateCli(QStringList{u"export"_s, file(store), u"--job"_s, u"WO-2207-14"_s, u"--package"_s, file(package)} + options);
    }
    QString goesOn(const QString &store, const char *draft) const
    {
        const Said said = remateCli({u"enter"_s, file(store), u"--job"_s, u"WO-2207-14"_s, u"--pins"_s, pinsOf(file(u"hangar.remate"_s))}, QByteArray(draft) + '\n');
        return said.exit == 0 ? QString() : QString::fromUtf8(said.err);
    }
    Said imported(const QString &package, const QString &store = u"archive.remate"_s) const { return remateCli({u"package-import"_s, file(store), file(package), u"--json"_s}); }
    qsizetype packages() const
    {
        const core::json::Object said = remateCli({u"package-list"_s, file(u"archive.remate"_s), u"--json"_s}).json();
        return static_cast<qsizetype>(said.find(u"packages")->array()->size());
    }
    /// The sentences of how it stands to what was there.
    static QStringList relationsIn(const core::json::Object &said)
    {
        QStringList sentences;
        for (const core::json::Value &one : *said.find(u"relations")->array())
            sentences << one.object()->text(u"sentence");
        return sentences;
    }
    QTemporaryDir m_folder;
};

void TstPackages::initTestCase()
{
    QCOMPARE(makeQuickDemo(file(u"hangar.remate"_s)), QString());
    QVERIFY(QFile::copy(file(u"hangar.remate"_s), file(u"forged.remate"_s)));
    QCOMPARE(makeQuickDemo(file(u"archive.remate"_s)), QString()); // another root: keys are made anew
    QCOMPARE(exported(u"hangar.remate"_s, u"first.zip"_s).exit, 0);
    QCOMPARE(goesOn(u"hangar.remate"_s, oneTorque), QString());
    QCOMPARE(exported(u"hangar.remate"_s, u"second.zip"_s).exit, 0);
    QCOMPARE(goesOn(u"forged.remate"_s, anotherTorque), QString());
    QCOMPARE(exported(u"forged.remate"_s, u"fork.zip"_s).exit, 0);
}

void TstPackages::exportSaysWhereTo()
{
    const Said neither = remateCli({u"export"_s, file(u"hangar.remate"_s), u"--job"_s, u"WO-2207-14"_s});
    QCOMPARE(neither.exit, 2);
    QVERIFY(neither.err.contains("--package"));
}

void TstPackages::openJobNeedsDraft()
{
    QCOMPARE(exported(u"hangar.remate"_s, u"open.zip"_s, {}).exit, 1);
    QVERIFY(!QFile::exists(file(u"open.zip"_s)));
}

/// A record is believed by people who cannot look into the store. Digests and chain are right here, as whoever writes the file can make them.
void TstPackages::pagesNeedTheirLibrary_data()
{
    QTest::addColumn<QString>("option");
    QTest::addRow("the pages") << u"--to"_s;
    QTest::addRow("a package, which holds them") << u"--package"_s;
}

/// The library that puts PDF together is loaded when it is needed; a computer that lost it says so, and leaves nothing half written.
void TstPackages::pagesNeedTheirLibrary()
{
    QFETCH(QString, option);
    const QTemporaryDir broken;
    for (int version = 1; version < 100; ++version)
        QVERIFY(writeFile(broken.filePath(u"libqpdf.so.%1"_s.arg(version)), {}));
    const QString target = file(u"without-library"_s);
    const QStringList arguments{u"export"_s, file(u"hangar.remate"_s), u"--job"_s, u"WO-2207-14"_s, u"--draft"_s, option, target};
    qputenv("LD_LIBRARY_PATH", broken.path().toLocal8Bit());
    const Said without = remateCli(arguments);
    qunsetenv("LD_LIBRARY_PATH");
    QCOMPARE(without.exit, 3);
    QVERIFY2(without.err.contains("Install the package libqpdf"), without.err);
    QVERIFY(!QFile::exists(target) || QDir(target).isEmpty());
    QCOMPARE(remateCli(arguments).exit, 0);
    QVERIFY(QFile::exists(target));
    QVERIFY(QFile::remove(target) || QDir(target).removeRecursively());
}

void TstPackages::whatWasForgedIsNotExported_data()
{
    QTest::addColumn<QString>("job");
    QTest::newRow("the job with the forged signature") << u"WO-2207-14"_s;
    QTest::newRow("a job that is linked with it") << u"WO-2207-15"_s;
}

void TstPackages::whatWasForgedIsNotExported()
{
    QFETCH(QString, job);
    const QString store = file(u"one-forged.remate"_s);
    if (!QFile::exists(store)) {
        QVERIFY(QFile::copy(file(u"hangar.remate"_s), store));
        const QString ofTheJob = u"ledger = (SELECT ledger FROM entries WHERE CAST(bytes AS TEXT) LIKE '%WO-2207-14%' AND seq = 1)"_s;
        QCOMPARE(tamper(store, u"UPDATE entries SET signature = (SELECT signature FROM entries WHERE seq = 2 AND %1) WHERE seq = 3 AND %1"_s.arg(ofTheJob)), QString());
    }
    const Said package = remateCli({u"export"_s, store, u"--job"_s, job, u"--draft"_s, u"--package"_s, file(u"never.zip"_s)});
    const Said pages = remateCli({u"export"_s, store, u"--job"_s, job, u"--draft"_s, u"--to"_s, file(u"never"_s)});
    QCOMPARE(package.exit, 3);
    QCOMPARE(pages.exit, 3);
    QVERIFY(!QFile::exists(file(u"never.zip"_s)));
    QVERIFY(!QFile::exists(file(u"never/record.pdf"_s)));
    QVERIFY2(package.err.contains("Nothing was written") && package.err.contains("entry 3"), package.err);
    QCOMPARE(pages.err, package.err);
}

void TstPackages::verifyTellsPackageFromStore()
{
    const Said package = remateCli({u"verify"_s, file(u"first.zip"_s), u"--json"_s});
    QCOMPARE(package.exit, 0);
    QCOMPARE(package.json().text(u"work_order"), u"WO-2207-14"_s);
    const Said store = remateCli({u"verify"_s, file(u"hangar.remate"_s), u"--json"_s});
    QCOMPARE(store.exit, 0);
    QCOMPARE(store.json().text(u"root_fingerprint"), package.json().text(u"root_fingerprint"));
    // An earlier printed record is an anchor: a later package must contain its head, an earlier one cannot.
    const QString later = remateCli({u"verify"_s, file(u"second.zip"_s), u"--json"_s}).json().text(u"head");
    QCOMPARE(remateCli({u"verify"_s, file(u"second.zip"_s), u"--head"_s, package.json().text(u"head"), u"--head"_s, later}).exit, 0);
    QCOMPARE(remateCli({u"verify"_s, file(u"first.zip"_s), u"--head"_s, later}).exit, 1);
}

/// What another version set out cannot be compared, and whoever wants an altered PDF passed over can write such a label: a script that reads the
/// exit code alone must not be told that all is good.
void TstPackages::anotherVersionsPagesAreNotTakenForGood()
{
    Unpacked bag = Unpacked::of(file(u"first.zip"_s));
    bag.replace(u"bag-info.txt"_s, "Remate-Typeset: ", "Remate-Typeset: another ");
    bag.append(u"data/record.pdf"_s, "%");
    bag.repair();
    QVERIFY(bag.pack(file(u"foreign.zip"_s)));
    const Said said = remateCli({u"verify"_s, file(u"foreign.zip"_s), u"--json"_s});
    QCOMPARE(said.exit, 4);
    QVERIFY(!said.json().isTrue(u"good"));
    QCOMPARE(said.json().texts(u"reservations").size(), 1u);
    const QByteArray told = remateCli({u"verify"_s, file(u"foreign.zip"_s)}).out;
    QVERIFY(told.contains("not everything beside it could be compared"));

    // What a label says is anybody's, and a terminal takes this for a command to write unseen.
    bag.replace(u"bag-info.txt"_s, "Remate-Typeset: another ", "Remate-Typeset: \x1b[8m");
    bag.repair();
    QVERIFY(QFile::remove(file(u"foreign.zip"_s)) && bag.pack(file(u"foreign.zip"_s)));
    const Said unseen = remateCli({u"verify"_s, file(u"foreign.zip"_s)});
    QVERIFY(unseen.exit != 0);
    QVERIFY(!unseen.out.contains('\x1b') && !unseen.err.contains('\x1b'));
}

/// On a terminal, here one of util-linux' `script`, and nowhere else: scripts read the standard error for what went wrong.
void TstPackages::progressIsToldOnATerminal()
{
    QProcess terminal;
    terminal.start(u"script"_s, {u"--quiet"_s, u"--return"_s, u"--command"_s, u"%1 verify %2"_s.arg(programPath(), file(u"first.zip"_s)), u"/dev/null"_s});
    QVERIFY(terminal.waitForFinished(60'000));
    QCOMPARE(terminal.exitCode(), 0);
    QVERIFY(terminal.readAllStandardOutput().contains("Verifying 100 %"));
    QVERIFY(!remateCli({u"verify"_s, file(u"first.zip"_s)}).err.contains('%'));
}

void TstPackages::importIsKeptApart()
{
    const QByteArray jobsBefore = remateCli({u"jobs"_s, file(u"archive.remate"_s)}).out;
    const Said said = imported(u"first.zip"_s);
    QVERIFY2(said.exit == 0, said.err.constData());
    QCOMPARE(said.json().integer(u"number"), std::optional<qint64>(1));
    QVERIFY(!said.json().isTrue(u"own_root"));
    QCOMPARE(relationsIn(said.json()), QStringList());
    QCOMPARE(packages(), 1);
    QCOMPARE(remateCli({u"jobs"_s, file(u"archive.remate"_s)}).out, jobsBefore);
    QCOMPARE(remateCli({u"verify"_s, file(u"archive.remate"_s)}).exit, 0);
    QCOMPARE(remateCli({u"package-take"_s, file(u"archive.remate"_s), u"1"_s, file(u"out.zip"_s)}).exit, 0);
    QVERIFY(contentOf(file(u"out.zip"_s)) == contentOf(file(u"first.zip"_s)));
    QCOMPARE(remateCli({u"package-take"_s, file(u"archive.remate"_s), u"2"_s, file(u"none.zip"_s)}).exit, 3);
    QVERIFY(!QFile::exists(file(u"none.zip"_s)));
}

void TstPackages::sameAgainIsRefused()
{
    QVERIFY(imported(u"first.zip"_s).exit != 0);
    // The same entries on other paper are the same job up to the same entry.
    QCOMPARE(remateCli({u"export"_s, file(u"forged.remate"_s), u"--job"_s, u"WO-2207-15"_s, u"--package"_s, file(u"shop.zip"_s), u"--draft"_s}).exit, 0);
    QCOMPARE(remateCli({u"export"_s, file(u"forged.remate"_s), u"--job"_s, u"WO-2207-15"_s, u"--package"_s, file(u"letter.zip"_s), u"--draft"_s, u"--paper"_s, u"letter"_s}).exit, 0);
    QCOMPARE(imported(u"shop.zip"_s).exit, 0);
    const Said said = imported(u"letter.zip"_s);
    QVERIFY(said.exit != 0);
    QVERIFY2(said.err.contains("imported package 2"), said.err.constData());
    QCOMPARE(packages(), 2);
}

void TstPackages::laterStateIsNamed()
{
    const Said said = imported(u"second.zip"_s);
    QVERIFY2(said.exit == 0, said.err.constData());
    QCOMPARE(relationsIn(said.json()), QStringList{u"It is a later state of imported package 1."_s});
}

void TstPackages::forkIsNamed()
{
    const Said said = imported(u"fork.zip"_s);
    QVERIFY2(said.exit == 0, said.err.constData());
    const QStringList sentences = relationsIn(said.json());
    QCOMPARE(sentences.size(), 2);
    QCOMPARE(sentences[0], u"It is a later state of imported package 1."_s);
    QVERIFY2(sentences[1].startsWith(u"FORK: from entry "_s) && sentences[1].contains(u"imported package 3"_s), qPrintable(sentences[1]));
}

void TstPackages::theStoresOwnJob()
{
    const Said same = imported(u"second.zip"_s, u"hangar.remate"_s);
    QVERIFY(same.exit != 0);
    QVERIFY2(same.err.contains("holds this job itself"), same.err.constData());
    const Said fork = imported(u"fork.zip"_s, u"hangar.remate"_s);
    QVERIFY2(fork.exit == 0, fork.err.constData());
    QVERIFY(fork.json().isTrue(u"own_root"));
    QVERIFY(relationsIn(fork.json()).value(0).contains(u"this store's own job"_s));
}

void TstPackages::alteredPackageIsNotImported()
{
    QByteArray bytes = contentOf(file(u"second.zip"_s));
    bytes[bytes.size() / 2] = static_cast<char>(bytes[bytes.size() / 2] ^ 1);
    QVERIFY(writeFile(file(u"altered.zip"_s), bytes));
    const qsizetype before = packages();
    const Said said = imported(u"altered.zip"_s);
    QCOMPARE(said.exit, 1);
    QVERIFY2(said.err.contains("does not hold"), said.err.constData());
    QCOMPARE(packages(), before);
}

void TstPackages::alteredInTheStoreIsFound()
{
    const QString store = file(u"archive.remate"_s);
    QVERIFY(!runRaw(store, u"UPDATE package_parts SET bytes = x'00'"_s).isEmpty()); // the guard
    QVERIFY(!runRaw(store, u"DELETE FROM packages"_s).isEmpty());
    QCOMPARE(tamper(store, u"UPDATE package_parts SET bytes = CAST(substr(bytes, 1, 100) || X'00' || substr(bytes, 102) AS BLOB) WHERE package = 1 AND part = 0"_s), QString());
    const Said said = remateCli({u"verify"_s, store});
    QCOMPARE(said.exit, 1);
    QVERIFY2(said.err.contains("package.digest"), said.err.constData());
    QVERIFY(remateCli({u"package-take"_s, store, u"1"_s, file(u"damaged.zip"_s)}).exit != 0);
    QVERIFY(!QFile::exists(file(u"damaged.zip"_s)));
}

QTEST_GUILESS_MAIN(TstPackages)
#include "tst_packages.moc"
