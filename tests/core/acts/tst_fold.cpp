// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/acts/references.hpp"
#include "tests/support/story.hpp"
#include "tests/support/world.hpp"

using namespace Qt::StringLiterals;
using core::Standing;
using story::Story;

/// What an entry does to a job when nobody asked the rules first: a ledger from elsewhere may hold anything, and an entry may
/// have lost what it rested on. What does not fit falls, and leaves nothing behind but its line, and whose hands it tells of.
class TestFold : public QObject {
    Q_OBJECT

    /// The job after one more entry that no rule was asked about.
    static core::JobFold foldedOn(const Story &story, const core::Draft &draft)
    {
        core::JobFold fold = story.fold();
        fold.take(story::statementOf(draft, fold.head().seq + 1), core::Digest::of("next"));
        return fold;
    }
    static core::JobState withoutItsLine(core::JobState state, const core::JobState &before)
    {
        state.lines = before.lines;
        state.said = before.said;
        state.leftWithoutItem = before.leftWithoutItem;
        state.shippingBlanksStruck = before.shippingBlanksStruck;
        for (std::size_t at = 0; at < std::min(state.items.size(), before.items.size()); ++at) {
            state.items.edit(at).left = before.items[at].left;
            state.items.edit(at).actors = before.items[at].actors;
        }
        state.lastAt = before.lastAt;
        return state;
    }

private slots:
    void whatFitsAndWhatFalls_data()
    {
        QTest::addColumn<QString>("before");
        QTest::addColumn<QString>("act");
        QTest::addColumn<QString>("without");
        QTest::addColumn<Standing>("standing");
        const auto fits = [](const char *name, const char *before, const char *act) {
            QTest::newRow(name) << QString::fromUtf8(before) << QString::fromUtf8(act) << QString() << Standing::Stands;
        };
        const auto falls = [](const char *name, const char *before, const char *act, const char *without = "") {
            QTest::newRow(name) << QString::fromUtf8(before) << QString::fromUtf8(act) << QString::fromUtf8(without) << Standing::Fallen;
        };
        const char *off = "Ana disconnects D1; Ana disconnects B1";
        const char *joined = "Ana disconnects D1; Ana reconnects D1; Ana disconnects B1; Ana reconnects B1";
        const char *torqued = "Ana disconnects D1; Ana reconnects D1; Ana torques D1";
        const char *secured = "Ana disconnects D1; Ana reconnects D1; Ana torques D1; Ana safeties D1";

        fits("listed", "", "Ana lists X1");
        falls("listed twice", "", "Ana lists D1");
        falls("listed under no name", "", "Ana lists");

        fits("disconnected", "", "Ana disconnects D1");
        falls("disconnected twice", off, "Ana disconnects D1");
        falls("disconnected, not listed", "", "Ana disconnects Z9");
        falls("disconnected, what?", "", "Ana disconnects");

        fits("found open", "", "Ben finds-open D1");
        falls("found open though logged", off, "Ben finds-open D1");

        fits("reconnected", off, "Ana reconnects D1");
        falls("reconnected, never off", "", "Ana reconnects D1");
        falls("reconnected twice", joined, "Ana reconnects D1");
        falls("reconnected, not listed", off, "Ana reconnects Z9");

        fits("disturbed", joined, "Ben disturbs D1");
        falls("disturbed while off", off, "Ben disturbs D1");
        falls("disturbed, not listed", joined, "Ben disturbs Z9");

        fits("photo", "", "Ben photographs D1");
        falls("photo without its digest", "", "Ben photographs D1 sha256=lost");
        falls("photo of what is not listed", "", "Ben photographs Z9");

        fits("mark on a photo", "Ben photographs D1", "Ana marks D1");
        falls("mark on a photo of another item", "Ben photographs K1", "Ana marks D1");
        falls("mark on what is not listed", "Ben photographs D1", "Ana marks Z9");

        fits("torqued", joined, "Ana torques D1 fastener=1");
        falls("torqued while off", off, "Ana torques D1 fastener=1");
        falls("torqued, not listed", joined, "Ana torques Z9 fastener=1");
        falls("torqued, no fastener", joined, "Ana torques D1 fastener=1", "fastener");
        falls("torqued, no number", joined, "Ana torques D1 fastener=1 value=tight");
        falls("torqued, no tool", joined, "Ana torques D1 fastener=1", "tool");

        fits("taken over", "Ana disconnects D1; Ana reconnects D1; Ana torques D1 fastener=1", "Ben takes-over D1");
        falls("taken over before any torque", joined, "Ben takes-over D1 fasteners=0");
        falls("taken over, not listed", joined, "Ben takes-over Z9 fasteners=1");

        fits("measured", joined, "Ana measures B1");
        falls("measured while off", off, "Ana measures B1");
        falls("measured, not listed", joined, "Ana measures Z9");
        falls("measured, no number", joined, "Ana measures B1 value=good");
        falls("measured, no tool", joined, "Ana measures B1", "tool");

        fits("safetied", torqued, "Ana safeties D1");
        falls("safetied before torque", joined, "Ana safeties D1");
        falls("safetied while off", off, "Ana safeties B1");
        falls("safetied, not listed", torqued, "Ana safeties Z9");

        fits("accepted", secured, "Cho accepts D1");
        falls("accepted before safetying", torqued, "Cho accepts D1");
        falls("accepted while off", off, "Cho accepts D1");
        falls("accepted, not listed", secured, "Cho accepts Z9");
        falls("accepted by who did it", secured, "Ana accepts D1");

        fits("rejected", joined, "Cho rejects D1");
        falls("rejected while off", off, "Cho rejects D1");
        falls("rejected, not listed", joined, "Cho rejects Z9");

        fits("finding", "", "Ben raises F9");
        falls("finding twice", "Ben raises F9", "Ben raises F9");
        falls("finding without a number", "", "Ben raises");
        fits("finding closed", "Ben raises F9", "Cho clears F9");
        falls("finding closed twice", "Ben raises F9; Cho clears F9", "Cho clears F9");
        falls("finding closed, never raised", "", "Cho clears F9");

        fits("temporary applied", "", "Ben applies T1");
        falls("temporary applied twice", "Ben applies T1", "Ben applies T1");
        fits("temporary removed", "Ben applies T1", "Ben removes T1");
        falls("temporary removed, never applied", "", "Ben removes T1");
        falls("temporary removed twice", "Ben applies T1; Ben removes T1", "Ben removes T1");
        fits("temporary given", "Ben applies T1", "Ben gives T1 to=Ana");
        falls("temporary given, off already", "Ben applies T1; Ben removes T1", "Ben gives T1 to=Ana");

        const char *allOff = "Ana disconnects D1; Ana disconnects C1; Ana disconnects B1; Ana disconnects F1; Ana disconnects F2; Ana disconnects M1; Ana disconnects M2; Ana disconnects A1; Ana disconnects D2; Ana disconnects K1";
        const QByteArray changed = QByteArray(allOff) + "; Ana takes-off; Ana receives";
        fits("unit off", allOff, "Ana takes-off");
        falls("unit off twice", changed.constData(), "Ana takes-off");
        fits("unit received", "", "Ana receives");
        falls("unit received twice", "Ana receives", "Ana receives");
        fits("unit in its place", changed.constData(), "Ben positions");
        falls("unit in its place, not received", allOff, "Ben positions");

        fits("stopped", joined, "Ana stops D1");
        falls("stopped, not listed", "", "Ana stops Z9");
        fits("taken up", "Ana disconnects D1; Ana reconnects D1; Ana stops D1", "Ben resumes D1");
        falls("taken up, never stopped", joined, "Ben resumes D1");

        fits("logged, on no list", "", "Ben logs X1");
        falls("logged, and listed", "", "Ben logs D1");
        fits("detailed", "Ben logs X1", "Ben details X1");
        falls("detailed twice", "Ben logs X1; Ben details X1", "Ben details X1");

        fits("tool issued", "", "Ben issues T-1");
        falls("tool issued twice", "Ben issues T-1", "Ben issues T-1");
        fits("tool returned", "Ben issues T-1", "Ben returns T-1");
        falls("tool returned, never issued", "", "Ben returns T-1");
        fits("tools counted", "Ben issues T-1", "Ben counts");
        fits("tool missed", "Ben issues T-1", "Ben misses T-1");
        falls("tool missed, never issued", "", "Ben misses T-1");

        falls("inspected again, never done", joined, "Ana repeats D1");

        fits("handed over", "", "Ana hands-over");
        falls("handed over twice", "Ana hands-over", "Ana hands-over");
        falls("handed over to nobody", "", "Ana hands-over", "to");
        fits("taken by the incoming lead", "Ana hands-over", "Lee takes-shift");
        falls("taken, never given", "", "Lee takes-shift");
    }
    void whatFitsAndWhatFalls()
    {
        QFETCH(QString, before);
        QFETCH(QString, act);
        QFETCH(QString, without);
        QFETCH(Standing, standing);
        Story story(before);
        QCOMPARE(story.refusedSentence(), QString());
        core::Draft draft = story.drafts(act).front();
        draft.body.remove(without);
        const core::JobState after = foldedOn(story, draft).state();
        QCOMPARE(after.lines.back().standing, standing);
        QCOMPARE(withoutItsLine(after, story.job()) == story.job(), standing == Standing::Fallen);
    }

    void anEntryThatThisVersionDoesNotKnowFalls()
    {
        Story story;
        core::Draft draft = story.drafts(u"Ana disconnects D1"_s).front();
        draft.kind = u"interface.polished"_s;
        QCOMPARE(foldedOn(story, draft).state().lines.back().standing, Standing::Fallen);
        draft.kind = u"tool.withdrawn"_s; // one of the register's
        QCOMPARE(foldedOn(story, draft).state().lines.back().standing, Standing::Fallen);
        QCOMPARE(core::referencesOf(story::statementOf(draft, 1)).size(), 2U); // its author and the tool
        draft.kind = u"interface.polished"_s;
        QCOMPARE(core::referencesOf(story::statementOf(draft, 1)), (std::vector<core::Reference>{{u"person"_s, u"Ana"_s}}));
    }

    /// A strike takes back what came before it, nothing else.
    void whatAStrikeReaches_data()
    {
        QTest::addColumn<qint64>("entry");
        QTest::addColumn<bool>("reached");
        QTest::newRow("the entry before it") << qint64(12) << true;
        QTest::newRow("itself") << qint64(13) << false;
        QTest::newRow("one that will come") << qint64(14) << false;
        QTest::newRow("number nought") << qint64(0) << false;
    }
    void whatAStrikeReaches()
    {
        QFETCH(qint64, entry);
        QFETCH(bool, reached);
        Story story(u"Ana disconnects K1"_s);
        QCOMPARE(story.fold().head().seq, 12);
        core::Draft strike = story.drafts(u"Ana strikes entry=1"_s).front();
        strike.body.set(u"entry"_s, entry);
        const core::JobState after = foldedOn(story, strike).state();
        QCOMPARE(after.lines[11].standing == Standing::Struck, reached);
        QCOMPARE(after.item(*core::InterfaceId::parse(u"K1"))->removal.has_value(), !reached);
        QCOMPARE(after.lines.back().standing, Standing::Stands);
    }

    void foundOpenUnderATakenNumberIsUndoneAllTheSame()
    {
        Story story(u"Ben raises F1"_s);
        const core::JobState taken = foldedOn(story, story.drafts(u"Ben finds-open D1 finding=F1"_s).front()).state();
        QVERIFY(taken.item(*core::InterfaceId::parse(u"D1"))->removal);
        QCOMPARE(taken.findings.size(), 1U);
        const core::JobState unnumbered = foldedOn(story, story.drafts(u"Ben finds-open D1 finding=_"_s).front()).state();
        QVERIFY(unnumbered.item(*core::InterfaceId::parse(u"D1"))->removal);
        QCOMPARE(unnumbered.findings.size(), 1U);
        const core::JobState next = foldedOn(story, story.drafts(u"Ben finds-open D1"_s).front()).state();
        QCOMPARE(next.findings.back().item, core::InterfaceId::parse(u"D1"));
    }

    /// Admitted and signed, so it must count: a listing may give torque values without asking for torque.
    void whatWasAdmittedStands()
    {
        Story story(u"Ana lists X1 requirements=safetying safetying=lockwire torque_fasteners=2 torque_min=9 torque_max=12 torque_unit=N·m;"
                    "Ana disconnects X1; Ana reconnects X1; Ana safeties X1"_s);
        QCOMPARE(story.refusedSentence(), QString());
        QCOMPARE(story.job().lines.back().standing, Standing::Stands);
        QCOMPARE(story.stage(u"X1"_s), u"secured"_s);
    }

    void namesThatAreNoneArePassedOver()
    {
        Story story;
        core::Draft draft = story.drafts(u"Ana disconnects D1"_s).front();
        draft.body.set(u"helpers"_s, core::json::Array{u"Ben"_s, u" "_s, 7});
        const core::JobState after = foldedOn(story, draft).state();
        QCOMPARE(after.item(*core::InterfaceId::parse(u"D1"))->actors, (std::set{*core::PersonId::parse(u"Ana"), *core::PersonId::parse(u"Ben")}));
        core::Draft listing = story.drafts(u"Ana lists X1 access=A1"_s).front();
        listing.body.set(u"access"_s, core::json::Array{u"A1"_s, u" A1"_s});
        QCOMPARE(foldedOn(story, listing).state().items.back().listed.access, std::vector{*core::InterfaceId::parse(u"A1")});
    }

    /// What a job was opened with when its zones are told badly: each that is an object counts, whoever looks after it.
    void zonesOfAnOpening()
    {
        Story story;
        core::Draft opening = story.drafts(u"Ana opens"_s).front();
        const auto zonesOf = [&](const core::json::Value &zones) {
            opening.body.set(u"zones"_s, zones);
            core::JobFold fold;
            fold.take(story::statementOf(opening, 1), {});
            return fold.state().facts.zones;
        };
        const core::json::Object left{{u"name"_s, u"left"_s}, {u"technician"_s, u"Ana"_s}};
        const core::json::Object right{{u"name"_s, u"right"_s}};
        QCOMPARE(zonesOf(core::json::Array{left, u"middle"_s, right}),
                 (std::vector<core::Zone>{{u"left"_s, core::PersonId::parse(u"Ana")}, {u"right"_s, std::nullopt}}));
        QVERIFY(zonesOf(u"left"_s).empty());
        opening.body.remove(u"zones");
        core::JobFold fold;
        fold.take(story::statementOf(opening, 1), {});
        QVERIFY(fold.state().facts.zones.empty());
        QVERIFY(!fold.state().lead);
    }
};

QTEST_GUILESS_MAIN(TestFold)
#include "tst_fold.moc"
