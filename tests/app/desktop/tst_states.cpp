// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QListWidget>
#include <QPushButton>
#include <QTest>

#include "app/desktop/pages/handover/handover_page.hpp"
#include "app/desktop/pages/list/list_page.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "core/job/stage.hpp"
#include "tests/app/desktop/on_screen.hpp"
#include "tests/app/desktop/sheet_bench.hpp"

using namespace Qt::StringLiterals;
using core::json::arrayOf;
using core::json::Object;

/// Conditions, break points, what was on no list and what a disturbance voids, through the list, its card and the sheets.
class TestStates : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup();
    void undoneAndOnNoList();
    void stoppedAndTakenUp();
    void conditionStandsOnTheCardAndAtHandover();
    void disturbanceSaysWhatItVoids();
    void ownWorkIsNotHeldOut();

private:
    void say(const QString &who, const QString &kind, const std::optional<QString> &subject, Object body);
    void type(const QString &field, const QString &text) { typeInto(*m_on->sheet(), field, text); }
    const core::JobState &job() const { return *m_on->feed().state(); }

    std::unique_ptr<Bench> m_bench;
    std::unique_ptr<session::Session> m_other;
    std::unique_ptr<SheetBench> m_on;
    std::unique_ptr<desktop::ListPage> m_list;
    std::optional<core::LedgerId> m_ledger;
};

void TestStates::init()
{
    m_bench = std::make_unique<Bench>();
    QCOMPARE(m_bench->trouble(), QString());
    m_other = m_bench->another();
    QVERIFY(m_other);
    m_ledger = m_bench->openJob(*m_other);
    QVERIFY2(m_ledger, qPrintable(m_bench->trouble()));
    say(u"ana"_s, u"interface.listed"_s, u"D1"_s, {{u"name"_s, u"Drain, forward"_s}, {u"kind"_s, u"drain"_s}, {u"zone"_s, u"Left"_s}});
    say(u"ana"_s, u"interface.listed"_s, u"D2"_s, {{u"name"_s, u"Drain, aft"_s}, {u"kind"_s, u"drain"_s}, {u"zone"_s, u"Left"_s}, {u"depends_on"_s, arrayOf({u"D1"_s})}});
    for (const QString &id : {u"D1"_s, u"D2"_s}) {
        say(u"ana"_s, u"interface.disconnected"_s, id, {{u"tag"_s, id}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}});
        say(u"ana"_s, u"interface.reconnected"_s, id, {{u"tag_recovered"_s, id}, {u"blanks_removed"_s, 0}});
    }
    m_on = std::make_unique<SheetBench>(*m_bench, m_ledger);
    m_list = std::make_unique<desktop::ListPage>(m_on->tools());
    m_list->show();
    m_on->selection().choose({item("D1")});
}

void TestStates::cleanup()
{
    m_list.reset();
    m_on.reset();
    m_other.reset();
    m_bench.reset();
}

/// As another program would.
void TestStates::say(const QString &who, const QString &kind, const std::optional<QString> &subject, Object body)
{
    QCOMPARE(Bench::say(*m_other, *m_ledger, who, kind, subject, std::move(body)), QString());
    if (m_on)
        m_on->refresh();
}

/// A name is all that is typed: the id and the side are there already.
void TestStates::undoneAndOnNoList()
{
    named<QPushButton>(*m_list, u"interface.unlisted"_s)->click();
    type(u"name"_s, u"Clamp behind the drain"_s);
    QCOMPARE(m_on->sign(u"ben"_s), QString());
    const core::InterfaceState *found = job().item(item("X1"));
    QVERIFY(found);
    QCOMPARE(found->listed.zone, u"Left"_s);
    QCOMPARE(core::stageOf(*found), core::Stage::Disconnected);
    m_on->selection().choose({item("X1")});
    QVERIFY2(readOn(*m_list).contains(u"details to follow"), qPrintable(readOn(*m_list)));
    QVERIFY(named<QPushButton>(*m_list, u"interface.detailed"_s)->isVisible());
    m_on->selection().choose({item("D1")});
    QVERIFY(!named<QPushButton>(*m_list, u"interface.detailed"_s)->isVisible());
}

void TestStates::stoppedAndTakenUp()
{
    QVERIFY(!named<QPushButton>(*m_list, u"work.resumed"_s)->isVisible());
    named<QPushButton>(*m_list, u"work.stopped"_s)->click();
    type(u"word"_s, u"Union not wiped yet"_s);
    QCOMPARE(m_on->sign(u"ben"_s), QString());
    QVERIFY2(readOn(*m_list).contains(u"Union not wiped yet"), qPrintable(readOn(*m_list)));
    named<QPushButton>(*m_list, u"work.resumed"_s)->click();
    QCOMPARE(m_on->sign(u"ana"_s), QString());
    QVERIFY(job().item(item("D1"))->stopped->seenBy.contains(*core::PersonId::parse(u"ana")));
}

void TestStates::conditionStandsOnTheCardAndAtHandover()
{
    say(u"ben"_s, u"condition.stated"_s, u"D1"_s, {{u"condition"_s, u"slave hardware"_s}, {u"reason"_s, u"New bolt is on its way."_s}, {u"to_come_out"_s, u"1 bolt"_s}});
    QVERIFY2(readOn(*m_list).contains(u"Slave hardware: to come out: 1 bolt; New bolt is on its way."), qPrintable(readOn(*m_list)));
    QVERIFY(named<QPushButton>(*m_list, u"condition.cleared"_s)->isVisible());
    // Damaged, and never undone in this job: the handover has it all the same.
    say(u"ana"_s, u"interface.listed"_s, u"D3"_s, {{u"name"_s, u"Drain, mast"_s}, {u"kind"_s, u"drain"_s}, {u"zone"_s, u"Left"_s}});
    say(u"ben"_s, u"condition.stated"_s, u"D3"_s, {{u"condition"_s, u"damaged"_s}, {u"reason"_s, u"Dent"_s}, {u"finding"_s, u"F1"_s}});
    desktop::HandoverPage handover(m_on->tools());
    auto *open = named<desktop::RowTable>(handover, u"open"_s);
    const auto row = [&](const QString &key) { return open->model().rows()[static_cast<std::size_t>(open->model().rowOf(key))].cells; };
    QVERIFY2(row(u"D1"_s).join(u'|').contains(u"Slave hardware"), qPrintable(row(u"D1"_s).join(u'|')));
    QVERIFY2(row(u"D3"_s).join(u'|').contains(u"Damaged: Dent"), qPrintable(row(u"D3"_s).join(u'|')));
}

void TestStates::disturbanceSaysWhatItVoids()
{
    say(u"cho"_s, u"inspection.accepted"_s, u"D2"_s, {});
    named<QPushButton>(*m_list, u"interface.disturbed"_s)->click();
    QStringList told;
    const auto *words = named<QListWidget>(*m_on->sheet(), u"words"_s);
    for (int i = 0; i < words->count(); ++i)
        told << words->item(i)->text();
    QVERIFY2(told.join(u'\n').contains(u"D2 (Drain, aft): its inspection is void."), qPrintable(told.join(u'\n')));
    type(u"reason"_s, u"Turned while wiped down"_s);
    QCOMPARE(m_on->sign(u"ben"_s), QString());
    QVERIFY(job().item(item("D2"))->acceptances.empty());
}

/// The re-inspection is an exception that this job does not know, so nothing offers it.
void TestStates::ownWorkIsNotHeldOut()
{
    QCOMPARE(core::stageOf(*job().item(item("D1"))), core::Stage::Secured);
    QVERIFY(!named<QPushButton>(*m_list, u"inspection.repeated"_s)->isVisible());
    QVERIFY(named<QPushButton>(*m_list, u"inspection.accepted"_s)->isVisible());
}

QTEST_MAIN(TestStates)
#include "tst_states.moc"
