// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "tests/app/session/hangar.hpp"

using namespace Qt::StringLiterals;

class TstPeople : public QObject {
    Q_OBJECT

private slots:
    void rootFoundsTheRegister();
    void registerIsFoundedOnce();
    void enrolledPersonSigns();
    void onlyAnAdministratorEnrols();
    void idIsNeverGivenTwice();
    void shortSecretIsRefused();
    void wrongAdministratorSecretLeavesNothing();
    void replacedKeySignsFromThenOn();
    void changedSecretOpensTheSameKey();
    void authorisationNumbersAreNew();
};

void TstPeople::rootFoundsTheRegister()
{
    Hangar hangar;
    QCOMPARE(hangar.trouble(), QString());
    const core::Register &reg = hangar.session().reg();
    QCOMPARE(reg.organisation, u"Hangar"_s);
    QCOMPARE(reg.root, std::optional(person("root")));
    QCOMPARE(reg.people.size(), 3u);
    const auto first = hangar.store().read(*reg.ledger);
    QVERIFY(first);
    QCOMPARE(reg.fingerprint, core::Digest::of(first->front().bytes));
}

void TstPeople::registerIsFoundedOnce()
{
    Hangar hangar;
    const auto again = session::found(hangar.session(), u"Other"_s, {person("other"), u"Other"_s, u"654321"_s, {}});
    QVERIFY(!again);
    QCOMPARE(again.error().error.code, core::ErrorCode::BadInput);
}

void TstPeople::enrolledPersonSigns()
{
    Hangar hangar;
    QVERIFY(session::enrol(hangar.session(), {person("new"), u"New"_s, u"654321"_s, u"Seen"_s}, signer("root")));
    QVERIFY(hangar.session().unlock({person("new"), u"654321"_s}));
}

void TstPeople::onlyAnAdministratorEnrols()
{
    Hangar hangar;
    const auto enrolled = session::enrol(hangar.session(), {person("new"), u"New"_s, u"654321"_s, u"Seen"_s}, signer("tech"));
    QVERIFY(!enrolled);
    QCOMPARE(rulesOf(enrolled.error()), QStringList{u"0 register.administrator"_s});
}

void TstPeople::idIsNeverGivenTwice()
{
    Hangar hangar;
    const auto enrolled = session::enrol(hangar.session(), {person("tech"), u"New"_s, u"654321"_s, u"Seen"_s}, signer("root"));
    QVERIFY(!enrolled);
    QCOMPARE(rulesOf(enrolled.error()), QStringList{u"0 person.new"_s});
    // And whoever has the id can still sign.
    QVERIFY(hangar.session().unlock(signer("tech")));
}

void TstPeople::shortSecretIsRefused()
{
    Hangar hangar;
    const auto enrolled = session::enrol(hangar.session(), {person("new"), u"New"_s, u"54321"_s, u"Seen"_s}, signer("root"));
    QVERIFY(!enrolled);
    QCOMPARE(enrolled.error().error.code, core::ErrorCode::BadInput);
    QVERIFY(session::enrol(hangar.session(), {person("new"), u"New"_s, u"654321"_s, u"Seen"_s}, signer("root")));
}

void TstPeople::wrongAdministratorSecretLeavesNothing()
{
    Hangar hangar;
    const qint64 before = hangar.session().reg().head.seq;
    const auto enrolled = session::enrol(hangar.session(), {person("new"), u"New"_s, u"654321"_s, u"Seen"_s}, {person("root"), u"quite wrong"_s});
    QVERIFY(!enrolled);
    QCOMPARE(enrolled.error().error.code, core::ErrorCode::WrongSecret);
    QVERIFY(hangar.session().refresh());
    QCOMPARE(hangar.session().reg().head.seq, before);
}

void TstPeople::replacedKeySignsFromThenOn()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    const auto old = hangar.session().unlock(signer("tech"));
    QVERIFY(old);
    QVERIFY(session::replaceKey(hangar.session(), person("tech"), u"new-secret"_s, u"PIN forgotten"_s, signer("root")));
    QVERIFY(!hangar.session().unlock(signer("tech")));
    QVERIFY(!hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, *old));
    QVERIFY(hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, {person("tech"), u"new-secret"_s}));
    QCOMPARE(hangar.session().reg().person(person("tech"))->formerKeys, std::vector{old->publicKey()});
}

void TstPeople::changedSecretOpensTheSameKey()
{
    Hangar hangar;
    const qint64 before = hangar.session().reg().head.seq;
    QVERIFY(!session::changeSecret(hangar.session(), signer("tech"), u"short"_s));
    QVERIFY(session::changeSecret(hangar.session(), signer("tech"), u"new-secret"_s));
    QVERIFY(!hangar.session().unlock(signer("tech")));
    const auto key = hangar.session().unlock({person("tech"), u"new-secret"_s});
    QVERIFY(key);
    QCOMPARE(key->publicKey(), hangar.session().reg().person(person("tech"))->key);
    QVERIFY(hangar.session().refresh());
    QCOMPARE(hangar.session().reg().head.seq, before);
}

void TstPeople::authorisationNumbersAreNew()
{
    Hangar hangar;
    QCOMPARE(session::nextAuthorisation(hangar.session().reg()).text(), u"A4"_s);
    QCOMPARE(session::nextAuthorisation({}).text(), u"A1"_s);
}

QTEST_GUILESS_MAIN(TstPeople)
#include "tst_people.moc"
