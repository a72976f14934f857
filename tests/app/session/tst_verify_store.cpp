// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFileInfo>
#include <QTemporaryDir>
#include <QTest>

#include "app/session/sound.hpp"
#include "app/session/verify_store.hpp"
#include "tests/app/cli/raw_sql.hpp"
#include "tests/app/session/hangar.hpp"

using namespace Qt::StringLiterals;

/// What both programs ask when somebody verifies. Tampering with the entries themselves is in app.cli.verify.
class TstVerifyStore : public QObject {
    Q_OBJECT

    static QStringList rulesFound(const session::VerifyReport &report)
    {
        QStringList rules;
        for (const core::Fault &fault : report.faults)
            rules << fault.rule;
        return rules;
    }

private slots:
    void aSoundStoreHasNoFault()
    {
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        const auto report = session::verifyStore(hangar.store(), {});
        QVERIFY(report);
        QCOMPARE(rulesFound(*report), QStringList());
        QCOMPARE(report->ledgers.size(), 2u);
        QVERIFY(report->entries() > 4);
    }

    void aStoreWithoutRegisterIsNotSound()
    {
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        QCOMPARE(tamper(hangar.path(), u"UPDATE ledgers SET is_register = 0 WHERE is_register = 1"_s), QString());
        const auto report = session::verifyStore(hangar.store(), {});
        QVERIFY(report);
        QVERIFY(rulesFound(*report).contains(u"register.none"_s));
    }

    void aLedgerWithoutEntriesIsNotPassedOver()
    {
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        QCOMPARE(tamper(hangar.path(), u"DELETE FROM entries WHERE ledger = (SELECT id FROM ledgers WHERE is_register = 0)"_s), QString());
        const auto report = session::verifyStore(hangar.store(), {});
        QVERIFY(report);
        QCOMPARE(rulesFound(*report), QStringList{u"ledger.empty"_s});
    }

    /// The start page reads what is remembered instead of the entries.
    void whatIsRememberedOfAJobIsWhatItsEntriesSay()
    {
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        QVERIFY(hangar.session().jobs()); // remembers
        QCOMPARE(rulesFound(*session::verifyStore(hangar.store(), {})), QStringList());
        const db::SummarySource now{hangar.job(), hangar.store().head(hangar.job())->hash, hangar.session().reg().head.hash};
        core::JobSummary wrong = hangar.session().jobs()->front().summary;
        wrong.isClosed = true;
        const std::vector<db::KeptSummary> forged{{now, wrong}};
        QVERIFY(hangar.store().summaries().remember(forged)); // with its digest, as whoever has the file can write it
        QCOMPARE(rulesFound(*session::verifyStore(hangar.store(), {})), QStringList{u"store.summary"_s});
    }

    /// One job's record is not held back by what somebody did to another.
    void aRecordRestsOnItsOwnJob()
    {
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        const core::LedgerId first = hangar.job();
        QVERIFY(session::requireSound(hangar.store(), first));
        QCOMPARE(hangar.openJob(), QString());
        QVERIFY(session::requireSound(hangar.store(), hangar.job()));
        const QString ofTheFirst = u"ledger = (SELECT id FROM ledgers WHERE uuid = '%1')"_s.arg(first.text());
        QCOMPARE(tamper(hangar.path(), u"UPDATE entries SET signature = (SELECT signature FROM entries WHERE seq = 2 AND %1) WHERE seq = 3 AND %1"_s.arg(ofTheFirst)), QString());
        const auto unsound = session::requireSound(hangar.store(), first);
        QVERIFY(!unsound);
        QCOMPARE(unsound.error().code, core::ErrorCode::Damaged);
        QVERIFY2(unsound.error().message.contains(u"entry 3"), qPrintable(unsound.error().message));
        QVERIFY(session::requireSound(hangar.store(), hangar.job()));
    }

    /// A recalled tool is looked up in an index beside the entries.
    void lookUpsLeaveNothingOut_data()
    {
        QTest::addColumn<QString>("sql");
        QTest::addColumn<QStringList>("rules");
        const QStringList told{u"store.where-used"_s};
        QTest::newRow("as it was made") << QString() << QStringList();
        QTest::newRow("a use taken out") << u"DELETE FROM uses WHERE (thing, at, ledger, seq) IN (SELECT thing, at, ledger, seq FROM uses LIMIT 1)"_s << told;
        QTest::newRow("a use put in") << u"INSERT INTO uses SELECT thing, at + 1, ledger, seq, kind, entry FROM uses LIMIT 1"_s << told;
        QTest::newRow("a use on another day") << u"UPDATE uses SET at = at + 86400000 WHERE (thing, at, ledger, seq) IN (SELECT thing, at, ledger, seq FROM uses LIMIT 1)"_s << told;
        QTest::newRow("a person under another name") << u"UPDATE used_things SET value = value || 'x' WHERE sort = 'person'"_s << told;
    }

    void lookUpsLeaveNothingOut()
    {
        QFETCH(QString, sql);
        QFETCH(QStringList, rules);
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        if (!sql.isEmpty())
            QCOMPARE(tamper(hangar.path(), sql), QString());
        QCOMPARE(rulesFound(*session::verifyStore(hangar.store(), {})), rules);
    }

    /// The store's own guard: what keeps other programs from changing entries in passing.
    void aGuardThatIsGoneIsNamed_data()
    {
        QTest::addColumn<QString>("statements");
        QTest::addColumn<QString>("named");
        QTest::newRow("a trigger dropped") << u"DROP TRIGGER entries_are_never_changed"_s << u"entries_are_never_changed"_s;
        QTest::newRow("a trigger that lets through") << u"DROP TRIGGER entries_are_never_changed; CREATE TRIGGER entries_are_never_changed BEFORE UPDATE ON entries BEGIN SELECT 1; END"_s << u"entries_are_never_changed"_s;
        QTest::newRow("a trigger more") << u"CREATE TRIGGER quiet AFTER INSERT ON meta BEGIN SELECT 1; END"_s << u"quiet"_s;
        QTest::newRow("an index dropped") << u"DROP INDEX one_register"_s << u"one_register"_s;
        QTest::newRow("an index more, by which SQLite answers instead") << u"CREATE INDEX other_rows ON entries (ledger, seq, bytes, hash, signature)"_s << u"other_rows"_s;
        QTest::newRow("a table more") << u"CREATE TABLE aside (what TEXT)"_s << u"aside"_s;
        QTest::newRow("statistics of SQLite's own") << u"ANALYZE"_s << QString();
        QTest::newRow("nothing") << u"PRAGMA user_version"_s << QString();
    }
    void aGuardThatIsGoneIsNamed()
    {
        QFETCH(QString, statements);
        QFETCH(QString, named);
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        QCOMPARE(runRaw(hangar.path(), statements), QString());
        const auto report = session::verifyStore(hangar.store(), {});
        QVERIFY(report);
        QCOMPARE(rulesFound(*report), named.isEmpty() ? QStringList() : QStringList{u"store.schema"_s});
        QVERIFY(named.isEmpty() || report->faults.front().sentence.contains(named));
    }

    void aFileThatDoesNotAgreeWithItselfIsNamed()
    {
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        QCOMPARE(runRaw(hangar.path(), u"PRAGMA ignore_check_constraints = ON; UPDATE credentials SET fingerprint = x'00'"_s), QString());
        QCOMPARE(rulesFound(*session::verifyStore(hangar.store(), {})), QStringList{u"store.file"_s});
    }

    void aJobUnderAnImpossibleNameIsNotPassedOver()
    {
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        QCOMPARE(tamper(hangar.path(), u"UPDATE ledgers SET uuid = ' ' WHERE is_register = 0"_s), QString());
        const auto report = session::verifyStore(hangar.store(), {});
        QVERIFY(report);
        QCOMPARE(rulesFound(*report), QStringList{u"ledger.name"_s});
    }

    /// What was verified and remembered is compared; what is new is verified; what was changed is verified again and named.
    void verifiedBefore_data()
    {
        QTest::addColumn<bool>("goesOn");
        QTest::addColumn<QString>("tampering");
        QTest::addColumn<qint64>("takenFromBefore");
        QTest::addColumn<QStringList>("rules");
        const QString job = u"ledger = (SELECT id FROM ledgers WHERE is_register = 0)"_s;
        const QString reg = u"ledger = (SELECT id FROM ledgers WHERE is_register = 1)"_s;
        QTest::newRow("nothing happened since") << false << QString() << qint64(3) << QStringList();
        QTest::newRow("the job went on") << true << QString() << qint64(3) << QStringList();
        QTest::newRow("a signature was exchanged") << false << u"UPDATE entries SET signature = randomblob(64) WHERE seq = 2 AND "_s + job << qint64(0) << QStringList{u"ledger.signature"_s};
        QTest::newRow("a stored digest was exchanged") << false << u"UPDATE entries SET hash = randomblob(32) WHERE seq = 2 AND "_s + job << qint64(0) << QStringList{u"ledger.hash"_s};
        QTest::newRow("an old entry was changed while the job went on") << true << u"UPDATE entries SET signature = randomblob(64) WHERE seq = 2 AND "_s + job << qint64(0) << QStringList{u"ledger.signature"_s};
        QTest::newRow("the new entry was changed") << true << u"UPDATE entries SET signature = randomblob(64) WHERE seq = 4 AND "_s + job << qint64(3) << QStringList{u"ledger.signature"_s};
        QTest::newRow("the end was cut off") << false << u"DELETE FROM entries WHERE seq = 3 AND "_s + job << qint64(0) << QStringList{u"store.where-used"_s};
        QTest::newRow("the register was changed") << false << u"UPDATE entries SET signature = randomblob(64) WHERE seq = 2 AND "_s + reg << qint64(0) << QStringList{u"ledger.signature"_s};
    }

    void verifiedBefore()
    {
        QFETCH(bool, goesOn);
        QFETCH(QString, tampering);
        QFETCH(qint64, takenFromBefore);
        QFETCH(QStringList, rules);
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        QTemporaryDir folder;
        const QString file = folder.filePath(u"state/verified.json"_s);
        auto before = session::VerifiedBefore::load(file);
        session::remember(before, *session::verifyStore(hangar.store(), {}), hangar.session().now());
        QVERIFY(before.save());
        QCOMPARE(QFileInfo(file).permissions() & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions());

        if (goesOn)
            QVERIFY(hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech")));
        if (!tampering.isEmpty())
            QCOMPARE(tamper(hangar.path(), tampering), QString());
        const auto loaded = session::VerifiedBefore::load(file);
        const auto report = session::verifyStore(hangar.store(), {}, {}, &loaded);
        QVERIFY(report);
        QCOMPARE(report->entriesTakenFromBefore(), takenFromBefore);
        QCOMPARE(rulesFound(*report), rules);
        // Whoever verifies without it is told the same.
        QCOMPARE(rulesFound(*session::verifyStore(hangar.store(), {})), rules);
    }

    void faultsAreNotRemembered()
    {
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        QCOMPARE(tamper(hangar.path(), u"UPDATE entries SET signature = randomblob(64) WHERE seq = 2"_s), QString());
        QTemporaryDir folder;
        auto before = session::VerifiedBefore::load(folder.filePath(u"verified.json"_s));
        session::remember(before, *session::verifyStore(hangar.store(), {}), hangar.session().now());
        QVERIFY(!before.find(hangar.job()));
    }

    /// A file that is damaged or of another version of the program saves no time and does no harm.
    void rememberedByAnotherProgramIsNotTaken()
    {
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        QTemporaryDir folder;
        const QString path = folder.filePath(u"verified.json"_s);
        auto before = session::VerifiedBefore::load(path);
        session::remember(before, *session::verifyStore(hangar.store(), {}), hangar.session().now());
        QVERIFY(before.save());
        QVERIFY(session::VerifiedBefore::load(path).find(hangar.job()));

        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray good = file.readAll();
        file.close();
        for (const QByteArray &bad : {QByteArray(good).replace("\"program\":\"", "\"program\":\"0."), good.left(good.size() / 2), QByteArray()}) {
            QVERIFY(file.open(QIODevice::WriteOnly));
            file.write(bad);
            file.close();
            QVERIFY(!session::VerifiedBefore::load(path).find(hangar.job()));
        }
    }

    /// Many signatures are checked on several threads; each fault is named once, in the order of the entries.
    void faultsStandInOrder()
    {
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        for (int tag = 1; tag <= 300; ++tag) {
            QVERIFY(hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, QString::number(tag)),
                                                         draft("tech", u"interface.reconnected"_s, u"E1"_s, {{u"tag_recovered"_s, QString::number(tag)}, {u"blanks_removed"_s, 0}})},
                                          signer("tech")));
        }
        QCOMPARE(tamper(hangar.path(), u"UPDATE entries SET signature = randomblob(64) WHERE seq % 50 = 0"_s), QString());
        const auto report = session::verifyStore(hangar.store(), {});
        QVERIFY(report);
        QStringList seqs;
        for (const core::Fault &fault : report->faults)
            seqs << QString::number(fault.seq);
        QCOMPARE(seqs, (QStringList{u"50"_s, u"100"_s, u"150"_s, u"200"_s, u"250"_s, u"300"_s, u"350"_s, u"400"_s, u"450"_s, u"500"_s, u"550"_s, u"600"_s}));
    }

    void stoppedSaysSo()
    {
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        // Every sixteenth entry asks whether to go on.
        for (int tag = 1; tag <= 20; ++tag) {
            QVERIFY(hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, QString::number(tag))}, signer("tech")));
            QVERIFY(hangar.session().sign(hangar.job(), {draft("tech", u"interface.reconnected"_s, u"E1"_s, {{u"tag_recovered"_s, QString::number(tag)}, {u"blanks_removed"_s, 0}})}, signer("tech")));
        }
        qint64 all = 0;
        const auto report = session::verifyStore(hangar.store(), {}, [&all](qint64, qint64 of) {
            all = of;
            return false;
        });
        QVERIFY(!report);
        QCOMPARE(report.error().code, core::ErrorCode::Cancelled);
        QCOMPARE(all, session::verifyStore(hangar.store(), {})->entries());
    }
};

QTEST_GUILESS_MAIN(TstVerifyStore)
#include "tst_verify_store.moc"
