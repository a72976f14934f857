// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

#include <sys/stat.h>

#include "app/session/station.hpp"
#include "core/ledger/canonical.hpp"
#include "core/ledger/seal.hpp"
#include "db/store.hpp"
#include "tests/app/cli/program.hpp"
#include "tests/app/cli/raw_sql.hpp"

using namespace Qt::StringLiterals;

namespace {

const QString ofTheJob = u" AND ledger = (SELECT id FROM ledgers WHERE is_register = 0)"_s;
const QString ofTheRegister = u" AND ledger = (SELECT id FROM ledgers WHERE is_register = 1)"_s;

/// The faults that verify tells, `job 20 ledger.chain`.
QStringList faultsIn(const core::json::Object &answer, const QString &registerLedger)
{
    QStringList faults;
    const core::json::Value *list = answer.find(u"faults");
    for (const core::json::Value &fault : list && list->array() ? *list->array() : core::json::Array()) {
        const core::json::Object &object = *fault.object();
        const QString where = object.text(u"ledger") == registerLedger ? u"register"_s : u"job"_s;
        faults << u"%1 %2 %3"_s.arg(where).arg(object.integer(u"seq").value_or(-1)).arg(object.text(u"rule"));
    }
    return faults;
}

} // namespace

/// Whoever has the file can write anything into it. Verifying says which entry is wrong, and why.
class TstVerify : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void init();
    void soundStoreHasNoFault();
    void namesEntryAndReason_data();
    void namesEntryAndReason();
    void forgedSignature();
    void entryPutInWithoutAKey();
    void entrySignedWellButNotAllowed();
    void endCutOff();
    void sinceLast();
    void damagedJobIsShownUpToTheDamage();
    void anotherRoot();
    void textNamesEntryAndReason();
    void faultOfTheWholeNamesNoEntry();
    void whatIsNoFileIsRefused_data();
    void whatIsNoFileIsRefused();

private:
    QString store() const { return m_folder.filePath(u"now.remate"_s); }
    QStringList faults(const QStringList &options = {}) const
    {
        const Said said = remateCli(QStringList{u"verify"_s, store(), u"--json"_s} + options);
        const core::json::Object answer = said.json();
        QStringList list = faultsIn(answer, m_register);
        // The exit code and the answer must agree.
        if (said.exit != (list.isEmpty() ? 0 : 1) || answer.isTrue(u"good") != list.isEmpty())
            list << u"exit %1"_s.arg(said.exit);
        return list;
    }
    core::Statement jobStatement(qint64 seq) const
    {
        const auto said = core::parseStatement(rawValue(store(), u"SELECT bytes FROM entries WHERE seq = %1"_s.arg(seq) + ofTheJob));
        if (!said)
            qFatal("no such entry");
        return *said;
    }
    QTemporaryDir m_folder;
    QString m_register;
    qint64 m_last = 0;
};

void TstVerify::initTestCase()
{
    const QString demo = m_folder.filePath(u"demo.remate"_s);
    QCOMPARE(makeQuickDemo(demo, demo::Until::Closed), QString());
    QVERIFY(core::readyCryptography());
    m_register = QString::fromUtf8(rawValue(demo, u"SELECT uuid FROM ledgers WHERE is_register = 1"_s));
    m_last = rawValue(demo, u"SELECT CAST(max(seq) AS TEXT) FROM entries WHERE 1"_s + ofTheJob).toLongLong();
    QVERIFY(m_last > 400);
}

void TstVerify::init()
{
    QFile::remove(store());
    QVERIFY(QFile::copy(m_folder.filePath(u"demo.remate"_s), store()));
}

void TstVerify::soundStoreHasNoFault() { QCOMPARE(faults(), QStringList()); }

void TstVerify::namesEntryAndReason_data()
{
    QTest::addColumn<QString>("sql");
    QTest::addColumn<QStringList>("expected");
    const QString job = ofTheJob;
    const QString moved = u"UPDATE entries SET seq = %1 WHERE seq = %2"_s;
    const QString flipped = u"UPDATE entries SET %1 = CAST(substr(%1, 1, 10) || CASE substr(%1, 11, 1) WHEN X'00' THEN X'01' ELSE X'00' END || substr(%1, 12) AS BLOB) WHERE seq = 20"_s;
    QTest::addRow("bytes: a sound entry says something else")
        << u"UPDATE entries SET bytes = CAST(replace(CAST(bytes AS TEXT), '\"author\":\"okafor\"', '\"author\":\"tanaka\"') AS BLOB) WHERE seq = 20"_s + job
        << QStringList{u"job 20 ledger.hash"_s, u"job 20 ledger.key"_s, u"job 21 ledger.chain"_s};
    QTest::addRow("bytes: a byte that makes it unreadable") << flipped.arg(u"bytes"_s) + job << QStringList{u"job 20 ledger.form"_s, u"job 21 ledger.chain"_s};
    QTest::addRow("bytes: a blank more, so not the one spelling")
        << u"UPDATE entries SET bytes = CAST(replace(CAST(bytes AS TEXT), '\"author\":', '\"author\": ') AS BLOB) WHERE seq = 20"_s + job
        << QStringList{u"job 20 ledger.form"_s, u"job 21 ledger.chain"_s};
    QTest::addRow("hash") << flipped.arg(u"hash"_s) + job << QStringList{u"job 20 ledger.hash"_s};
    QTest::addRow("signature") << flipped.arg(u"signature"_s) + job << QStringList{u"job 20 ledger.signature"_s};
    QTest::addRow("seq: moved to the end") << moved.arg(9000).arg(20) + job << QStringList{u"job 21 ledger.gap"_s, u"job 21 ledger.chain"_s, u"job 9000 ledger.sequence"_s};
    QTest::addRow("ledger: moved from the register into the job")
        << u"UPDATE entries SET ledger = (SELECT id FROM ledgers WHERE is_register = 0), seq = 9000 WHERE seq = 35"_s + ofTheRegister
        << QStringList{u"job 9000 ledger.name"_s};
    QTest::addRow("removed") << u"DELETE FROM entries WHERE seq = 20"_s + job << QStringList{u"job 21 ledger.gap"_s, u"job 21 ledger.chain"_s};
    QTest::addRow("two swapped") << moved.arg(9000).arg(20) + job + u';' + moved.arg(20).arg(21) + job + u';' + moved.arg(21).arg(9000) + job
                                 << QStringList{u"job 20 ledger.sequence"_s, u"job 20 ledger.chain"_s, u"job 21 ledger.sequence"_s};
    QTest::addRow("register: an authorisation given to somebody else")
        << u"UPDATE entries SET bytes = CAST(replace(CAST(bytes AS TEXT), '\"person\":\"dufour\"', '\"person\":\"marchetti\"') AS BLOB) "
           "WHERE CAST(bytes AS TEXT) LIKE '%\"authority\":\"inspect\"%\"person\":\"dufour\"%'"_s + ofTheRegister
        << QStringList{};
    QTest::addRow("attachment: another picture") << u"UPDATE attachments SET bytes = X'00' WHERE id = 1"_s << QStringList{u"job 0 attachment.digest"_s};
    QTest::addRow("attachment: removed") << u"DELETE FROM attachments WHERE id = 1"_s << QStringList{};
}

void TstVerify::namesEntryAndReason()
{
    QFETCH(QString, sql);
    QFETCH(QStringList, expected);
    QCOMPARE(tamper(store(), sql), QString());
    const QStringList found = faults();
    QVERIFY(!found.isEmpty());
    for (const QString &fault : expected)
        QVERIFY2(found.contains(fault), qPrintable(fault + u" in "_s + found.join(u", "_s)));
    if (QString::fromUtf8(QTest::currentDataTag()).startsWith(u"register:"_s)) {
        QVERIFY(found.front().startsWith(u"register "_s) && found.front().endsWith(u"ledger.hash"_s));
        QVERIFY2(found.join(u' ').contains(u"inspection.authorised"_s), "who was never authorised is told, too");
    }
    if (QString::fromUtf8(QTest::currentDataTag()).startsWith(u"attachment:"_s))
        QVERIFY(found.join(u' ').contains(u"attachment.missing"_s) && !found.contains(u"job 0 attachment.missing"_s));
    QVERIFY(!found.join(u' ').contains(u"exit"_s));
}

/// Other words, with their digest made right, under a signature by a key of the forger's own.
void TstVerify::forgedSignature()
{
    const auto key = core::SigningKey::generate();
    QVERIFY(key);
    core::Statement said = jobStatement(m_last);
    said.body.set(u"statement"_s, u"Nothing was checked."_s);
    const QByteArray bytes = core::canonicalBytes(said);
    const auto signature = key->sign(bytes);
    QVERIFY(signature);
    QCOMPARE(tamper(store(), u"UPDATE entries SET bytes = ?1, hash = ?2, signature = ?3 WHERE seq = %1"_s.arg(m_last) + ofTheJob,
                    {bytes, core::Digest::of(bytes).bytes(), *signature}),
             QString());
    QCOMPARE(faults(), QStringList{u"job %1 ledger.signature"_s.arg(m_last)});
}

void TstVerify::entryPutInWithoutAKey()
{
    core::Statement said = jobStatement(m_last);
    said.prev = core::Digest::of(rawValue(store(), u"SELECT bytes FROM entries WHERE seq = %1"_s.arg(m_last) + ofTheJob));
    said.seq = m_last + 1;
    const QByteArray bytes = core::canonicalBytes(said);
    QCOMPARE(tamper(store(), u"INSERT INTO entries (ledger, seq, bytes, hash, signature) SELECT id, %1, ?1, ?2, ?3 FROM ledgers WHERE id = (SELECT id FROM ledgers WHERE is_register = 0)"_s.arg(m_last + 1),
                    {bytes, core::Digest::of(bytes).bytes(), QByteArray(64, '\0')}),
             QString());
    const QStringList found = faults();
    QVERIFY2(found.contains(u"job %1 ledger.signature"_s.arg(m_last + 1)), qPrintable(found.join(u", "_s)));
    QVERIFY2(found.contains(u"job %1 job.closed"_s.arg(m_last + 1)), qPrintable(found.join(u", "_s)));
}

/// A technician with a PIN but without manners: everything about the entry is right, except that no rule would have let it in.
void TstVerify::entrySignedWellButNotAllowed()
{
    auto opened = db::Store::open(store(), db::Access::ReadWrite);
    QVERIFY(opened);
    const core::PersonId novak = *core::PersonId::parse(u"novak");
    core::Statement said = jobStatement(m_last);
    const auto fingerprint = core::Digest::fromBytes(rawValue(store(), u"SELECT fingerprint FROM credentials WHERE person = 'novak'"_s));
    QVERIFY(fingerprint);
    const auto key = (*opened)->credentials().unlock(novak, *fingerprint, u"362478"_s, *session::stationOfThisComputer()(store()), said.at);
    QVERIFY(key);
    said.prev = core::Digest::of(rawValue(store(), u"SELECT bytes FROM entries WHERE seq = %1"_s.arg(m_last) + ofTheJob));
    said.seq = m_last + 1;
    said.author = novak;
    said.key = *fingerprint;
    said.kind = u"interface.disturbed"_s;
    said.meaning = u"recorded"_s;
    said.subject = u"M1"_s;
    said.body = {{u"reason"_s, u"After the release"_s}};
    const auto entry = core::seal(said, *key);
    QVERIFY(entry);
    QVERIFY((*opened)->close());
    QCOMPARE(tamper(store(), u"INSERT INTO entries (ledger, seq, bytes, hash, signature) SELECT id, %1, ?1, ?2, ?3 FROM ledgers WHERE id = (SELECT id FROM ledgers WHERE is_register = 0)"_s.arg(m_last + 1),
                    {entry->bytes, entry->hash.bytes(), entry->signature}),
             QString());
    const QStringList found = faults();
    QVERIFY2(found == (QStringList{u"job %1 job.closed"_s.arg(m_last + 1), u"job %1 link.closed-together"_s.arg(m_last + 1)}), qPrintable(found.join(u' ')));
}

/// Nothing inside a store can tell that its end was cut off; whoever holds a printed record can.
void TstVerify::endCutOff()
{
    const QString hash = QString::fromLatin1(rawValue(store(), u"SELECT hash FROM entries WHERE seq = %1"_s.arg(m_last) + ofTheJob).toHex());
    QCOMPARE(faults({u"--head"_s, hash}), QStringList());
    QCOMPARE(tamper(store(), u"DELETE FROM entries WHERE seq = %1"_s.arg(m_last) + ofTheJob), QString());
    QCOMPARE(faults(), QStringList{u"job 0 store.where-used"_s}); // whoever forgets the index
    QCOMPARE(tamper(store(), u"DELETE FROM uses WHERE seq = %1"_s.arg(m_last) + ofTheJob), QString());
    QCOMPARE(faults(), QStringList());
    QCOMPARE(faults({u"--head"_s, hash}), QStringList{u"job 0 ledger.missing"_s});
}

void TstVerify::sinceLast()
{
    const auto taken = [this](const QStringList &options) { return remateCli(QStringList{u"verify"_s, store(), u"--json"_s} + options).json().integer(u"verified_before"); };
    QCOMPARE(faults(), QStringList());
    QCOMPARE(taken({}), std::optional<qint64>(0)); // unless somebody asks for it, all of it is verified
    const qint64 ofBothJobs = rawValue(store(), u"SELECT CAST(count(*) AS TEXT) FROM entries WHERE ledger IN (SELECT id FROM ledgers WHERE is_register = 0)"_s).toLongLong();
    QVERIFY(ofBothJobs > m_last);
    QCOMPARE(taken({u"--since-last"_s}), std::optional<qint64>(ofBothJobs));
    QCOMPARE(tamper(store(), u"UPDATE entries SET signature = randomblob(64) WHERE seq = 20"_s + ofTheJob), QString());
    QCOMPARE(faults({u"--since-last"_s}), QStringList{u"job 20 ledger.signature"_s});
}

void TstVerify::damagedJobIsShownUpToTheDamage()
{
    QCOMPARE(tamper(store(), u"UPDATE entries SET hash = randomblob(32) WHERE seq = 20"_s + ofTheJob), QString());
    const Said shown = remateCli({u"show"_s, store(), u"--job"_s, u"WO-2207-14"_s, u"--entries"_s, u"--json"_s});
    QCOMPARE(shown.exit, 3);
    const core::json::Object told = shown.json();
    const core::json::Value *entries = told.find(u"entries");
    QVERIFY(entries && entries->array());
    QCOMPARE(entries->array()->size(), 19u);
    QVERIFY2(shown.err.contains("Entry 20 "), shown.err.constData());
    // What is half there must not pass for all of it.
    const Said refused = remateCli({u"loose-ends"_s, store(), u"--job"_s, u"WO-2207-14"_s});
    QCOMPARE(refused.exit, 3);
    QVERIFY2(refused.err.contains("Entry 20 "), refused.err.constData());
}

void TstVerify::anotherRoot()
{
    const QString root = QString::fromLatin1(rawValue(store(), u"SELECT hash FROM entries WHERE seq = 1"_s + ofTheRegister).toHex());
    QCOMPARE(faults({u"--root"_s, root}), QStringList());
    QCOMPARE(faults({u"--root"_s, QString(64, u'0')}), QStringList{u"register 1 register.root"_s});
}

void TstVerify::textNamesEntryAndReason()
{
    QCOMPARE(tamper(store(), u"DELETE FROM entries WHERE seq = 20"_s + ofTheJob), QString());
    const Said said = remateCli({u"verify"_s, store()});
    QCOMPARE(said.exit, 1);
    QVERIFY2(said.err.contains("entry 21: ledger.gap: "), said.err.constData());
}

/// The photograph is of no ledger: naming one, or an entry 0, sends people looking for what there is not.
void TstVerify::faultOfTheWholeNamesNoEntry()
{
    QCOMPARE(tamper(store(), u"UPDATE attachments SET bytes = X'00' WHERE id = 1"_s), QString());
    const Said said = remateCli({u"verify"_s, store()});
    QCOMPARE(said.exit, 1);
    QVERIFY2(said.err.startsWith("attachment.digest: "), said.err.constData());
    QVERIFY2(!said.err.contains("ledger -") && !said.err.contains("entry 0"), said.err.constData());
}

/// A pipe into which nobody writes would be waited for without end; a folder is told what to do with.
void TstVerify::whatIsNoFileIsRefused_data()
{
    QTest::addColumn<QString>("path");
    QTest::addColumn<QByteArray>("says"); ///< empty: it is a file, and verified
    const QString pipe = m_folder.filePath(u"pipe"_s);
    if (!QFile::exists(pipe))
        QCOMPARE(mkfifo(QFile::encodeName(pipe).constData(), 0600), 0);
    const QString link = m_folder.filePath(u"link"_s);
    QVERIFY(QFile::exists(link) || QFile::link(store(), link));
    QTest::addRow("file") << store() << QByteArray();
    QTest::addRow("link to a file") << link << QByteArray();
    QTest::addRow("pipe") << pipe << QByteArray("is not a store of this program");
    QTest::addRow("device") << u"/dev/zero"_s << QByteArray("is not a store of this program");
    QTest::addRow("folder") << m_folder.path() << QByteArray("VERIFY.txt");
    QTest::addRow("nothing there") << m_folder.filePath(u"nothing"_s) << QByteArray("There is no store");
}

void TstVerify::whatIsNoFileIsRefused()
{
    QFETCH(QString, path);
    QFETCH(QByteArray, says);
    const Said said = remateCli({u"verify"_s, path});
    QCOMPARE(said.exit, says.isEmpty() ? 0 : 3);
    QVERIFY2(says.isEmpty() || said.err.contains(says), said.err.constData());
}

QTEST_GUILESS_MAIN(TstVerify)
#include "tst_verify.moc"
