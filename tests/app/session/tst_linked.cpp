// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTemporaryDir>
#include <QTest>

#include "app/session/read_on.hpp"
#include "app/session/rehearsal.hpp"
#include "app/session/verify_store.hpp"
#include "core/acts/act.hpp"
#include "core/job/draft_help.hpp"
#include "core/job/linked.hpp"
#include "tests/app/cli/raw_sql.hpp"
#include "tests/app/session/hangar.hpp"

using namespace Qt::StringLiterals;
using core::json::Object;

namespace {

/// A hangar with two jobs: the change, with E1 and E2 on its list, and the build-up in the shop, with S1. An inspector who also releases.
class TwoJobs {
public:
    Hangar hangar;

    TwoJobs()
    {
        if (m_trouble = hangar.openJob(); !m_trouble.isEmpty())
            return;
        session::Session &session = hangar.session();
        note(session::enrol(session, {person("insp"), u"INSP"_s, u"insp-secret"_s, u"Seen"_s}, signer("root")));
        for (const core::Authority authority : {core::Authority::Inspect, core::Authority::Release}) {
            const session::Grant grant{.id = session::nextAuthorisation(session.reg()), .person = person("insp"), .authority = authority, .kinds = {}, .aircraftTypes = {},
                                       .from = QDate(2026, 1, 1), .until = {}, .reference = u"Letter"_s};
            note(session.sign(*session.reg().ledger, {session::grantDraft(person("root"), grant)}, signer("root")));
        }
        core::Draft opened = openedBy("lead");
        opened.body.set(u"work_order"_s, u"WO-2"_s);
        opened.body.set(u"title"_s, u"Build-up"_s);
        const auto made = session.newJob(opened, signer("lead"), {listed(u"S1"_s)});
        note(made);
        if (made)
            m_shop = made->front().said.ledger;
    }

    const QString &trouble() const { return m_trouble; }
    core::LedgerId wing() const { return hangar.job(); }
    core::LedgerId shop() const { return *m_shop; }

    static core::Draft listed(const QString &id) { return draft("lead", u"interface.listed"_s, id, {{u"name"_s, u"Clamp"_s}, {u"kind"_s, u"clamp"_s}, {u"zone"_s, u"Left"_s}}); }
    core::Draft link(const core::LedgerId &to) const { return draft("lead", u"job.linked"_s, std::nullopt, {{u"ledger"_s, to.text()}, {u"work_order"_s, to == wing() ? u"WO-1"_s : u"WO-2"_s}}); }

    /// Signs in a job; why not, when it was refused.
    QString say(const core::LedgerId &job, const core::Draft &draft)
    {
        const auto said = hangar.session().sign(job, {draft}, {draft.author, draft.author.text() + u"-secret"_s});
        return said ? QString() : said.error().error.message;
    }
    QString linkBoth()
    {
        const QString first = say(wing(), link(shop()));
        return first.isEmpty() ? say(shop(), link(wing())) : first;
    }
    QString restore(const core::LedgerId &job, const char *who, const QString &id, const QString &tag)
    {
        return say(job, draft(who, u"interface.reconnected"_s, id, {{u"tag_recovered"_s, tag}, {u"blanks_removed"_s, 0}}));
    }

    core::Entry lastOf(const core::LedgerId &job)
    {
        const auto entries = session::readEntries(hangar.store(), job);
        Q_ASSERT(entries && !entries->empty());
        return entries->back();
    }
    session::JobRow rowOf(session::Session &session, const core::LedgerId &job) const
    {
        (void)session.refresh();
        const auto rows = session.jobs();
        return *std::find_if(rows->begin(), rows->end(), [&](const session::JobRow &row) { return row.ledger == job; });
    }

    /// What the store remembers of a job at its head and the register's.
    std::optional<db::KeptSummary> remembered(const core::LedgerId &job)
    {
        return *hangar.store().summaries().find({job, hangar.store().head(job)->hash, hangar.store().head(*hangar.store().registerLedger().value())->hash});
    }

    /// Puts an entry into the store as somebody would who holds the key and keeps to no rules.
    QString forge(const core::LedgerId &job, const core::Draft &draft, std::vector<core::LinkedHead> linked)
    {
        const core::Entry last = lastOf(job);
        const auto key = hangar.session().unlock({draft.author, draft.author.text() + u"-secret"_s});
        if (!key)
            return key.error().message;
        const core::Statement said{job, last.said.seq + 1, last.said.at, draft.author, key->publicKey().fingerprint(), core::findAct(draft.kind)->meaning, draft.kind, draft.subject, draft.body,
                                   hangar.session().reg().head, last.hash, std::move(linked)};
        const auto entry = core::seal(said, *key);
        if (!entry)
            return entry.error().message;
        return tamper(hangar.path(), u"INSERT INTO entries (ledger, seq, bytes, hash, signature) VALUES ((SELECT id FROM ledgers WHERE uuid = '%1'), %2, ?1, ?2, ?3)"_s.arg(job.text()).arg(said.seq),
                      {entry->bytes, entry->hash.bytes(), entry->signature});
    }
    QStringList faults(const session::VerifiedBefore *before = nullptr)
    {
        const auto report = session::verifyStore(hangar.store(), {}, {}, before);
        QStringList found;
        for (const core::Fault &fault : report ? report->faults : std::vector<core::Fault>())
            found << u"%1 %2 %3"_s.arg(fault.ledger == wing() ? u"wing"_s : u"shop"_s).arg(fault.seq).arg(fault.rule);
        return report ? found : QStringList{report.error().message};
    }

private:
    void note(const session::Signed &done)
    {
        if (!done && m_trouble.isEmpty())
            m_trouble = done.error().error.message;
    }
    QString m_trouble;
    std::optional<core::LedgerId> m_shop;
};

} // namespace

/// Jobs of one store that are linked: what their entries pin, what each sees of the other, and what verifying says of both.
class TstLinked : public QObject {
    Q_OBJECT

private slots:
    void everyEntryPinsTheLinkedHeads()
    {
        TwoJobs two;
        QCOMPARE(two.trouble(), QString());
        QVERIFY(two.lastOf(two.wing()).said.linked.empty());
        const core::Head before = two.lastOf(two.shop()).head();
        QCOMPARE(two.say(two.wing(), two.link(two.shop())), QString());
        QCOMPARE(two.lastOf(two.wing()).said.linked, (std::vector<core::LinkedHead>{{two.shop(), before}}));
        QCOMPARE(two.say(two.shop(), undone("tech", u"S1"_s, u"1"_s)), QString());
        QVERIFY(two.lastOf(two.shop()).said.linked.empty()); // it names nobody yet
        QCOMPARE(two.say(two.wing(), undone("tech", u"E1"_s, u"1"_s)), QString());
        QCOMPARE(two.lastOf(two.wing()).said.linked.front().head, two.lastOf(two.shop()).head());
        QCOMPARE(two.say(two.wing(), draft("lead", u"entry.struck"_s, std::nullopt, {{u"entry"_s, 4}, {u"reason"_s, u"wrong job"_s}})), QString());
        QCOMPARE(two.say(two.wing(), undone("tech", u"E2"_s, u"2"_s)), QString());
        QVERIFY(two.lastOf(two.wing()).said.linked.empty());
        QCOMPARE(two.faults(), QStringList());
    }

    /// The store takes no entry that rests on another head than the linked job has.
    void linkedHeadMovedMeanwhile()
    {
        TwoJobs two;
        QCOMPARE(two.linkBoth(), QString());
        session::Session &other = two.hangar.another();
        QVERIFY(other.openJob(two.wing()));
        // While the secret is typed, somebody works in the shop.
        const auto entries = other.sign(two.wing(), {undone("tech", u"E1"_s, u"1"_s)}, [&] {
            (void)two.say(two.shop(), undone("tech", u"S1"_s, u"1"_s));
            return other.unlock(signer("tech"));
        });
        QVERIFY(entries);
        QCOMPARE(entries->front().said.linked.front().head, two.lastOf(two.shop()).head());

        const core::Entry last = two.lastOf(two.wing());
        const auto key = *other.unlock(signer("tech"));
        core::Statement said = last.said;
        said.seq = last.said.seq + 1;
        said.prev = last.hash;
        said.linked.front().head = {1, core::Digest::of("another")};
        const auto refused = two.hangar.store().append(std::vector{*core::seal(said, key)}, last.head());
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, core::ErrorCode::HeadMoved);
        said.linked = last.said.linked;
        QVERIFY(two.hangar.store().append(std::vector{*core::seal(said, key)}, last.head()));
    }

    /// What happens in one job is told to whoever looks at the other.
    void aJobSeesWhatTheOthersAre()
    {
        TwoJobs two;
        QCOMPARE(two.linkBoth(), QString());
        session::Session &screen = two.hangar.another();
        QVERIFY(screen.openJob(two.wing()));
        QVERIFY(core::seenJob(*screen.state(), two.shop()));
        QVERIFY(core::seenJob(*screen.state(), two.shop())->others.byLedger.empty());
        (void)screen.refresh();
        QVERIFY(screen.refresh()->isNone());
        QCOMPARE(two.say(two.shop(), undone("tech", u"S1"_s, u"1"_s)), QString());
        const auto changes = screen.refresh();
        QVERIFY(changes);
        QVERIFY(std::find(changes->jobs.begin(), changes->jobs.end(), two.wing()) != changes->jobs.end());
        QVERIFY(core::seenJob(*screen.state(), two.shop())->items.front().removal);
        QVERIFY(core::hadAHand(*screen.state(), core::seenJob(*screen.state(), two.shop())->items.front(), person("tech")));
    }

    /// Where a screen asks, and where drafts are tried, the job that a link names is seen before it is followed.
    void askSaysOfALinkWhatSigningWouldSay()
    {
        TwoJobs two;
        session::Session &screen = two.hangar.another();
        QVERIFY(screen.openJob(two.wing()));
        QVERIFY(screen.ask(two.link(two.shop())).empty());
        core::Draft wrong = two.link(two.shop());
        wrong.body.set(u"work_order"_s, u"WO-7"_s);
        QCOMPARE(screen.ask(wrong).front().rule, u"link.named"_s);
        QVERIFY(session::Rehearsal(screen).take(two.link(two.shop())).empty());
        wrong.body.set(u"ledger"_s, u"no-such-ledger"_s);
        QCOMPARE(screen.ask(wrong).front().rule, u"link.named"_s);
    }

    /// The line on the start page moves with the linked job.
    void theStartPageMovesWithTheOthers()
    {
        TwoJobs two;
        QCOMPARE(two.linkBoth(), QString());
        const auto looseOnWing = [&two](session::Session &session) { return two.rowOf(session, two.wing()).summary.looseEnds; };
        session::Session &screen = two.hangar.another();
        QCOMPARE(looseOnWing(screen), 3); // E1, E2 untouched, and the shop's S1
        QCOMPARE(two.say(two.shop(), draft("insp", u"interface.undisturbed"_s, u"S1"_s, {{u"seen"_s, u"paint whole"_s}})), QString());
        QCOMPARE(looseOnWing(screen), 2);
        QCOMPARE(looseOnWing(two.hangar.another()), 2);
    }

    /// What the start page shows is remembered for the heads of the job and of those that it is linked with.
    void theStartPageIsRememberedForTheseHeads()
    {
        TwoJobs two;
        QCOMPARE(two.linkBoth(), QString());
        QVERIFY(two.hangar.another().jobs());
        const auto kept = two.remembered(two.wing());
        QVERIFY(kept);
        QCOMPARE(kept->linked, (std::vector<core::LinkedHead>{{two.shop(), two.lastOf(two.shop()).head()}}));
        QCOMPARE(kept->summary.looseEnds, 3);
        QCOMPARE(two.faults(), QStringList());
        const core::JobSummary shown = two.rowOf(two.hangar.another(), two.wing()).summary;
        QCOMPARE(shown, kept->summary);
        QCOMPARE(two.say(two.shop(), draft("insp", u"interface.undisturbed"_s, u"S1"_s, {{u"seen"_s, u"paint whole"_s}})), QString());
        QCOMPARE(two.remembered(two.wing())->summary.looseEnds, 3); // still there, and shown no more
        QCOMPARE(two.faults(), QStringList());
        QCOMPARE(two.rowOf(two.hangar.another(), two.wing()).summary.looseEnds, 2);
        QCOMPARE(two.remembered(two.wing())->summary.looseEnds, 2);
    }

    void whatIsRememberedOfLinkedJobsIsWhatTheirEntriesSay_data()
    {
        QTest::addColumn<bool>("namesTheShop");
        QTest::addColumn<qint64>("looseEnds");
        QTest::addColumn<QStringList>("faults");
        QTest::addRow("as it is") << true << qint64{3} << QStringList();
        QTest::addRow("one loose end fewer") << true << qint64{2} << QStringList{u"wing 4 store.summary"_s};
        QTest::addRow("as if it were linked with none, so that nothing moves it") << false << qint64{3} << QStringList{u"wing 4 store.summary"_s};
    }

    void whatIsRememberedOfLinkedJobsIsWhatTheirEntriesSay()
    {
        QFETCH(bool, namesTheShop);
        QFETCH(qint64, looseEnds);
        QFETCH(QStringList, faults);
        TwoJobs two;
        QCOMPARE(two.linkBoth(), QString());
        QVERIFY(two.hangar.another().jobs());
        db::KeptSummary forged = *two.remembered(two.wing());
        forged.summary.looseEnds = looseEnds;
        if (!namesTheShop)
            forged.linked.clear();
        QVERIFY(two.hangar.store().summaries().remember({&forged, 1}));
        QCOMPARE(two.faults(), faults);
    }

    void aDamagedLinkedJobStopsTheOther()
    {
        TwoJobs two;
        QCOMPARE(two.linkBoth(), QString());
        QCOMPARE(tamper(two.hangar.path(), u"UPDATE entries SET bytes = x'7b7d' WHERE seq = 2 AND ledger = (SELECT id FROM ledgers WHERE uuid = '%1')"_s.arg(two.shop().text())), QString());
        session::Session &later = two.hangar.another();
        QVERIFY(later.openJob(two.wing()));
        QVERIFY(later.trouble());
        QVERIFY(!later.sign(two.wing(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech")));
    }

    /// From the link to both closures, with an item that goes over, and nothing that verifying would object to.
    void bothCloseTogether()
    {
        TwoJobs two;
        QCOMPARE(two.linkBoth(), QString());
        QCOMPARE(two.say(two.wing(), undone("tech", u"E1"_s, u"1"_s)), QString());
        QCOMPARE(two.say(two.wing(), draft("tech", u"interface.sent"_s, u"E1"_s, {{u"to"_s, two.shop().text()}})), QString());
        QVERIFY(two.hangar.session().openJob(two.shop()));
        const auto wing = two.hangar.session().look(two.wing());
        const core::Draft takenOn = draft("lead", u"interface.taken_on"_s, u"E1"_s, core::takenOnAs(*two.hangar.session().state(), *wing, *wing->item(*core::InterfaceId::parse(u"E1"))));
        QCOMPARE(two.say(two.shop(), takenOn), QString());
        QCOMPARE(two.restore(two.shop(), "lead", u"E1"_s, u"1"_s), QString());
        const Object seen{{u"seen"_s, u"paint whole"_s}};
        QCOMPARE(two.say(two.shop(), draft("insp", u"inspection.accepted"_s, u"E1"_s, {})), QString());
        QCOMPARE(two.say(two.wing(), draft("insp", u"interface.undisturbed"_s, u"E2"_s, seen)), QString());
        const core::Draft closed = draft("insp", u"job.closed"_s, std::nullopt, {{u"statement"_s, u"Complete"_s}});
        QVERIFY(two.say(two.wing(), closed).contains(u"loose ends"_s)); // S1
        QCOMPARE(two.say(two.shop(), draft("insp", u"interface.undisturbed"_s, u"S1"_s, seen)), QString());
        QCOMPARE(two.say(two.wing(), closed), QString());
        QVERIFY(two.say(two.shop(), draft("tech", u"finding.raised"_s, u"F1"_s, {{u"description"_s, u"chafed"_s}})).contains(u"closed"_s));
        QCOMPARE(two.say(two.shop(), closed), QString());
        QCOMPARE(two.faults(), QStringList());
    }

    // --- verifying ---

    void aPinThatIsNoEntryIsAFault()
    {
        TwoJobs two;
        QCOMPARE(two.linkBoth(), QString());
        QCOMPARE(two.forge(two.wing(), undone("tech", u"E1"_s, u"1"_s), {{two.shop(), {3, core::Digest::of("another")}}}), QString());
        QCOMPARE(two.faults(), QStringList{u"wing 5 ledger.linked-pin"_s});
    }

    void aPinBeyondTheEndIsAFault()
    {
        TwoJobs two;
        QCOMPARE(two.linkBoth(), QString());
        QCOMPARE(two.forge(two.wing(), undone("tech", u"E1"_s, u"1"_s), {{two.shop(), {40, core::Digest::of("another")}}}), QString());
        QCOMPARE(two.faults(), QStringList{u"wing 5 ledger.linked-pin"_s});
    }

    void aPinThatGoesBackIsAFault()
    {
        TwoJobs two;
        QCOMPARE(two.linkBoth(), QString());
        const core::Head early = two.lastOf(two.shop()).head();
        QCOMPARE(two.say(two.shop(), undone("tech", u"S1"_s, u"1"_s)), QString());
        QCOMPARE(two.say(two.wing(), undone("tech", u"E1"_s, u"1"_s)), QString());
        QCOMPARE(two.forge(two.wing(), undone("tech", u"E2"_s, u"2"_s), {{two.shop(), early}}), QString());
        QCOMPARE(two.faults(), QStringList{u"wing 6 ledger.linked-pin"_s});
    }

    void aPinThatIsLeftOutIsAFault()
    {
        TwoJobs two;
        QCOMPARE(two.linkBoth(), QString());
        QCOMPARE(two.forge(two.wing(), undone("tech", u"E1"_s, u"1"_s), {}), QString());
        QCOMPARE(two.faults(), QStringList{u"wing 5 ledger.linked"_s});
    }

    void aPinOfAJobThatIsNotLinkedIsAFault()
    {
        TwoJobs two;
        QCOMPARE(two.trouble(), QString());
        QCOMPARE(two.forge(two.wing(), undone("tech", u"E1"_s, u"1"_s), {{two.shop(), two.lastOf(two.shop()).head()}}), QString());
        QCOMPARE(two.faults(), QStringList{u"wing 4 ledger.linked"_s});
    }

    void aClosureAloneIsAFault()
    {
        TwoJobs two;
        QCOMPARE(two.linkBoth(), QString());
        for (const QString &id : {u"E1"_s, u"E2"_s})
            QCOMPARE(two.say(two.wing(), draft("insp", u"interface.undisturbed"_s, id, {{u"seen"_s, u"paint whole"_s}})), QString());
        QCOMPARE(two.forge(two.wing(), draft("insp", u"job.closed"_s, std::nullopt, {{u"statement"_s, u"Complete"_s}}), {{two.shop(), two.lastOf(two.shop()).head()}}), QString());
        QCOMPARE(two.faults(), QStringList{u"wing 7 closure.nothing-loose"_s});
    }

    /// The hand that the inspector had is in the other ledger alone.
    void ownWorkInTheOtherJobIsAFault()
    {
        TwoJobs two;
        QCOMPARE(two.trouble(), QString());
        const session::Grant grant{.id = session::nextAuthorisation(two.hangar.session().reg()), .person = person("tech"), .authority = core::Authority::Inspect, .kinds = {}, .aircraftTypes = {},
                                   .from = QDate(2026, 1, 1), .until = {}, .reference = u"Letter"_s};
        QVERIFY(two.hangar.session().sign(*two.hangar.session().reg().ledger, {session::grantDraft(person("root"), grant)}, signer("root")));
        QCOMPARE(two.say(two.shop(), TwoJobs::listed(u"E1"_s)), QString());
        QCOMPARE(two.linkBoth(), QString());
        QCOMPARE(two.say(two.shop(), undone("tech", u"E1"_s, u"1"_s)), QString());
        QCOMPARE(two.say(two.wing(), undone("lead", u"E1"_s, u"1"_s)), QString());
        QCOMPARE(two.restore(two.wing(), "lead", u"E1"_s, u"1"_s), QString());
        const core::Draft accepted = draft("tech", u"inspection.accepted"_s, u"E1"_s, {});
        QVERIFY(two.say(two.wing(), accepted).contains(u"E1 of WO-2 (Build-up)"_s));
        QCOMPARE(two.forge(two.wing(), accepted, {{two.shop(), two.lastOf(two.shop()).head()}}), QString());
        QCOMPARE(two.faults(), QStringList{u"wing 7 independence.own-work"_s});
    }

    /// What was found good rests on the linked ledger as it was.
    void verifiedBeforeLooksAtLinkedJobs()
    {
        TwoJobs two;
        QCOMPARE(two.linkBoth(), QString());
        QCOMPARE(two.say(two.shop(), undone("tech", u"S1"_s, u"1"_s)), QString());
        QCOMPARE(two.say(two.wing(), undone("tech", u"E1"_s, u"1"_s)), QString());
        QTemporaryDir folder;
        const QString file = folder.filePath(u"verified.json"_s);
        auto before = session::VerifiedBefore::load(file);
        session::remember(before, *session::verifyStore(two.hangar.store(), {}), two.hangar.session().now());
        QVERIFY(before.save());
        auto loaded = session::VerifiedBefore::load(file);
        QCOMPARE(loaded.find(two.wing())->linked, (std::vector<core::LinkedHead>{{two.shop(), two.lastOf(two.shop()).head()}}));

        // Both go on: what is new is verified, and rests on the linked ledger as well.
        QCOMPARE(two.restore(two.shop(), "tech", u"S1"_s, u"1"_s), QString());
        QCOMPARE(two.restore(two.wing(), "tech", u"E1"_s, u"1"_s), QString());
        const auto report = session::verifyStore(two.hangar.store(), {}, {}, &loaded);
        QVERIFY(report);
        QCOMPARE(report->faults.size(), 0U);
        QCOMPARE(report->entriesTakenFromBefore(), two.lastOf(two.wing()).said.seq - 1 + two.lastOf(two.shop()).said.seq - 1);

        // The end of the linked ledger is cut off: the wing is whole to the last bit, and rests on what is gone.
        QCOMPARE(tamper(two.hangar.path(), u"DELETE FROM entries WHERE seq >= 4 AND ledger = (SELECT id FROM ledgers WHERE uuid = '%1')"_s.arg(two.shop().text())), QString());
        QCOMPARE(two.faults(&loaded), two.faults());
        QVERIFY(two.faults().contains(u"wing 5 ledger.linked-pin"_s));
    }
};

QTEST_GUILESS_MAIN(TstLinked)
#include "tst_linked.moc"
