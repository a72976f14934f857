// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTemporaryDir>
#include <QTest>

#include <set>

#include "app/demo/scenario.hpp"
#include "app/session/session.hpp"
#include "core/acts/act.hpp"
#include "core/job/linked.hpp"
#include "core/job/loose_ends.hpp"
#include "core/job/stage.hpp"
#include "app/session/verify_store.hpp"
#include "resources/resources.hpp"

namespace {

using namespace Qt::StringLiterals;

const QDate day(2026, 3, 2);

/// A store in which the scenario was played, and somebody who looks at it the day after.
struct Told {
    QTemporaryDir folder;
    std::unique_ptr<db::Store> store;
    std::optional<demo::Played> played;
    std::unique_ptr<session::Session> session;
    std::unique_ptr<session::Session> shop;
    QString trouble;

    explicit Told(demo::Until until)
    {
        const auto kinds = resources::loadKinds();
        auto made = db::Store::create(folder.filePath(u"demo.remate"_s));
        if (!kinds || !made) {
            trouble = kinds ? made.error().message : kinds.error().message;
            return;
        }
        store = std::move(*made);
        auto told = demo::play(*store, *kinds, day, until, core::leastCost);
        if (!told) {
            trouble = u"story.csv:%1: %2"_s.arg(told.error().where.row.value_or(0)).arg(told.error().message);
            return;
        }
        played = *told;
        const auto dayAfter = core::Instant::parseLedger(u"2026-03-03T08:00:00.000Z");
        session = std::make_unique<session::Session>(*store, [dayAfter] { return *dayAfter; }, core::leastCost);
        if (const auto read = session->refresh(); !read)
            trouble = read.error().message;
        else if (const auto opened = session->openJob(played->job); !opened)
            trouble = opened.error().message;
        shop = std::make_unique<session::Session>(*store, [dayAfter] { return *dayAfter; }, core::leastCost);
        if (const auto read = shop->refresh(); !read)
            trouble = read.error().message;
        else if (const auto opened = shop->openJob(played->shop); !opened)
            trouble = opened.error().message;
    }
    const core::JobState &job() const { return *session->state(); }
};

QStringList faultsOf(db::Store &store)
{
    const auto report = session::verifyStore(store, {});
    if (!report)
        return {report.error().message};
    QStringList faults;
    for (const core::Fault &fault : report->faults)
        faults << u"%1 %2 %3"_s.arg(fault.seq).arg(fault.rule, fault.sentence);
    return faults;
}

std::set<QString> kindsSaid(const session::Session &session)
{
    std::set<QString> kinds;
    for (const core::Statement &said : session.said())
        kinds.insert(said.kind);
    return kinds;
}

std::set<QString> rulesOf(const core::LooseEnds &ends)
{
    std::set<QString> rules;
    for (const core::LooseEnd &end : ends)
        rules.insert(end.rule);
    return rules;
}

} // namespace

class TstScenario : public QObject {
    Q_OBJECT

private slots:
    void closes();
    void holdsTogether();
    void tellsEverything();
    void looksLikeADay();
    void stopsInTheMiddle();
    void theShopWorksAlong();
    void listHasEveryKind();
    void threadsAgreeWithPublishedTables();
    void goesIntoAnEmptyStoreOnly();

private:
    const Told &closed();
    std::unique_ptr<Told> m_closed;
};

const Told &TstScenario::closed()
{
    if (!m_closed)
        m_closed = std::make_unique<Told>(demo::Until::Closed);
    return *m_closed;
}

void TstScenario::closes()
{
    QCOMPARE(closed().trouble, QString());
    const core::JobState &job = closed().job();
    QVERIFY(job.closed);
    for (const core::InterfaceState &item : job.items)
        QVERIFY2(core::stageOf(item) == core::Stage::Inspected || core::letAloneWith(item), qPrintable(item.listed.id.text()));
    for (const core::Finding &finding : job.findings)
        QVERIFY2(finding.closed, qPrintable(finding.id.text()));
    QVERIFY(!job.pendingHandover());
}

void TstScenario::holdsTogether()
{
    QCOMPARE(closed().trouble, QString());
    QCOMPARE(faultsOf(*closed().store), QStringList());
}

/// Every sort of act that a job knows happens in the story, so that nothing is shown for the first time to a user.
void TstScenario::tellsEverything()
{
    QCOMPARE(closed().trouble, QString());
    std::set<QString> said = kindsSaid(*closed().session);
    said.merge(kindsSaid(*closed().shop));
    for (const core::Act &act : core::acts()) {
        // A change that is carried through is not given up, and nobody inspects their own work again where two inspectors are there.
        if (act.ledger == core::LedgerSort::Job && act.kind != "job.reversed"_L1 && act.kind != "inspection.repeated"_L1)
            QVERIFY2(said.contains(act.kind), act.kind.data());
    }
    const core::JobState &job = closed().job();
    QCOMPARE(job.facts.zones.size(), 5u);
    QVERIFY(job.items.size() >= 80);
    QCOMPARE(job.findings.size(), 4u);
    QCOMPARE(job.handovers.size(), 2u); // the first was refused
    QCOMPARE(closed().session->reg().tools.size(), 6u);
    QCOMPARE(closed().session->reg().people.size(), 13u);
}

void TstScenario::looksLikeADay()
{
    QCOMPARE(closed().trouble, QString());
    const auto said = closed().session->said();
    QCOMPARE(said.front().at.utcDate(), day);
    QCOMPARE(said.back().at.utcDate(), day);
    QVERIFY(closed().session->reg().lastAt < said.front().at);
    std::set<QString> authors;
    for (const core::Statement &one : said)
        authors.insert(one.author.text());
    // Three and three technicians and leads, two inspectors, one who releases.
    QCOMPARE(authors.size(), 9u);
}

void TstScenario::stopsInTheMiddle()
{
    const Told told(demo::Until::SecondShift);
    QCOMPARE(told.trouble, QString());
    QVERIFY(!told.job().closed);
    const core::LooseEnds ends = core::looseEnds(told.job(), told.session->reg());
    const std::set<QString> expected = {u"loose.untouched"_s, u"loose.disconnected"_s, u"loose.torque"_s, u"loose.bonding"_s, u"loose.safetying"_s, u"loose.inspection"_s, u"loose.finding"_s, u"loose.leak"_s,
                                        u"loose.temporary"_s, u"loose.hold"_s, u"loose.tags"_s, u"loose.tool"_s, u"loose.details"_s, u"loose.condition"_s, u"loose.stopped"_s, u"loose.linked"_s};
    QCOMPARE(rulesOf(ends), expected);
    QCOMPARE(faultsOf(*told.store), QStringList());
}

/// The build-up of the incoming engine is a job of its own, linked with the change.
void TstScenario::theShopWorksAlong()
{
    const Told told(demo::Until::SecondShift);
    QCOMPARE(told.trouble, QString());
    // Its outlet was left open for the hoist, and hangs on the wing under a tag of the wing's.
    const core::InterfaceState &sent = *told.shop->state()->item(*core::InterfaceId::parse(u"Q3"));
    const core::InterfaceState &taken = *told.job().item(*core::InterfaceId::parse(u"Q3"));
    QVERIFY(core::isElsewhere(sent));
    QCOMPARE(core::whereTakenOn(*told.shop->state(), sent)->item->listed.id, taken.listed.id);
    QVERIFY(taken.removal->tag != sent.removal->tag);
    // Who worked on it in the shop cannot inspect it on the wing; who did not, can.
    const auto refusedOnTheWing = [](const Told &at, const QString &who) {
        QStringList rules;
        for (const core::Refusal &refusal : at.session->ask({*core::PersonId::parse(who), core::Instant::fromMilliseconds(0), u"inspection.accepted"_s, u"Q3"_s, {}}))
            rules << refusal.rule;
        return rules;
    };
    QVERIFY(refusedOnTheWing(told, u"ferreira"_s).contains(u"independence.own-work"_s));
    QVERIFY(!refusedOnTheWing(told, u"dufour"_s).contains(u"independence.own-work"_s));
    // Both close, the shop first, and neither before the other was ready.
    QCOMPARE(closed().trouble, QString());
    QVERIFY(closed().shop->state()->closed);
    QVERIFY(closed().shop->state()->closed->at < closed().job().closed->at);
}

void TstScenario::listHasEveryKind()
{
    QCOMPARE(closed().trouble, QString());
    std::set<QString> listed;
    for (const core::InterfaceState &item : closed().job().items)
        listed.insert(item.listed.kind);
    const auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    for (const core::Kind &kind : kinds->all())
        QVERIFY2(kind.sort != core::KindSort::Interface || listed.contains(kind.id), qPrintable(kind.id));
}

/// Its numbers are invented, but somebody who looks a thread up finds nothing that contradicts them.
/// Source: AC 43.13-1B (9/8/98) tables 7-1 (never over the greatest torque for tension nuts) and 7-2 (drag of a nut used again).
void TstScenario::threadsAgreeWithPublishedTables()
{
    QCOMPARE(closed().trouble, QString());
    const auto tables = resources::loadTables();
    QVERIFY(tables);
    const core::LookUpTable &torques = *tables->find(u"thread_torque");
    const core::LookUpTable &drags = *tables->find(u"locknut_drag");
    const auto published = [](const core::LookUpTable &table, const QString &thread, const QString &column) {
        const core::LookUpRow *row = table.row(u"thread_size", thread);
        return row ? core::Quantity::parse(table.text(*row, column), u"lbf·in") : std::nullopt;
    };
    int checked = 0;
    for (const core::InterfaceState &item : closed().job().items) {
        const auto &spec = item.listed.torque;
        if (!spec || spec->thread.isEmpty())
            continue;
        const auto greatest = published(torques, spec->thread, u"tension_greatest"_s);
        QVERIFY2(greatest && spec->max <= *greatest, qPrintable(item.listed.id.text()));
        if (spec->prevailingMin) {
            const auto least = published(drags, spec->thread, u"drag_least"_s);
            QVERIFY2(least && *spec->prevailingMin >= *least, qPrintable(item.listed.id.text()));
        }
        ++checked;
    }
    QCOMPARE(checked, 5); // the mounts and the jet pipe flange
}

void TstScenario::goesIntoAnEmptyStoreOnly()
{
    QCOMPARE(closed().trouble, QString());
    const auto kinds = resources::loadKinds();
    const auto again = demo::play(*closed().store, *kinds, day, demo::Until::Closed, core::leastCost);
    QVERIFY(!again);
    QCOMPARE(again.error().code, core::ErrorCode::BadInput);
}

QTEST_GUILESS_MAIN(TstScenario)
#include "tst_scenario.moc"
