// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

#include "app/package/package_writer.hpp"
#include "app/package/verify_package.hpp"
#include "app/package/zip_reader.hpp"
#include "app/session/session.hpp"
#include "core/ledger/canonical.hpp"
#include "core/ledger/seal.hpp"
#include "core/package/bag.hpp"
#include "core/package/signature_line.hpp"
#include "resources/resources.hpp"
#include "tests/app/cli/program.hpp"
#include "tests/app/package/unpacked.hpp"

using namespace Qt::StringLiterals;

/// The record package of the demo job, written, checked by common tools, and altered.
class TstPackage : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void soundPackageHasNoFault();
    void sameBytesTwice();
    void openJobIsRefusedAndMarked();
    void cancelledLeavesNothing();
    void knownFromElsewhere();
    void otherToolsSeeTheSameFiles();
    void instructionsWorkAsWritten();
    void instructionsTieAKeyToItsAuthor_data();
    void instructionsTieAKeyToItsAuthor();
    void scriptAgrees_data();
    void scriptAgrees();
    void alterationsAreNamed_data();
    void alterationsAreNamed();
    void extraFileIsNotUnpacked_data();
    void extraFileIsNotUnpacked();
    void registerReachesNoFurther();
    void secondVerifierAgrees();

private:
    QStringList rulesOf(const QString &path, const session::Known &known = {}) const;
    void poseAs(const QString &author, Unpacked &bag) const;
    QString file(const QString &name) const { return m_folder.filePath(name); }
    QTemporaryDir m_folder;
    std::optional<core::Kinds> m_kinds;
    std::optional<core::LedgerId> m_job;
    QString m_good;
};

namespace {

core::LedgerId mainJob(db::Store &store)
{
    const auto ledgers = store.ledgers();
    for (const db::StoredLedger &ledger : ledgers.value()) {
        constexpr qint64 longest = 100; // the build-up in the shop is shorter
        if (ledger.role == db::LedgerRole::Job && ledger.headSeq > longest)
            return *ledger.id();
    }
    qFatal("the demo has no long job");
}

/// A program's output, both streams; the exit code goes before it.
QString ran(const QString &program, const QStringList &arguments, const QString &folder = {})
{
    QProcess process;
    process.setWorkingDirectory(folder);
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(program, arguments);
    if (!process.waitForFinished(120'000))
        return u"%1 did not run: %2"_s.arg(program, process.errorString());
    return QString::number(process.exitCode()) + u' ' + QString::fromUtf8(process.readAll());
}

} // namespace

void TstPackage::initTestCase()
{
    QVERIFY(core::readyCryptography());
    auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    m_kinds = *std::move(kinds);
    QCOMPARE(makeDemo(file(u"demo.remate"_s), {u"--closed"_s}), QString());
    auto store = db::Store::open(file(u"demo.remate"_s), db::Access::ReadOnly);
    QVERIFY(store);
    m_job = mainJob(**store);
    m_good = file(u"good.zip"_s);
    const auto packed = package::writePackage(**store, *m_job, *m_kinds, m_good);
    QVERIFY2(packed.has_value(), packed ? "" : qPrintable(packed.error().message));
    QVERIFY(packed->isClosed && packed->entries > 600 && packed->attachments > 0);
}

QStringList TstPackage::rulesOf(const QString &path, const session::Known &known) const
{
    const auto verdict = package::verifyPackage(path, known, *m_kinds);
    if (!verdict)
        return {verdict.error().message};
    QStringList rules;
    for (const core::Fault &fault : verdict->report.faults)
        rules << fault.rule;
    for (const QString &reservation : verdict->report.reservations)
        rules << u"reservation: "_s + reservation;
    return rules;
}

void TstPackage::soundPackageHasNoFault()
{
    const auto verdict = package::verifyPackage(m_good, {}, *m_kinds);
    QVERIFY(verdict);
    QCOMPARE(rulesOf(m_good), QStringList());
    QVERIFY(verdict->about.isClosed);
    QCOMPARE(verdict->report.ledgers.size(), std::size_t(3));
    QCOMPARE(verdict->about.ledger, m_job);
}

void TstPackage::sameBytesTwice()
{
    auto store = db::Store::open(file(u"demo.remate"_s), db::Access::ReadOnly);
    QVERIFY(store);
    QTest::qSleep(1100); // a moment that got into the file would differ by now
    QVERIFY(package::writePackage(**store, *m_job, *m_kinds, file(u"again.zip"_s)));
    QVERIFY(contentOf(m_good) == contentOf(file(u"again.zip"_s)));
}

void TstPackage::openJobIsRefusedAndMarked()
{
    QCOMPARE(makeDemo(file(u"open.remate"_s)), QString());
    auto store = db::Store::open(file(u"open.remate"_s), db::Access::ReadOnly);
    QVERIFY(store);
    const core::LedgerId job = mainJob(**store);
    const auto refused = package::writePackage(**store, job, *m_kinds, file(u"open.zip"_s));
    QVERIFY(!refused && refused.error().code == core::ErrorCode::Refused);
    QVERIFY(!QFile::exists(file(u"open.zip"_s)));
    QVERIFY(package::writePackage(**store, job, *m_kinds, file(u"open.zip"_s), {.whenOpen = record::WhenOpen::MarkAsDraft}));
    const auto verdict = package::verifyPackage(file(u"open.zip"_s), {}, *m_kinds);
    QVERIFY(verdict && verdict->report.faults.empty() && !verdict->about.isClosed);
}

void TstPackage::cancelledLeavesNothing()
{
    auto store = db::Store::open(file(u"demo.remate"_s), db::Access::ReadOnly);
    QVERIFY(store);
    QDir().mkpath(file(u"empty"_s));
    for (const qint64 stopAt : {0, 1000, 2500, 3000}) {
        const auto packed = package::writePackage(**store, *m_job, *m_kinds, file(u"empty/a.zip"_s), {.going = [stopAt](qint64 done, qint64) { return done < stopAt; }});
        QVERIFY(!packed);
        QCOMPARE(packed.error().code, core::ErrorCode::Cancelled);
        QCOMPARE(QDir(file(u"empty"_s)).entryList(QDir::NoDotAndDotDot | QDir::AllEntries | QDir::Hidden), QStringList());
    }
    const auto verdict = package::verifyPackage(m_good, {}, *m_kinds, [](qint64, qint64) { return false; });
    QVERIFY(!verdict && verdict.error().code == core::ErrorCode::Cancelled);
}

void TstPackage::knownFromElsewhere()
{
    const auto verdict = package::verifyPackage(m_good, {}, *m_kinds);
    QVERIFY(verdict);
    QCOMPARE(rulesOf(m_good, {verdict->report.rootFingerprint, {verdict->about.head.hash}}), QStringList());
    QCOMPARE(rulesOf(m_good, {core::Digest::of("another"), {}}), QStringList{u"register.root"_s});
    QCOMPARE(rulesOf(m_good, {{}, {core::Digest::of("another")}}), QStringList{u"ledger.missing"_s});
}

/// Info-ZIP's unzip, a third party's reader, sees the files that the package's own reader sees, and `sha256sum` finds them as the manifests say.
void TstPackage::otherToolsSeeTheSameFiles()
{
    const Unpacked files = Unpacked::of(m_good);
    QVERIFY(files.names().size() > 12);
    QDir().mkpath(file(u"unzipped"_s));
    QVERIFY(ran(u"unzip"_s, {u"-q"_s, m_good, u"-d"_s, file(u"unzipped"_s)}).startsWith(u"0 "));
    for (const QString &name : files.names())
        QVERIFY2(contentOf(file(u"unzipped/"_s + name)) == files.bytes(name), qPrintable(name));
    const QString bag = file(u"unzipped/"_s + files.folder());
    for (const QString &manifest : {u"manifest-sha256.txt"_s, u"tagmanifest-sha256.txt"_s}) {
        const QString said = ran(u"sha256sum"_s, {u"--check"_s, u"--strict"_s, manifest}, bag);
        QVERIFY2(said.startsWith(u"0 ") && said.contains(u": OK"_s), qPrintable(said));
    }
}

namespace {

struct Typed {
    QString script; ///< stops at the first command that says no
    int commands;
};

/// The commands of the instructions, each told by its number before it answers.
Typed typedFrom(const QByteArray &instructions)
{
    Typed typed{u"set -e\n"_s, 0};
    for (const QString &line : QString::fromUtf8(instructions).split(u'\n')) {
        if (line.startsWith(u"    "_s))
            typed.script += u"echo '# %1'\n%2\n"_s.arg(++typed.commands).arg(line.trimmed());
    }
    return typed;
}

} // namespace

/// Every command of VERIFY.txt, run by a shell in the unpacked folder as an auditor would type it.
void TstPackage::instructionsWorkAsWritten()
{
    const Unpacked files = Unpacked::of(m_good);
    QDir().mkpath(file(u"typed"_s));
    QVERIFY(ran(u"unzip"_s, {u"-q"_s, m_good, u"-d"_s, file(u"typed"_s)}).startsWith(u"0 "));
    const QString bag = file(u"typed/"_s + files.folder());
    const auto [script, commands] = typedFrom(files.bytes(files.folder() + u"/data/VERIFY.txt"_s));
    QVERIFY(commands >= 16);
    const QString said = ran(u"sh"_s, {u"-c"_s, script}, bag);
    QVERIFY2(said.startsWith(u"0 "), qPrintable(said));
    const auto answerOf = [&](int command) {
        return said.section(u"# %1\n"_s.arg(command), 1, 1).section(u"# %1\n"_s.arg(command + 1), 0, 0);
    };
    const auto verdict = package::verifyPackage(m_good, {}, *m_kinds);
    QVERIFY(verdict && verdict->report.rootFingerprint);
    QVERIFY2(answerOf(1).startsWith(verdict->report.rootFingerprint->hex()), "the root");
    QVERIFY2(answerOf(2).contains(verdict->about.head.hash.hex()), "the head");
    QCOMPARE(answerOf(5), QString()); // no file that the manifest does not list
    QVERIFY2(said.contains(u"Signature Verified Successfully"_s), qPrintable(said));
    QVERIFY2(answerOf(commands).contains(u"The digests, the chain and the signatures hold."_s), qPrintable(answerOf(commands)));
}

/// The second entry, which the instructions take for their example, says that somebody else wrote it, and is signed well by who did, with their own key.
void TstPackage::poseAs(const QString &author, Unpacked &bag) const
{
    const QString path = file(u"pose.remate"_s);
    QFile::remove(path);
    QFile::copy(file(u"demo.remate"_s), path);
    auto store = db::Store::open(path, db::Access::ReadWrite).value();
    session::Session session(*store, session::systemClock());
    (void)session.refresh().value();
    const QList<QByteArray> pins = contentOf(pinsOf(file(u"demo.remate"_s))).split('\n');
    const auto pin = std::find_if(pins.begin(), pins.end(), [](const QByteArray &line) { return line.startsWith("okafor "); });
    const core::SigningKey key = session.unlock({*core::PersonId::parse(u"okafor"), QString::fromUtf8(pin->mid(7))}).value();
    QList<QByteArray> entries = bag.bytes(bag.folder() + u"/data/job.entries.jsonl"_s).split('\n');
    QList<QByteArray> signatures = bag.bytes(bag.folder() + u"/data/job.signatures.jsonl"_s).split('\n');
    core::Statement said = core::parseStatement(entries.at(1)).value();
    said.author = *core::PersonId::parse(author);
    const core::Entry entry = core::seal(said, key).value();
    entries[1] = entry.bytes;
    signatures[1] = core::signatureLine({entry.hash, said.seq, entry.signature});
    bag.put(u"data/job.entries.jsonl"_s, entries.join('\n'));
    bag.put(u"data/job.signatures.jsonl"_s, signatures.join('\n'));
    bag.repair();
}

/// A signature that fits some key of the register is not yet its author's. An earlier try's key lies about as well.
void TstPackage::instructionsTieAKeyToItsAuthor_data()
{
    QTest::addColumn<Alteration>("alteration");
    QTest::addColumn<bool>("isSound");
    QTest::addRow("as it was signed") << Alteration([](Unpacked &) {}) << true;
    QTest::addRow("another author with a key of the register") << Alteration([this](Unpacked &bag) { poseAs(u"tanaka"_s, bag); }) << false;
    QTest::addRow("an author whom the register does not know") << Alteration([this](Unpacked &bag) { poseAs(u"nobody"_s, bag); }) << false;
    QTest::addRow("a register that the entry does not name") << Alteration([](Unpacked &bag) { bag.dropLastLine(u"data/register.entries.jsonl"_s); bag.repair(); }) << false;
}

void TstPackage::instructionsTieAKeyToItsAuthor()
{
    QFETCH(Alteration, alteration);
    QFETCH(bool, isSound);
    Unpacked files = Unpacked::of(m_good);
    const auto [all, commands] = typedFrom(*package::instructions());
    const QString typed = all.section(u"echo '# %1'"_s.arg(commands), 0, 0); // not the script at the end, which finds it by itself
    // Left by a try before: the key and the signature of the sound entry.
    const QTemporaryDir folder;
    QVERIFY(files.writeTo(folder.path()));
    const QString bag = folder.filePath(files.folder());
    const QString verified = u"Signature Verified Successfully"_s;
    QVERIFY(ran(u"sh"_s, {u"-c"_s, typed}, bag).contains(verified));
    alteration(files);
    QVERIFY(files.writeTo(folder.path()));
    const QString said = ran(u"sh"_s, {u"-c"_s, typed}, bag);
    QVERIFY2(said.contains(verified) == isSound, qPrintable(said));
    QVERIFY2(said.startsWith(u"0 "_s) == isSound, qPrintable(said));
    if (isSound)
        QVERIFY2(said.contains(u"\"name\":\"Adaeze Okafor\"\n\"kind\":\"person.enrolled\"\n\"subject\":\"okafor\""_s), qPrintable(said));
}

namespace {

/// What the two other verifiers say to an alteration, the script of the package and the second one: neither has rules or pages. Each takes seconds,
/// so some are asked of the second alone, and some of neither.
enum class Script { Finds, Passes, SecondFinds, SecondPasses, NotAsked };

struct Altered {
    const char *what;
    QString rule; ///< that names it
    Alteration alteration;
    Script script;
};

const std::vector<Altered> &alterations()
{
    static const std::vector<Altered> all{
        {"a word of an entry", u"ledger.hash"_s, [](Unpacked &bag) { bag.replace(u"data/job.entries.jsonl"_s, "\"meaning\":\"performed\"", "\"meaning\":\"inspected\""); bag.repair(); }, Script::NotAsked},
        {"the same, and its digest beside it", u"ledger.signature"_s, [](Unpacked &bag) { bag.replace(u"data/job.entries.jsonl"_s, "\"meaning\":\"performed\"", "\"meaning\":\"inspected\""); bag.rehash(u"data/job"_s); bag.repair(); }, Script::Finds},
        {"the last entry cut off", u"package.labels"_s, [](Unpacked &bag) { bag.dropLastLine(u"data/job.entries.jsonl"_s); bag.dropLastLine(u"data/job.signatures.jsonl"_s); bag.repair(); }, Script::Passes},
        {"a signature without its entry", u"package.lines"_s, [](Unpacked &bag) { bag.dropLastLine(u"data/job.entries.jsonl"_s); bag.repair(); }, Script::NotAsked},
        {"every entry of the job gone", u"package.lines"_s, [](Unpacked &bag) { bag.put(u"data/job.entries.jsonl"_s, {}); bag.put(u"data/job.signatures.jsonl"_s, {}); bag.repair(); }, Script::Finds},
        {"an entry twice", u"ledger.gap"_s, [](Unpacked &bag) { bag.doubleLine(u"data/job"_s, 5); bag.repair(); }, Script::Finds},
        {"the register cut off", u"ledger.pin"_s, [](Unpacked &bag) { bag.dropLastLine(u"data/register.entries.jsonl"_s); bag.dropLastLine(u"data/register.signatures.jsonl"_s); bag.repair(); }, Script::SecondFinds},
        {"a linked job left out", u"ledger.linked-pin"_s, [](Unpacked &bag) { bag.removeAll(u"data/linked/"_s); bag.repair(); }, Script::Finds},
        {"another photo under the old name", u"attachment.digest"_s, [](Unpacked &bag) { bag.swapAttachments(); bag.repair(); }, Script::NotAsked},
        {"a photo removed", u"attachment.missing"_s, [](Unpacked &bag) { bag.removeAll(u"data/attachments/"_s); bag.repair(); }, Script::SecondFinds},
        {"an edited PDF, digests repaired", u"package.pdf"_s, [](Unpacked &bag) { bag.append(u"data/record.pdf"_s, "%"); bag.repair(); }, Script::SecondPasses},
        {"an edited CSV, digests repaired", u"package.csv"_s, [](Unpacked &bag) { bag.replace(u"data/interfaces.csv"_s, "inspected", "connected"); bag.repair(); }, Script::NotAsked},
        {"edited instructions, digests repaired", u"package.instructions"_s, [](Unpacked &bag) { bag.append(u"data/verify.py"_s, "\n"); bag.repair(); }, Script::NotAsked},
        {"edited labels, digests repaired", u"package.labels"_s, [](Unpacked &bag) { bag.replace(u"bag-info.txt"_s, "Remate-Closed: yes", "Remate-Closed: no"); bag.repair(); }, Script::NotAsked},
        {"a changed byte, digests not repaired", u"package.digest"_s, [](Unpacked &bag) { bag.append(u"data/record.pdf"_s, "%"); }, Script::NotAsked},
        {"a file put in", u"package.extra"_s, [](Unpacked &bag) { bag.put(u"data/note.txt"_s, "x"); }, Script::NotAsked},
        {"a photo that no entry names, digests repaired", u"package.extra"_s, [](Unpacked &bag) { bag.put(u"data/attachments/"_s + core::Digest::of("photo").hex() + u".bin"_s, "photo"); bag.repair(); }, Script::SecondFinds},
        {"another folder", u"package.bag"_s, [](Unpacked &bag) { bag.renameFolder(u"remate-another"_s); }, Script::NotAsked},
        {"a tag file put in", u"package.extra"_s, [](Unpacked &bag) { bag.put(u"readme.txt"_s, "x"); }, Script::SecondFinds},
        {"a file removed", u"package.missing"_s, [](Unpacked &bag) { bag.removeAll(u"data/interfaces.csv"_s); }, Script::NotAsked},
        {"another version of BagIt", u"package.bag"_s, [](Unpacked &bag) { bag.replace(u"bagit.txt"_s, "1.0", "0.9"); bag.repair(); }, Script::NotAsked},
    };
    return all;
}

} // namespace

void TstPackage::scriptAgrees_data()
{
    QTest::addColumn<Alteration>("alteration");
    QTest::addColumn<bool>("finds");
    for (const Altered &row : alterations()) {
        if (row.script == Script::Finds || row.script == Script::Passes)
            QTest::newRow(row.what) << row.alteration << (row.script == Script::Finds);
    }
}

/// The script of the package, which shares no line with the program: it must find what needs no rules.
void TstPackage::scriptAgrees()
{
    QFETCH(Alteration, alteration);
    QFETCH(bool, finds);
    Unpacked files = Unpacked::of(m_good);
    alteration(files);
    const QTemporaryDir folder;
    QVERIFY(files.writeTo(folder.path()));
    // The program's own copy: the one in the package may be what was altered.
    const QString script = folder.filePath(u"verify.py"_s);
    QVERIFY(writeFile(script, *package::script()));
    const QString said = ran(u"python3"_s, {script, folder.filePath(files.folder())});
    QVERIFY2(said.startsWith(u"0 ") != finds, qPrintable(said));
}

void TstPackage::alterationsAreNamed_data()
{
    QTest::addColumn<Alteration>("alteration");
    QTest::addColumn<QString>("rule");
    for (const Altered &row : alterations())
        QTest::newRow(row.what) << row.alteration << row.rule;
}

void TstPackage::alterationsAreNamed()
{
    QFETCH(Alteration, alteration);
    QFETCH(QString, rule);
    Unpacked files = Unpacked::of(m_good);
    alteration(files);
    const QString path = file(u"altered.zip"_s);
    QFile::remove(path);
    QVERIFY(files.pack(path));
    const QStringList rules = rulesOf(path);
    QVERIFY2(rules.contains(rule), qPrintable(rules.join(u", "_s)));
}

/// What nobody listed, or no package has, is called extra and left alone: its packed bytes do not even unpack here, and nobody notices.
void TstPackage::extraFileIsNotUnpacked_data()
{
    QTest::addColumn<QString>("path");
    QTest::addColumn<bool>("isListed");
    QTest::addColumn<QStringList>("rules");
    const QString photo = u"data/attachments/%1.bin"_s.arg(core::Digest::of("photo").hex());
    QTest::addRow("a note that is not listed") << u"data/note.txt"_s << false << QStringList{u"package.extra"_s};
    QTest::addRow("a note that is listed") << u"data/note.txt"_s << true << QStringList{u"package.extra"_s, u"package.labels"_s}; // and counted in Payload-Oxum
    QTest::addRow("a photo that is not listed") << photo << false << QStringList{u"package.extra"_s, u"attachment.digest"_s};
    QTest::addRow("a photo that is listed, so unpacked") << photo << true << QStringList{u"package.missing"_s, u"attachment.digest"_s, u"package.labels"_s};
}

void TstPackage::extraFileIsNotUnpacked()
{
    QFETCH(QString, path);
    QFETCH(bool, isListed);
    QFETCH(QStringList, rules);
    Unpacked files = Unpacked::of(m_good);
    const QByteArray words = "What nobody asked for, written down and written down once more, written down and written down.\n";
    files.put(path, words);
    if (isListed)
        files.repair();
    const QString zip = file(u"extra.zip"_s);
    QFile::remove(zip);
    QVERIFY(files.pack(zip));
    // The beginning of its packed bytes, behind its local header: 30 bytes and its name (APPNOTE.TXT of the ZIP format, 4.3.7).
    QByteArray bytes = contentOf(zip);
    const QByteArray name = (files.folder() + u'/' + path).toUtf8();
    const qsizetype at = bytes.indexOf(name) + name.size();
    QVERIFY(at > 30 && at + 8 < bytes.size());
    for (qsizetype i = at; i < at + 8; ++i)
        bytes[i] = static_cast<char>(0xff); // no block of deflate begins so (RFC 1951, 3.2.3: type 11 is reserved)
    QVERIFY(writeFile(zip, bytes));
    QCOMPARE(rulesOf(zip), rules);
}

/// What the register came to say later is true, and belongs into no package of before: one job at one head has one package.
void TstPackage::registerReachesNoFurther()
{
    const QString later = file(u"later.remate"_s);
    QVERIFY(QFile::copy(file(u"demo.remate"_s), later));
    auto store = db::Store::open(later, db::Access::ReadOnly);
    QVERIFY(store);
    const auto reg = (*store)->registerLedger();
    QVERIFY(reg && *reg);
    const auto before = (*store)->head(**reg);
    QVERIFY(before);
    const Said said = remateCli({u"tool"_s, later, u"--id"_s, u"LAMP-9"_s, u"--name"_s, u"Lamp"_s, u"--by"_s, u"rotmann"_s, u"--pins"_s, pinsOf(file(u"demo.remate"_s))});
    QVERIFY2(said.exit == 0, said.err.constData());
    const auto rows = (*store)->read(**reg, before->seq);
    QVERIFY(rows && !rows->empty());
    Unpacked files = Unpacked::of(m_good);
    for (const db::StoredEntry &row : *rows) {
        files.append(u"data/register.entries.jsonl"_s, row.bytes + '\n');
        files.append(u"data/register.signatures.jsonl"_s, core::signatureLine({*core::Digest::fromBytes(row.hash), row.seq, row.signature}) + '\n');
    }
    files.repair();
    QVERIFY(files.pack(file(u"later.zip"_s)));
    QCOMPARE(rulesOf(file(u"later.zip"_s)), QStringList{u"package.reach"_s});
}

/// A verifier in another language, written from the manual's page alone (second_verifier.pl): it says good of the good package, and names what needs neither the
/// program's rules nor its pages.
void TstPackage::secondVerifierAgrees()
{
    const QString script = qEnvironmentVariable("REMATE_SOURCE_DIR") + u"/tests/app/package/second_verifier.pl"_s;
    const auto says = [&](const QString &package, const QStringList &known = {}) { return ran(u"perl"_s, QStringList{script, package} + known); };
    const auto verdict = package::verifyPackage(m_good, {}, *m_kinds);
    QVERIFY(verdict && verdict->report.rootFingerprint);
    const QString root = verdict->report.rootFingerprint->hex();
    const QString head = verdict->about.head.hash.hex();
    const QString good = says(m_good, {u"--root"_s, root, u"--head"_s, head});
    QVERIFY2(good.startsWith(u"0 "), qPrintable(good));
    const QString another = says(m_good, {u"--root"_s, head, u"--head"_s, root.mid(1) + u'0'});
    QVERIFY2(another.contains(u"register.root"_s) && another.contains(u"ledger.missing"_s), qPrintable(another));
    const QStringList needPages{u"package.pdf"_s, u"package.csv"_s, u"package.instructions"_s};
    for (const Altered &row : alterations()) {
        if (row.script == Script::NotAsked) // slow, too
            continue;
        Unpacked files = Unpacked::of(m_good);
        row.alteration(files);
        const QString path = file(u"second.zip"_s);
        QFile::remove(path);
        QVERIFY(files.pack(path));
        const QString said = says(path);
        QVERIFY2(said.startsWith(u"0 ") == needPages.contains(row.rule), qPrintable(QString::fromUtf8(row.what) + u": "_s + said));
    }
}

int main(int argc, char **argv)
{
    const QGuiApplication app(argc, argv);
    TstPackage test;
    return QTest::qExec(&test, argc, argv);
}
#include "tst_package.moc"
