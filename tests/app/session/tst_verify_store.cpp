// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

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

    void aJobUnderAnImpossibleNameIsNotPassedOver()
    {
        Hangar hangar;
        QCOMPARE(hangar.openJob(), QString());
        QCOMPARE(tamper(hangar.path(), u"UPDATE ledgers SET uuid = ' ' WHERE is_register = 0"_s), QString());
        const auto report = session::verifyStore(hangar.store(), {});
        QVERIFY(report);
        QCOMPARE(rulesFound(*report), QStringList{u"ledger.name"_s});
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
