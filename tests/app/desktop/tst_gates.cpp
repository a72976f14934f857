// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QTableView>
#include <QTableWidget>
#include <QTest>

#include <algorithm>

#include "app/desktop/flows/set_hold.hpp"
#include "app/desktop/flows/signing.hpp"
#include "app/desktop/job_feed.hpp"
#include "app/desktop/pages/findings/findings_page.hpp"
#include "app/desktop/pages/handover/handover_page.hpp"
#include "app/desktop/pages/holds/holds_page.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/list/interface_model.hpp"
#include "app/desktop/pages/list/list_page.hpp"
#include "app/desktop/pages/next/next_page.hpp"
#include "app/desktop/pages/record/record_page.hpp"
#include "app/desktop/pages/temporaries/temporaries_page.hpp"
#include "app/desktop/pages/unit/unit_page.hpp"
#include "app/desktop/pages/walk_round/walk_round_page.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/sign_sheet.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/acts/hold_form.hpp"
#include "core/holds/standing.hpp"
#include "core/job/loose_ends.hpp"
#include "resources/resources.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/on_screen.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;
using core::json::Array;
using core::json::arrayOf;
using core::json::Object;

namespace {

QString cell(desktop::RowTable &table, const QString &key, int column) { return table.model().rows()[static_cast<std::size_t>(table.model().rowOf(key))].cells[column]; }

} // namespace

/// Hold points, temporary items and the walk-round, through the pages and the sheets on which they are signed.
class TestGates : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup();
    void eachIsTickedOnItsOwn();
    void ticksAreOnePersonsLook();
    void aHeldKeyTicksOne();
    void ticksStayWithTheirJob();
    void whoLookedSigns();
    void doMenuSignsOneAtATime();
    void ownWorkIsNotTicked();
    void stillAttachedGoesBackToTheCrew();
    void holdPointShowsWhatIsMissing();
    void statementsAreTickedOneByOne();
    void underminedIsShownAsVoid();
    void whatIsAppliedIsRemovedByItsOwner();
    void nextShowsWhatStandsInTheWay();
    void handoverIsRefusedWithAReason();
    void handoverTellsOfToolsTagsAndAccessories();
    void everyLooseEndLeadsToWhereItIsCleared();
    void cardAndListTellOfTheWalkRound();
    void followUpIsDoneFromItsRow();
    void timelineNamesWhatTheActIsAbout();
    void theUnitIsInSightOnASmallScreen();
    void leadSetsAHoldPointOfTheSet();
    void leadSetsAHoldPointOfTheirOwn();

private:
    void say(const QString &who, const QString &kind, const std::optional<QString> &subject, Object body);
    void refresh();
    /// Fills in who signs, presses the button, and gives what the sheet then says is wrong; empty when it was signed.
    QString sign(const QString &who);
    desktop::SignSheet *sheet();
    template <class ThePage>
    ThePage &page()
    {
        if (!m_page)
            m_page.reset(new ThePage({*m_feed, *m_signing, *m_selection, *m_ask, m_bench->kinds(), {}}));
        m_page->show();
        return static_cast<ThePage &>(*m_page);
    }

    std::unique_ptr<Bench> m_bench;
    std::unique_ptr<session::Session> m_session;
    std::unique_ptr<ScriptedAsk> m_ask;
    std::unique_ptr<QWidget> m_window;
    std::unique_ptr<desktop::JobFeed> m_feed;
    std::unique_ptr<desktop::Selection> m_selection;
    std::unique_ptr<desktop::Page> m_page;
    desktop::Signing *m_signing = nullptr;
    std::optional<core::LedgerId> m_ledger;
};

void TestGates::init()
{
    m_bench = std::make_unique<Bench>();
    QCOMPARE(m_bench->trouble(), QString());
    m_session = m_bench->another();
    QVERIFY(m_session);
    m_ledger = m_bench->openJob(*m_session);
    QVERIFY2(m_ledger, qPrintable(m_bench->trouble()));
    for (const QString &id : {u"D1"_s, u"D2"_s, u"M1"_s})
        say(u"ana"_s, u"interface.listed"_s, id, {{u"name"_s, id}, {u"kind"_s, id.startsWith(u'M') ? u"mount"_s : u"drain"_s}, {u"zone"_s, u"Left"_s}});
    say(u"ana"_s, u"hold.set"_s, u"free"_s,
        {{u"title"_s, u"All free"_s}, {u"authority"_s, u"lead"_s},
         {u"conditions"_s, Array{Object{{u"what"_s, u"interfaces"_s}, {u"stage"_s, u"walked_round"_s}, {u"kinds"_s, arrayOf({u"drain"_s})}}}},
         {u"gates"_s, Array{Object{{u"act"_s, u"interface.disconnected"_s}, {u"kinds"_s, arrayOf({u"mount"_s})}}}},
         {u"statements"_s, arrayOf({u"The hoist has the load."_s, u"Nobody stands under it."_s})}});
    for (const QString &id : {u"D1"_s, u"D2"_s})
        say(u"ana"_s, u"interface.disconnected"_s, id, {{u"tag"_s, id}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}});
    QVERIFY(m_session->openJob(*m_ledger));
    m_ask = std::make_unique<ScriptedAsk>();
    m_window = std::make_unique<QWidget>();
    m_window->show();
    m_feed = std::make_unique<desktop::JobFeed>();
    m_selection = std::make_unique<desktop::Selection>();
    m_signing = new desktop::Signing(*m_session, *m_feed, m_bench->kinds(), *m_ask, m_window.get());
    connect(m_signing, &desktop::Signing::hasSigned, this, &TestGates::refresh);
    refresh();
}

void TestGates::cleanup()
{
    m_page.reset();
    m_window.reset();
    m_selection.reset();
    m_feed.reset();
    m_session.reset();
    m_bench.reset();
}

void TestGates::say(const QString &who, const QString &kind, const std::optional<QString> &subject, Object body)
{
    QCOMPARE(Bench::say(*m_session, *m_ledger, who, kind, subject, std::move(body)), QString());
    m_session->lock(); // nobody sits at the computer yet
    if (m_feed)
        refresh();
}

void TestGates::refresh()
{
    QVERIFY(m_session->refresh());
    m_feed->take(m_session->state(), m_session->said(), m_session->reg());
    m_feed->tellPersonChanged();
}

desktop::SignSheet *TestGates::sheet()
{
    const auto openOne = [&]() -> desktop::SignSheet * {
        for (auto *one : m_window->findChildren<desktop::SignSheet *>()) {
            if (one->isVisible())
                return one;
        }
        return nullptr;
    };
    [&] { QTRY_VERIFY(openOne() != nullptr); }();
    return openOne();
}

QString TestGates::sign(const QString &who)
{
    desktop::SignSheet *open = sheet();
    auto *person = named<QWidget>(*open, u"person"_s);
    auto *line = qobject_cast<QLineEdit *>(person);
    (line ? line : person->findChild<QLineEdit *>())->setText(who);
    named<QLineEdit>(*open, u"secret"_s)->setText(Bench::pinOf(who));
    named<QPushButton>(*open, u"sign"_s)->click();
    const QString problem = open->isVisible() ? named<QLabel>(*open, u"problem"_s)->text() : QString();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); // the sheet goes once it has signed
    return problem;
}

void TestGates::eachIsTickedOnItsOwn()
{
    auto &round = page<desktop::WalkRoundPage>();
    auto *rows = named<desktop::RowTable>(round, u"round"_s);
    auto *signTicked = named<QPushButton>(round, u"signTicked"_s);
    QCOMPARE(rows->model().rowCount(), 2);
    QVERIFY(!signTicked->isEnabled());
    QCOMPARE(rows->chosen(), u"D1"_s);
    QTest::keyClick(&rows->view(), Qt::Key_Space);
    QCOMPARE(cell(*rows, u"D1"_s, 0), u"ticked"_s);
    QCOMPARE(cell(*rows, u"D2"_s, 0), u"not yet"_s);
    QCOMPARE(rows->chosen(), u"D2"_s); // on to the next
    // Choosing all of them ticks none of them.
    rows->view().selectAll();
    QCOMPARE(cell(*rows, u"D2"_s, 0), u"not yet"_s);
    signTicked->click();
    QCOMPARE(sign(u"cho"_s), QString());
    QVERIFY(m_session->state()->item(item("D1"))->walkedRound);
    QVERIFY(!m_session->state()->item(item("D2"))->walkedRound);
    QCOMPARE(m_session->said().back().kind, u"walkround.free"_s);
    QCOMPARE(cell(*rows, u"D1"_s, 0), u"free"_s);
    QVERIFY(!signTicked->isEnabled());
}

void TestGates::ticksAreOnePersonsLook()
{
    auto &round = page<desktop::WalkRoundPage>();
    auto *rows = named<desktop::RowTable>(round, u"round"_s);
    named<QPushButton>(round, u"tick"_s)->click();
    QCOMPARE(cell(*rows, u"D1"_s, 0), u"ticked"_s);
    // Ben signs something else meanwhile: he is at the computer now, and looks for himself.
    m_signing->begin(desktop::actionFor("finding.raised"_L1), {});
    named<QWidget>(*sheet(), u"description"_s)->findChild<QLineEdit *>()->setText(u"scratch"_s);
    QCOMPARE(sign(u"ben"_s), QString());
    QCOMPARE(cell(*rows, u"D1"_s, 0), u"not yet"_s);
}

/// Space that is held down, or that means something else, would tick what nobody looked at.
void TestGates::aHeldKeyTicksOne()
{
    auto &round = page<desktop::WalkRoundPage>();
    auto *rows = named<desktop::RowTable>(round, u"round"_s);
    QTest::keyClick(&rows->view(), Qt::Key_Space);
    for (int i = 0; i < 3; ++i) {
        QKeyEvent again(QEvent::KeyPress, Qt::Key_Space, Qt::NoModifier, u" "_s, true);
        QCoreApplication::sendEvent(&rows->view(), &again);
    }
    QCOMPARE(cell(*rows, u"D1"_s, 0), u"ticked"_s);
    QCOMPARE(cell(*rows, u"D2"_s, 0), u"not yet"_s);
    QTest::keyClick(&rows->view(), Qt::Key_Space, Qt::ShiftModifier);
    QCOMPARE(cell(*rows, u"D2"_s, 0), u"not yet"_s);
    rows->choose(u"D2"_s);
    QTest::keyClick(&rows->view(), Qt::Key_Space);
    QCOMPARE(cell(*rows, u"D2"_s, 0), u"ticked"_s);
}

/// Another job may have items of the same ids.
void TestGates::ticksStayWithTheirJob()
{
    auto &round = page<desktop::WalkRoundPage>();
    auto *rows = named<desktop::RowTable>(round, u"round"_s);
    QTest::keyClick(&rows->view(), Qt::Key_Space);
    QCOMPARE(cell(*rows, u"D1"_s, 0), u"ticked"_s);
    const auto second = m_bench->openJob(*m_session, {{u"title"_s, u"Engine change, right"_s}});
    QVERIFY2(second, qPrintable(m_bench->trouble()));
    QCOMPARE(Bench::say(*m_session, *second, u"ana"_s, u"interface.listed"_s, u"D1"_s, {{u"name"_s, u"D1"_s}, {u"kind"_s, u"drain"_s}, {u"zone"_s, u"Left"_s}}), QString());
    QCOMPARE(Bench::say(*m_session, *second, u"ana"_s, u"interface.disconnected"_s, u"D1"_s, {{u"tag"_s, u"9"_s}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}}), QString());
    m_session->lock();
    QVERIFY(m_session->openJob(*second));
    refresh();
    QCOMPARE(rows->model().rowCount(), 1);
    QCOMPARE(cell(*rows, u"D1"_s, 0), u"not yet"_s);
}

/// Cho sits at the computer and ticks; what she saw Ben does not sign, though he may go round himself.
void TestGates::whoLookedSigns()
{
    auto &round = page<desktop::WalkRoundPage>();
    m_signing->begin(desktop::actionFor("finding.raised"_L1), {});
    named<QWidget>(*sheet(), u"description"_s)->findChild<QLineEdit *>()->setText(u"scratch"_s);
    QCOMPARE(sign(u"cho"_s), QString());
    for (int i = 0; i < 2; ++i)
        QTest::keyClick(&named<desktop::RowTable>(round, u"round"_s)->view(), Qt::Key_Space);
    named<QPushButton>(round, u"signTicked"_s)->click();
    QVERIFY2(sheet()->windowTitle().contains(u"2 items"), qPrintable(sheet()->windowTitle()));
    named<QPushButton>(*sheet(), u"somebodyElse"_s)->click();
    QVERIFY2(sign(u"ben"_s).contains(u"Cho Lim looked at this"), qPrintable(named<QLabel>(*sheet(), u"problem"_s)->text()));
    QVERIFY(!m_session->state()->item(item("D1"))->walkedRound);
    QCOMPARE(sign(u"cho"_s), QString());
    QCOMPARE(m_session->state()->item(item("D1"))->walkedRound->by, *core::PersonId::parse(u"cho"));
    QCOMPARE(m_session->state()->item(item("D2"))->walkedRound->by, *core::PersonId::parse(u"cho"));
}

/// Two rows chosen in the list are not two that somebody looked at.
void TestGates::doMenuSignsOneAtATime()
{
    const desktop::ActionLine &free = desktop::actionFor("walkround.free"_L1);
    QVERIFY(desktop::comesIntoQuestion(free, *m_feed->state(), {item("D1")}, false));
    QVERIFY(!desktop::comesIntoQuestion(free, *m_feed->state(), {item("D1"), item("D2")}, false));
}

void TestGates::ownWorkIsNotTicked()
{
    auto &round = page<desktop::WalkRoundPage>();
    m_signing->begin(desktop::actionFor("finding.raised"_L1), {});
    named<QWidget>(*sheet(), u"description"_s)->findChild<QLineEdit *>()->setText(u"scratch"_s);
    QCOMPARE(sign(u"ana"_s), QString()); // Ana undid both
    QVERIFY(!named<QPushButton>(round, u"tick"_s)->isEnabled());
    QVERIFY2(named<QPushButton>(round, u"tick"_s)->toolTip().contains(u"D1"), qPrintable(named<QPushButton>(round, u"tick"_s)->toolTip()));
    QTest::keyClick(&named<desktop::RowTable>(round, u"round"_s)->view(), Qt::Key_Space);
    QCOMPARE(cell(*named<desktop::RowTable>(round, u"round"_s), u"D1"_s, 0), u"not yet"_s);
}

void TestGates::stillAttachedGoesBackToTheCrew()
{
    auto &round = page<desktop::WalkRoundPage>();
    auto *rows = named<desktop::RowTable>(round, u"round"_s);
    named<QPushButton>(round, u"walkround.attached"_s)->click();
    named<QWidget>(*sheet(), u"what"_s)->findChild<QLineEdit *>()->setText(u"one bolt behind it"_s);
    QCOMPARE(sign(u"cho"_s), QString());
    QCOMPARE(cell(*rows, u"D1"_s, 0), u"still attached"_s);
    QVERIFY(cell(*rows, u"D1"_s, 3).contains(u"one bolt behind it"));
    QVERIFY(!named<QPushButton>(round, u"tick"_s)->isEnabled());
    QVERIFY(named<QPushButton>(round, u"interface.freed"_s)->isVisible());
}

void TestGates::holdPointShowsWhatIsMissing()
{
    auto &holds = page<desktop::HoldsPage>();
    auto *rows = named<desktop::RowTable>(holds, u"holds"_s);
    auto *conditions = named<desktop::RowTable>(holds, u"conditions"_s);
    QCOMPARE(cell(*rows, u"free"_s, 1), u"waits"_s);
    QCOMPARE(rows->chosen(), u"free"_s);
    QCOMPARE(conditions->model().rowCount(), 3);
    QCOMPARE(cell(*conditions, u"0"_s, 0), u"no"_s);
    QVERIFY(cell(*conditions, u"0"_s, 2).contains(u"D1"));
    auto *pass = named<QPushButton>(holds, u"hold.passed"_s);
    QVERIFY(!pass->isEnabled());
    QVERIFY2(pass->toolTip().contains(u"cannot be passed yet"), qPrintable(pass->toolTip()));
    for (const QString &id : {u"D1"_s, u"D2"_s})
        say(u"cho"_s, u"walkround.free"_s, id, {});
    QCOMPARE(cell(*rows, u"free"_s, 1), u"ready to pass"_s);
    QCOMPARE(cell(*conditions, u"0"_s, 0), u"yes"_s);
    QVERIFY(pass->isEnabled());
}

void TestGates::statementsAreTickedOneByOne()
{
    for (const QString &id : {u"D1"_s, u"D2"_s})
        say(u"cho"_s, u"walkround.free"_s, id, {});
    auto &holds = page<desktop::HoldsPage>();
    named<QPushButton>(holds, u"hold.passed"_s)->click();
    auto *first = named<QCheckBox>(*sheet(), u"statement.0"_s);
    auto *second = named<QCheckBox>(*sheet(), u"statement.1"_s);
    QVERIFY(!first->isChecked() && !second->isChecked());
    QVERIFY(first->height() >= 44 && !first->accessibleName().isEmpty());
    first->click();
    QVERIFY2(sign(u"ana"_s).contains(u"Nobody stands under it."), qPrintable(named<QLabel>(*sheet(), u"problem"_s)->text()));
    second->click();
    QCOMPARE(sign(u"ana"_s), QString());
    QVERIFY(m_session->state()->hold(*core::HoldId::parse(u"free"))->passed);
    QCOMPARE(cell(*named<desktop::RowTable>(holds, u"holds"_s), u"free"_s, 1), u"passed"_s);
}

void TestGates::underminedIsShownAsVoid()
{
    for (const QString &id : {u"D1"_s, u"D2"_s})
        say(u"cho"_s, u"walkround.free"_s, id, {});
    say(u"ana"_s, u"hold.passed"_s, u"free"_s, {{u"confirmed"_s, arrayOf({u"The hoist has the load."_s, u"Nobody stands under it."_s})}});
    say(u"cho"_s, u"walkround.attached"_s, u"D1"_s, {{u"what"_s, u"a clamp"_s}});
    auto &holds = page<desktop::HoldsPage>();
    QCOMPARE(cell(*named<desktop::RowTable>(holds, u"holds"_s), u"free"_s, 1), u"void, pass again"_s);
    QCOMPARE(m_signing->whyNot(desktop::actionFor("interface.disconnected"_L1), {item("M1")}).front().rule, u"hold.gate"_s);
}

void TestGates::whatIsAppliedIsRemovedByItsOwner()
{
    auto &applied = page<desktop::TemporariesPage>();
    auto *rows = named<desktop::RowTable>(applied, u"temporaries"_s);
    named<QPushButton>(applied, u"temporary.applied"_s)->click();
    named<QWidget>(*sheet(), u"name"_s)->findChild<QLineEdit *>()->setText(u"fuel valve shut"_s);
    auto *sort = named<QWidget>(*sheet(), u"sort"_s)->findChild<QComboBox *>();
    sort->setCurrentIndex(sort->findData(u"isolation"_s));
    QCOMPARE(sign(u"ben"_s), QString());
    QCOMPARE(rows->model().rowCount(), 1);
    rows->choose(u"T1"_s);
    auto *remove = named<QPushButton>(applied, u"temporary.removed"_s);
    QVERIFY2(remove->text().startsWith(u"Clear"), qPrintable(remove->text())); // the kind's own word
    m_session->lock(); // somebody else comes to the computer
    refresh();
    remove->click();
    QVERIFY2(sign(u"ana"_s).contains(u"Ben Orr's"), qPrintable(named<QLabel>(*sheet(), u"problem"_s)->text()));
    QCOMPARE(sign(u"ben"_s), QString());
    QCOMPARE(cell(*rows, u"T1"_s, 1), u"removed"_s);
}

void TestGates::nextShowsWhatStandsInTheWay()
{
    auto &next = page<desktop::NextPage>();
    auto *rows = named<desktop::RowTable>(next, u"next"_s);
    QCOMPARE(rows->model().rows().front().key, u"D2"_s); // what came off last
    QVERIFY(cell(*rows, u"D2"_s, 4).isEmpty());
    say(u"cho"_s, u"walkround.attached"_s, u"D2"_s, {{u"what"_s, u"a bolt behind it"_s}});
    QCOMPARE(rows->model().rows().front().key, u"D1"_s);
    QCOMPARE(cell(*rows, u"D2"_s, 4), u"a bolt behind it"_s);
    auto *zone = named<QComboBox>(next, u"zone"_s);
    zone->setCurrentIndex(zone->findData(u"Right"_s));
    QCOMPARE(rows->model().rowCount(), 0);
}

void TestGates::handoverIsRefusedWithAReason()
{
    auto &handover = page<desktop::HandoverPage>();
    say(u"ana"_s, u"temporary.applied"_s, u"T1"_s, {{u"sort"_s, u"isolation"_s}, {u"name"_s, u"fuel valve shut"_s}});
    auto *open = named<desktop::RowTable>(handover, u"open"_s);
    QCOMPARE(cell(*open, u"temporary T1"_s, 3), u"applied"_s);
    QCOMPARE(cell(*open, u"temporary T1"_s, 4), u"whose: Ana Sol"_s);
    say(u"ana"_s, u"handover.given"_s, {}, {{u"to"_s, u"ben"_s}, {u"open"_s, core::openAtHandover(*m_session->state())}});
    named<QPushButton>(handover, u"handover.refused"_s)->click();
    named<QWidget>(*sheet(), u"reason"_s)->findChild<QLineEdit *>()->setText(u"one tag too few"_s);
    QCOMPARE(sign(u"ben"_s), QString());
    QVERIFY(!m_session->state()->pendingHandover());
    QCOMPARE(m_session->state()->lead, core::PersonId::parse(u"ana"));
}

void TestGates::handoverTellsOfToolsTagsAndAccessories()
{
    say(u"ana"_s, u"tool.issued"_s, u"R-14"_s, {{u"sort"_s, u"hand tool"_s}, {u"name"_s, u"Ratchet"_s}, {u"holder"_s, u"ben"_s}});
    say(u"ana"_s, u"tags.issued"_s, {}, {{u"first"_s, 11}, {u"last"_s, 20}});
    say(u"ana"_s, u"accessory.listed"_s, u"AC1"_s, {{u"name"_s, u"Starter"_s}, {u"part"_s, u"ST-4"_s}, {u"serial"_s, u"77"_s}});
    auto &handover = page<desktop::HandoverPage>();
    auto *open = named<desktop::RowTable>(handover, u"open"_s);
    QCOMPARE(cell(*open, u"tool R-14"_s, 1), u"Ratchet"_s);
    QCOMPARE(cell(*open, u"tool R-14"_s, 3), u"tool, out"_s);
    QCOMPARE(cell(*open, u"tool R-14"_s, 4), u"who has it: Ben Orr"_s);
    QVERIFY(cell(*open, u"tool R-14"_s, 5).startsWith(u"Ana Sol"));
    QCOMPARE(cell(*open, u"tags 11 – 20"_s, 3), u"tags, out"_s);
    QCOMPARE(cell(*open, u"accessory AC1"_s, 1), u"Starter"_s);
    QCOMPARE(cell(*open, u"accessory AC1"_s, 3), u"accessory, not placed"_s);
}

void TestGates::everyLooseEndLeadsToWhereItIsCleared()
{
    say(u"ana"_s, u"tool.issued"_s, u"R-14"_s, {{u"sort"_s, u"hand tool"_s}, {u"name"_s, u"Ratchet"_s}});
    say(u"ana"_s, u"tags.issued"_s, {}, {{u"first"_s, 11}, {u"last"_s, 20}});
    say(u"ana"_s, u"accessory.listed"_s, u"AC1"_s, {{u"name"_s, u"Starter"_s}, {u"part"_s, u"ST-4"_s}, {u"serial"_s, u"77"_s}});
    say(u"ana"_s, u"temporary.applied"_s, u"T1"_s, {{u"sort"_s, u"isolation"_s}, {u"name"_s, u"fuel valve shut"_s}});
    say(u"ana"_s, u"finding.raised"_s, u"F1"_s, {{u"description"_s, u"scratch"_s}});
    say(u"cho"_s, u"walkround.attached"_s, u"D2"_s, {{u"what"_s, u"a bolt behind it"_s}});
    say(u"ana"_s, u"handover.given"_s, {}, {{u"to"_s, u"ben"_s}, {u"open"_s, core::openAtHandover(*m_session->state())}});
    desktop::JobPlace place(*m_session, *m_feed, *m_signing, m_bench->kinds(), *m_ask, m_window.get());
    place.resize(1300, 700);
    place.show();
    const std::pair<const char *, const char *> expected[] = {{"loose.disconnected\nD1", "list"}, {"loose.attached\nD2", "walk-round"}, {"loose.temporary\nT1", "temporaries"}, {"loose.hold\nfree", "holds"},
                                                              {"loose.accessory\nAC1", "unit"}, {"loose.tool\nR-14", "parts-and-tools"}, {"loose.tags\n11 – 20", "parts-and-tools"},
                                                              {"loose.finding\nF1", "findings"}, {"loose.handover\nben", "handover"}};
    for (const auto &[key, page] : expected) {
        place.showPage(u"loose-ends"_s);
        auto *ends = named<desktop::RowTable>(place, u"looseEnds"_s);
        ends->choose(QString::fromUtf8(key));
        QVERIFY2(ends->chosen() == QString::fromUtf8(key), key);
        QTest::keyClick(&ends->view(), Qt::Key_Return);
        const auto *shown = named<desktop::Page>(place, QString::fromLatin1(page));
        QVERIFY2(shown->isVisible(), key);
        const QString subject = QString::fromUtf8(key).section(u'\n', 1);
        const auto tables = shown->findChildren<desktop::RowTable *>();
        const bool isChosen = std::any_of(tables.begin(), tables.end(), [&](desktop::RowTable *table) { return table->isVisible() && table->chosen() == subject; });
        QVERIFY2(isChosen || QLatin1String(page) == "list"_L1 || QLatin1String(page) == "handover"_L1, key);
    }
    // There is no row that leads nowhere.
    auto *ends = named<desktop::RowTable>(place, u"looseEnds"_s);
    for (const desktop::Row &row : std::vector<desktop::Row>(ends->model().rows())) {
        place.showPage(u"loose-ends"_s);
        ends->choose(row.key);
        QTest::keyClick(&ends->view(), Qt::Key_Return);
        QVERIFY2(!named<desktop::Page>(place, u"loose-ends"_s)->isVisible(), qPrintable(row.key));
    }
}

void TestGates::cardAndListTellOfTheWalkRound()
{
    say(u"cho"_s, u"walkround.attached"_s, u"D1"_s, {{u"what"_s, u"one bolt behind it"_s}});
    say(u"cho"_s, u"walkround.free"_s, u"D2"_s, {});
    auto &list = page<desktop::ListPage>();
    auto *table = named<QTableView>(list, u"interfaces"_s);
    const std::pair<const char *, QString> told[] = {{"D1", u"still attached: one bolt behind it"_s}, {"D2", u"confirmed free"_s}};
    for (const auto &[id, words] : told) {
        m_selection->choose({item(id)});
        const QModelIndex row = table->selectionModel()->selectedRows().front();
        QCOMPARE(row.siblingAtColumn(desktop::InterfaceModel::Missing).data().toString(), words);
        const auto labels = list.findChildren<QLabel *>();
        QVERIFY2(std::any_of(labels.begin(), labels.end(), [&words = words](const QLabel *label) { return label->text() == words; }), id);
        QVERIFY(named<QPushButton>(list, u"tag.lost"_s)->isVisible());
    }
}

void TestGates::followUpIsDoneFromItsRow()
{
    say(u"ana"_s, u"followup.set"_s, {}, {{u"what"_s, u"Torque of the mounts again"_s}, {u"due"_s, u"2026-03-20"_s}, {u"reference"_s, u"task 71-20"_s}});
    auto &findings = page<desktop::FindingsPage>();
    auto *due = named<desktop::RowTable>(findings, u"followUps"_s);
    QCOMPARE(due->model().rowCount(), 1);
    QVERIFY(!named<QPushButton>(findings, u"followup.done"_s)->isVisible());
    const QString key = due->model().rows().front().key;
    QCOMPARE(cell(*due, key, 1), u"due"_s);
    due->choose(key);
    named<QPushButton>(findings, u"followup.done"_s)->click();
    named<QWidget>(*sheet(), u"how"_s)->findChild<QLineEdit *>()->setText(u"All within"_s);
    QCOMPARE(sign(u"ana"_s), QString());
    QVERIFY(m_session->state()->followUps.front().done);
    QCOMPARE(cell(*due, key, 1), u"done"_s);
}

/// An isolation may have the number of an interface; each is told under its own name.
void TestGates::timelineNamesWhatTheActIsAbout()
{
    say(u"ana"_s, u"temporary.applied"_s, u"D1"_s, {{u"sort"_s, u"isolation"_s}, {u"name"_s, u"fuel valve shut"_s}});
    const std::pair<core::SubjectSort, QString> told[] = {{core::SubjectSort::Interface, u"D1 D1"_s}, {core::SubjectSort::Temporary, u"D1 fuel valve shut"_s}, {core::SubjectSort::Finding, u"D1"_s}, {core::SubjectSort::Accessory, u"D1"_s}};
    for (const auto &[sort, words] : told)
        QCOMPARE(desktop::subjectInWords(sort, u"D1"_s, *m_session->state()), words);
    auto &record = page<desktop::RecordPage>();
    const QString newest = named<desktop::RowTable>(record, u"entries"_s)->model().rows().front().cells[3];
    QVERIFY2(newest.startsWith(u"D1 fuel valve shut: Applied"), qPrintable(newest));
}

/// However low the page: it takes the room that its steps need, and no more than a screen of 768 pixels leaves it.
void TestGates::theUnitIsInSightOnASmallScreen()
{
    auto &unit = page<desktop::UnitPage>();
    unit.resize(1190, 300);
    auto *steps = named<desktop::RowTable>(unit, u"unitSteps"_s);
    QCOMPARE(steps->model().rowCount(), 3);
    const auto isLastInSight = [&] {
        const QRect last = steps->view().visualRect(steps->model().index(2, 0));
        return last.isValid() && last.bottom() <= steps->view().viewport()->height();
    };
    QTRY_VERIFY(isLastInSight());
    QVERIFY2(unit.height() <= 560, qPrintable(QString::number(unit.height())));
}

/// What it would hold back was done already, so one is refused; the other is not.
void TestGates::leadSetsAHoldPointOfTheSet()
{
    desktop::JobPlace place(*m_session, *m_feed, *m_signing, m_bench->kinds(), *m_ask, m_window.get());
    place.resize(1300, 700);
    place.show();
    place.showPage(u"holds"_s);
    named<QPushButton>(place, u"setHold"_s)->click();
    auto *standard = named<QComboBox>(*sheet(), u"standardHold"_s);
    QVERIFY(standard->count() > 5);
    standard->setCurrentIndex(standard->findData(u"start"_s));
    QVERIFY2(sign(u"ana"_s).contains(u"too late"), qPrintable(named<QLabel>(*sheet(), u"problem"_s)->text()));
    standard->setCurrentIndex(standard->findData(u"lift"_s));
    const auto *body = sheet()->findChild<QScrollArea *>();
    QTRY_VERIFY(body->viewport()->width() >= body->widget()->minimumSizeHint().width()); // it does not scroll sideways
    QTRY_VERIFY(sheet()->height() <= sheet()->screen()->availableGeometry().height());
    QVERIFY2(sign(u"ben"_s).contains(u"lead"), qPrintable(named<QLabel>(*sheet(), u"problem"_s)->text()));
    QCOMPARE(sign(u"ana"_s), QString());
    const core::HoldPoint *set = m_session->state()->hold(*core::HoldId::parse(u"lift"));
    QVERIFY(set);
    const auto standardSet = resources::loadHoldPoints();
    QVERIFY(standardSet);
    const auto at = std::find_if(standardSet->begin(), standardSet->end(), [](const core::NamedHold &one) { return one.id.text() == u"lift"; });
    QVERIFY(*set == core::holdIn(at->id, at->body)); // nothing is lost on the way through the cells
    QCOMPARE(cell(*named<desktop::RowTable>(place, u"holds"_s), u"lift"_s, 0), at->body.text(u"title"));
}

void TestGates::leadSetsAHoldPointOfTheirOwn()
{
    m_signing->open(desktop::setHoldPlan(*m_session, m_window.get()));
    named<QLineEdit>(*sheet(), u"holdId"_s)->setText(u"last-look"_s);
    named<QWidget>(*sheet(), u"title"_s)->findChild<QLineEdit *>()->setText(u"Last look into the bay"_s);
    named<QPlainTextEdit>(*sheet(), u"statements"_s)->setPlainText(u"Rags, tools and blanks are out.\n\nNobody is inside.\n"_s);
    QVERIFY(!sign(u"ana"_s).isEmpty()); // it holds nothing back
    auto *gates = named<QWidget>(*sheet(), u"gates"_s);
    named<QPushButton>(*gates, u"addRow"_s)->click();
    auto *table = gates->findChild<QTableWidget *>();
    table->editItem(table->item(0, 0));
    auto *acts = table->findChild<QComboBox *>();
    QVERIFY(acts && acts->findData(u"unit.positioned"_s) > 0);
    acts->setCurrentIndex(acts->findData(u"unit.positioned"_s));
    QTest::keyClick(acts, Qt::Key_Tab);
    QCOMPARE(sign(u"ana"_s), QString());
    const core::HoldPoint *set = m_session->state()->hold(*core::HoldId::parse(u"last-look"));
    QVERIFY(set);
    QCOMPARE(set->gates.front().act, u"unit.positioned"_s);
    QCOMPARE(set->statements, (std::vector{u"Rags, tools and blanks are out."_s, u"Nobody is inside."_s}));
    QVERIFY(set->conditions.empty());
}

QTEST_MAIN(TestGates)
#include "tst_gates.moc"
