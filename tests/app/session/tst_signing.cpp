// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "app/session/rehearsal.hpp"
#include "core/job/stage.hpp"
#include "app/session/verify_store.hpp"
#include "tests/app/cli/raw_sql.hpp"
#include "tests/app/session/hangar.hpp"

using namespace Qt::StringLiterals;
using namespace std::chrono_literals;

class TstSigning : public QObject {
    Q_OBJECT

private slots:
    void draftBecomesEntry();
    void refusedDraftIsNotWritten();
    void severalDraftsAllOrNothing();
    void laterDraftsSeeEarlierOnes();
    void refusedDraftCostsNoAttempt();
    void wrongSecretIsSlowedDown();
    void nobodySignsForAnother();
    void oneSignatureIsOnePersons();
    void headMovedMeanwhile();
    void headMovedAndRuleSaysNoNow();
    void registerMovedMeanwhile();
    void entriesOfOthersAppear();
    void signingKeepsChangesForTheScreen();
    void clockBehindByALittle();
    void clockRunsBack();
    void registerComesAfterWhatTheJobsHold_data();
    void registerComesAfterWhatTheJobsHold();
    void jobComesAfterTheRegisterThatItKnows();
    void signsByTheRuleOfIdentity();
    void askSaysWhatSigningWouldSay();
    void rehearsalWritesNothing();
    void attachmentIsKeptBeforeItIsNamed();
    void readOnlyStore();
    void damagedStoreIsNotWorkedIn();
    void startPageIsRemembered();
};

void TstSigning::draftBecomesEntry()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    hangar.pass(90s);
    const auto entries = hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech"));
    QVERIFY(entries);
    const core::Statement &said = entries->front().said;
    QCOMPARE(said.seq, 4);
    QCOMPARE(said.at.text(), u"2026-03-02T08:01:30.000Z"_s);
    QCOMPARE(said.author, person("tech"));
    QCOMPARE(said.meaning, u"performed"_s);
    QCOMPARE(said.reg, std::optional(hangar.session().reg().head));
    QCOMPARE(said.key, hangar.session().reg().person(person("tech"))->key.fingerprint());
    QVERIFY(core::isSignedBy(hangar.session().reg().person(person("tech"))->key, entries->front().bytes, entries->front().signature));
    QCOMPARE(core::stageOf(hangar.session().state()->items.front()), core::Stage::Disconnected);
}

void TstSigning::refusedDraftIsNotWritten()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    const auto entries = hangar.session().sign(hangar.job(), {undone("tech", u"E9"_s, u"1"_s)}, signer("tech"));
    QVERIFY(!entries);
    QCOMPARE(entries.error().error.code, core::ErrorCode::Refused);
    QCOMPARE(rulesOf(entries.error()), QStringList{u"0 sequence.listed"_s});
    QCOMPARE(hangar.store().head(hangar.job())->seq, 3);
}

void TstSigning::severalDraftsAllOrNothing()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    const auto both = hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s), undone("tech", u"E9"_s, u"2"_s)}, signer("tech"));
    QVERIFY(!both);
    QCOMPARE(rulesOf(both.error()), QStringList{u"1 sequence.listed"_s});
    QCOMPARE(hangar.store().head(hangar.job())->seq, 3);
    const auto good = hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s), undone("tech", u"E2"_s, u"2"_s)}, signer("tech"));
    QVERIFY(good);
    QCOMPARE(good->size(), 2u);
    QCOMPARE((*good)[1].said.prev, (*good)[0].hash);
}

void TstSigning::laterDraftsSeeEarlierOnes()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    // The same tag twice under one signature: the second meets the first.
    const auto entries = hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s), undone("tech", u"E2"_s, u"1"_s)}, signer("tech"));
    QVERIFY(!entries);
    QCOMPARE(rulesOf(entries.error()), QStringList{u"1 balance.tag-unique"_s});
}

void TstSigning::refusedDraftCostsNoAttempt()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    for (int times = 0; times < 12; ++times) {
        const auto entries = hangar.session().sign(hangar.job(), {undone("tech", u"E9"_s, u"1"_s)}, {person("tech"), u"quite wrong"_s});
        QVERIFY(!entries);
        QCOMPARE(entries.error().error.code, core::ErrorCode::Refused);
    }
    QVERIFY(hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech")));
}

void TstSigning::wrongSecretIsSlowedDown()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    const auto attempt = [&](const session::Signer &who) {
        const auto entries = hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, who);
        return entries ? std::optional<core::ErrorCode>() : entries.error().error.code;
    };
    const session::Signer wrong{person("tech"), u"quite wrong"_s};
    for (int times = 0; times < 3; ++times)
        QCOMPARE(attempt(wrong), std::optional(core::ErrorCode::WrongSecret));
    // The third wrong one in a row makes even the right one wait.
    QCOMPARE(attempt(signer("tech")), std::optional(core::ErrorCode::Locked));
    QCOMPARE(hangar.store().head(hangar.job())->seq, 3);
    hangar.pass(6s);
    QCOMPARE(attempt(signer("tech")), std::optional<core::ErrorCode>());
}

void TstSigning::nobodySignsForAnother()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    const auto entries = hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("lead"));
    QVERIFY(!entries);
    QCOMPARE(entries.error().error.code, core::ErrorCode::BadInput);
    // Nor with a key of one's own under another's name.
    const auto key = hangar.session().unlock(signer("lead"));
    QVERIFY(key);
    QVERIFY(!hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, *key));
    QCOMPARE(hangar.store().head(hangar.job())->seq, 3);
}

void TstSigning::oneSignatureIsOnePersons()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    const auto entries = hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s), undone("lead", u"E2"_s, u"2"_s)}, signer("tech"));
    QVERIFY(!entries);
    QCOMPARE(entries.error().error.code, core::ErrorCode::BadInput);
}

void TstSigning::headMovedMeanwhile()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    session::Session &other = hangar.another();
    QVERIFY(other.openJob(hangar.job()));
    QVERIFY(other.sign(hangar.job(), {undone("lead", u"E2"_s, u"1"_s)}, signer("lead")));
    // This session has not looked since.
    QCOMPARE(hangar.session().state()->lines.size(), 3u);
    const auto entries = hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"2"_s)}, signer("tech"));
    QVERIFY(entries);
    QCOMPARE(entries->front().said.seq, 5);
}

void TstSigning::headMovedAndRuleSaysNoNow()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    session::Session &other = hangar.another();
    // While the secret is typed, somebody else disconnects the same thing.
    const auto entries = hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, [&] {
        const auto first = other.sign(hangar.job(), {undone("lead", u"E1"_s, u"1"_s)}, signer("lead"));
        return first ? hangar.session().unlock(signer("tech")) : core::failure(first.error().error);
    });
    QVERIFY(!entries);
    QCOMPARE(rulesOf(entries.error()), (QStringList{u"0 sequence.disconnected-once"_s, u"0 balance.tag-unique"_s}));
    QCOMPARE(hangar.store().head(hangar.job())->seq, 4);
}

void TstSigning::registerMovedMeanwhile()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    session::Session &other = hangar.another();
    const auto entries = hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, [&] {
        const auto withdrawn = other.sign(*other.reg().ledger, {session::withdrawGrantDraft(person("root"), *core::AuthorisationId::parse(u"A3"), u"Left"_s)}, signer("root"));
        return withdrawn ? hangar.session().unlock(signer("tech")) : core::failure(withdrawn.error().error);
    });
    QVERIFY(!entries);
    QCOMPARE(rulesOf(entries.error()), QStringList{u"0 crew.authorised"_s});
}

void TstSigning::entriesOfOthersAppear()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    QVERIFY(hangar.session().refresh());
    QVERIFY(hangar.session().refresh()->isNone());
    session::Session &other = hangar.another();
    const auto before = hangar.session().state();
    QVERIFY(other.sign(hangar.job(), {undone("lead", u"E1"_s, u"1"_s)}, signer("lead")));
    const auto changes = hangar.session().refresh();
    QVERIFY(changes);
    QCOMPARE(changes->jobs, std::vector{hangar.job()});
    QVERIFY(!changes->reg);
    QCOMPARE(core::stageOf(hangar.session().state()->items.front()), core::Stage::Disconnected);
    // What a screen holds does not change under it.
    QCOMPARE(core::stageOf(before->items.front()), core::Stage::Connected);
    QVERIFY(hangar.session().refresh()->isNone());
    const auto rows = hangar.session().jobs();
    QVERIFY(rows);
    QCOMPARE(rows->size(), 1u);
    QCOMPARE(rows->front().summary.byStage, (std::array<qint64, 5>{1, 1, 0, 0, 0}));
}

void TstSigning::signingKeepsChangesForTheScreen()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    QVERIFY(hangar.session().refresh());
    QVERIFY(hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech")));
    const auto changes = hangar.session().refresh();
    QVERIFY(changes);
    QCOMPARE(changes->jobs, std::vector{hangar.job()});
}

void TstSigning::clockBehindByALittle()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    const auto last = hangar.session().state()->lastAt;
    hangar.pass(-2s);
    const auto entries = hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech"));
    QVERIFY(entries);
    QCOMPARE(std::optional(entries->front().said.at), last);
}

void TstSigning::clockRunsBack()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    hangar.pass(-2001ms);
    const auto entries = hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech"));
    QVERIFY(!entries);
    QCOMPARE(rulesOf(entries.error()), QStringList{u"0 ledger.clock"_s});
}

/// An entry of a job that is later than one of the register, and does not know of it, is told as a forgery. So no computer whose clock
/// is behind may make an honest one look like that.
void TstSigning::registerComesAfterWhatTheJobsHold_data()
{
    QTest::addColumn<int>("behind"); // ms
    QTest::addColumn<QStringList>("rules");
    QTest::newRow("two seconds behind: the same moment") << 2000 << QStringList();
    QTest::newRow("more") << 2001 << QStringList{u"0 ledger.clock"_s};
}

void TstSigning::registerComesAfterWhatTheJobsHold()
{
    QFETCH(int, behind);
    QFETCH(QStringList, rules);
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    hangar.pass(1h);
    QVERIFY(hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech")));
    const auto last = hangar.session().state()->lastAt;
    hangar.pass(-std::chrono::milliseconds(behind));
    const auto entries = hangar.another().sign(*hangar.session().reg().ledger, {draft("root", u"authorisation.withdrawn"_s, u"A1"_s, {{u"reason"_s, u"Left"_s}})}, signer("root"));
    QCOMPARE(entries ? QStringList() : rulesOf(entries.error()), rules);
    if (entries)
        QCOMPARE(std::optional(entries->front().said.at), last);
    QCOMPARE(session::verifyStore(hangar.store(), {})->faults, std::vector<core::Fault>());
}

void TstSigning::jobComesAfterTheRegisterThatItKnows()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    hangar.pass(1h);
    QVERIFY(hangar.session().sign(*hangar.session().reg().ledger, {draft("root", u"authorisation.withdrawn"_s, u"A1"_s, {{u"reason"_s, u"Left"_s}})}, signer("root")));
    hangar.pass(-2001ms);
    const auto early = hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech"));
    QVERIFY(!early);
    QCOMPARE(rulesOf(early.error()), QStringList{u"0 ledger.clock"_s});
    hangar.pass(1ms);
    QVERIFY(hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech")));
}

void TstSigning::signsByTheRuleOfIdentity()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    QCOMPARE(hangar.session().currentSigner(), std::optional(person("lead")));
    QCOMPARE(hangar.session().asksOf(person("tech")), session::Asks::IdentityAndSecret);
    QVERIFY(hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech")));
    QCOMPARE(hangar.session().asksOf(person("tech")), session::Asks::SecretAlone);
    hangar.session().lock();
    QVERIFY(!hangar.session().currentSigner());
    // A signature that fails makes nobody the current signer.
    QVERIFY(!hangar.session().sign(hangar.job(), {undone("tech", u"E2"_s, u"2"_s)}, {person("tech"), u"quite wrong"_s}));
    QVERIFY(!hangar.session().currentSigner());
}

void TstSigning::askSaysWhatSigningWouldSay()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    QVERIFY(hangar.session().ask(undone("tech", u"E1"_s, u"1"_s)).empty());
    QCOMPARE(hangar.session().ask(undone("tech", u"E9"_s, u"1"_s)).front().rule, u"sequence.listed"_s);
    const core::Tool lamp{*core::ToolId::parse(u"T1"), u"Lamp"_s, std::nullopt, std::nullopt, {}, std::nullopt};
    QVERIFY(hangar.session().ask(session::toolDraft(person("root"), lamp)).empty());
    QCOMPARE(hangar.session().ask(session::toolDraft(person("tech"), lamp)).front().rule, u"register.administrator"_s);
}

void TstSigning::rehearsalWritesNothing()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    session::Rehearsal rehearsal(hangar.session());
    QVERIFY(rehearsal.take(undone("tech", u"E1"_s, u"1"_s)).empty());
    QCOMPARE(rehearsal.take(undone("tech", u"E1"_s, u"2"_s)).front().rule, u"sequence.disconnected-once"_s);
    QVERIFY(rehearsal.take(openedBy("lead")).empty());
    QCOMPARE(rehearsal.take(undone("tech", u"E1"_s, u"1"_s)).front().rule, u"sequence.listed"_s);
    QCOMPARE(hangar.store().head(hangar.job())->seq, 3);
    QCOMPARE(hangar.store().ledgers()->size(), 2u);
}

/// An entry that names what nobody holds could never be proved, and never be taken back.
void TstSigning::attachmentIsKeptBeforeItIsNamed()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    const QByteArray picture = "bytes of a picture";
    const core::json::Object body{{u"sha256"_s, core::Digest::of(picture).hex()}, {u"media_type"_s, u"image/png"_s}, {u"moment"_s, u"before"_s}};
    const core::Draft photo{person("tech"), hangar.session().now(), u"photo.attached"_s, u"E1"_s, body};
    const auto before = hangar.session().state()->lines.size();
    const auto refused = hangar.session().sign(hangar.job(), {photo}, signer("tech"));
    QVERIFY(!refused);
    QCOMPARE(refused.error().error.code, core::ErrorCode::NotFound);
    QVERIFY2(refused.error().error.message.contains(core::Digest::of(picture).hex()), qPrintable(refused.error().error.message));
    QCOMPARE(hangar.session().state()->lines.size(), before);
    QVERIFY(hangar.session().store().attachments().put(picture, u"image/png"_s));
    QVERIFY(hangar.session().sign(hangar.job(), {photo}, signer("tech")));
}

void TstSigning::readOnlyStore()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    const auto store = db::Store::open(hangar.path(), db::Access::ReadOnly);
    QVERIFY(store);
    session::Session session(**store, hangar.clock(), core::leastCost);
    QVERIFY(session.refresh());
    const auto entries = session.sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech"));
    QVERIFY(!entries);
    QCOMPARE(entries.error().error.code, core::ErrorCode::ReadOnly);
}

void TstSigning::damagedStoreIsNotWorkedIn()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    // Entry 2 is gone, so what follows hangs from nothing. This session has read it all; one that starts now has not.
    QCOMPARE(tamper(hangar.path(), u"DELETE FROM entries WHERE seq = 2 AND ledger = (SELECT id FROM ledgers WHERE is_register = 0)"_s), QString());
    session::Session &late = hangar.another();
    QVERIFY(late.openJob(hangar.job()));
    // What came before stands, what is wrong is said, and nothing is added.
    QCOMPARE(late.said().size(), 1u);
    QVERIFY(late.trouble());
    QCOMPARE(late.trouble()->code, core::ErrorCode::Damaged);
    QVERIFY2(late.trouble()->message.contains(u"Entry 3"), qPrintable(late.trouble()->message));
    QCOMPARE(late.ask(undone("tech", u"E1"_s, u"1"_s)).front().rule, u"ledger.damaged"_s);
    const auto entries = late.sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech"));
    QVERIFY(!entries);
    QCOMPARE(entries.error().error.code, core::ErrorCode::Damaged);
    // One damaged job does not hide the others.
    const auto rows = late.jobs();
    QVERIFY(rows);
    QCOMPARE(rows->size(), 1u);
    QVERIFY(rows->front().trouble);
}

void TstSigning::startPageIsRemembered()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    const auto made = hangar.session().jobs();
    QVERIFY(made);
    const db::SummarySource now{hangar.job(), hangar.store().head(hangar.job())->hash, hangar.session().reg().head.hash};
    const auto kept = hangar.store().summaries().find(now);
    QVERIFY(kept && *kept);
    QCOMPARE((*kept)->summary.interfaces, 2);
    // Another program takes it from there, and makes a new one after the next entry.
    QCOMPARE(hangar.another().jobs()->front().summary, made->front().summary);
    QVERIFY(hangar.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech")));
    QCOMPARE(hangar.another().jobs()->front().summary.byStage, (std::array<qint64, 5>{1, 1, 0, 0, 0}));
}

QTEST_GUILESS_MAIN(TstSigning)
#include "tst_signing.moc"
