// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

#include "app/desktop/flows/signing.hpp"
#include "app/desktop/job_feed.hpp"
#include "app/desktop/pages/handover/handover_page.hpp"
#include "app/desktop/pages/list/list_page.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/sign_sheet.hpp"
#include "core/job/stage.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;
using core::json::arrayOf;
using core::json::Object;

namespace {

template <class Widget>
Widget *named(const QWidget &in, const QString &name)
{
    auto *found = in.findChild<Widget *>(name);
    if (!found)
        qFatal("no widget %s", qPrintable(name));
    return found;
}

core::InterfaceId item(const char *id) { return *core::InterfaceId::parse(QString::fromLatin1(id)); }

/// Everything that stands on labels, as somebody reads it.
QString readOn(const QWidget &widget)
{
    QStringList lines;
    for (const QLabel *label : widget.findChildren<QLabel *>())
        lines << label->text();
    return lines.join(u'\n');
}

} // namespace

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
    void refresh();
    QString sign(const QString &who);
    void type(const QString &field, const QString &text) { named<QWidget>(*sheet(), field)->findChild<QLineEdit *>()->setText(text); }
    desktop::SignSheet *sheet();
    desktop::PageTools tools() { return {*m_feed, *m_signing, *m_selection, *m_ask, m_bench->kinds(), {}}; }

    std::unique_ptr<Bench> m_bench;
    std::unique_ptr<session::Session> m_session;
    std::unique_ptr<ScriptedAsk> m_ask;
    std::unique_ptr<QWidget> m_window;
    std::unique_ptr<desktop::JobFeed> m_feed;
    std::unique_ptr<desktop::Selection> m_selection;
    std::unique_ptr<desktop::ListPage> m_list;
    desktop::Signing *m_signing = nullptr;
    std::optional<core::LedgerId> m_ledger;
};

void TestStates::init()
{
    m_bench = std::make_unique<Bench>();
    QCOMPARE(m_bench->trouble(), QString());
    m_session = m_bench->another();
    QVERIFY(m_session);
    m_ledger = m_bench->openJob(*m_session);
    QVERIFY2(m_ledger, qPrintable(m_bench->trouble()));
    say(u"ana"_s, u"interface.listed"_s, u"D1"_s, {{u"name"_s, u"Drain, forward"_s}, {u"kind"_s, u"drain"_s}, {u"zone"_s, u"Left"_s}});
    say(u"ana"_s, u"interface.listed"_s, u"D2"_s, {{u"name"_s, u"Drain, aft"_s}, {u"kind"_s, u"drain"_s}, {u"zone"_s, u"Left"_s}, {u"depends_on"_s, arrayOf({u"D1"_s})}});
    for (const QString &id : {u"D1"_s, u"D2"_s}) {
        say(u"ana"_s, u"interface.disconnected"_s, id, {{u"tag"_s, id}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}});
        say(u"ana"_s, u"interface.reconnected"_s, id, {{u"tag_recovered"_s, id}, {u"blanks_removed"_s, 0}});
    }
    QVERIFY(m_session->openJob(*m_ledger));
    m_ask = std::make_unique<ScriptedAsk>();
    m_window = std::make_unique<QWidget>();
    m_window->show();
    m_feed = std::make_unique<desktop::JobFeed>();
    m_selection = std::make_unique<desktop::Selection>();
    m_signing = new desktop::Signing(*m_session, *m_feed, m_bench->kinds(), *m_ask, m_window.get());
    connect(m_signing, &desktop::Signing::hasSigned, this, &TestStates::refresh);
    refresh();
    m_list = std::make_unique<desktop::ListPage>(tools());
    m_list->show();
    m_selection->choose({item("D1")});
}

void TestStates::cleanup()
{
    m_list.reset();
    m_window.reset();
    m_selection.reset();
    m_feed.reset();
    m_session.reset();
    m_bench.reset();
}

void TestStates::say(const QString &who, const QString &kind, const std::optional<QString> &subject, Object body)
{
    QCOMPARE(Bench::say(*m_session, *m_ledger, who, kind, subject, std::move(body)), QString());
    if (m_feed)
        refresh();
}

void TestStates::refresh()
{
    QVERIFY(m_session->refresh());
    m_feed->take(m_session->state(), m_session->said(), m_session->reg());
    m_feed->tellPersonChanged();
}

desktop::SignSheet *TestStates::sheet()
{
    desktop::SignSheet *found = nullptr;
    [&] { QTRY_VERIFY((found = m_window->findChild<desktop::SignSheet *>()) != nullptr); }();
    return found;
}

QString TestStates::sign(const QString &who)
{
    desktop::SignSheet *open = sheet();
    if (auto *other = open->findChild<QPushButton *>(u"somebodyElse"_s); other && other->isVisible())
        other->click();
    auto *person = named<QWidget>(*open, u"person"_s);
    auto *line = qobject_cast<QLineEdit *>(person);
    (line ? line : person->findChild<QLineEdit *>())->setText(who);
    named<QLineEdit>(*open, u"secret"_s)->setText(Bench::pinOf(who));
    named<QPushButton>(*open, u"sign"_s)->click();
    const QString problem = open->isVisible() ? named<QLabel>(*open, u"problem"_s)->text() : QString();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); // the sheet goes once it has signed
    return problem;
}

/// A name is all that is typed: the id and the side are there already.
void TestStates::undoneAndOnNoList()
{
    named<QPushButton>(*m_list, u"interface.unlisted"_s)->click();
    type(u"name"_s, u"Clamp behind the drain"_s);
    QCOMPARE(sign(u"ben"_s), QString());
    const core::InterfaceState *found = m_session->state()->item(item("X1"));
    QVERIFY(found);
    QCOMPARE(found->listed.zone, u"Left"_s);
    QCOMPARE(core::stageOf(*found), core::Stage::Disconnected);
    m_selection->choose({item("X1")});
    QVERIFY2(readOn(*m_list).contains(u"details to follow"), qPrintable(readOn(*m_list)));
    QVERIFY(named<QPushButton>(*m_list, u"interface.detailed"_s)->isVisible());
    m_selection->choose({item("D1")});
    QVERIFY(!named<QPushButton>(*m_list, u"interface.detailed"_s)->isVisible());
}

void TestStates::stoppedAndTakenUp()
{
    QVERIFY(!named<QPushButton>(*m_list, u"work.resumed"_s)->isVisible());
    named<QPushButton>(*m_list, u"work.stopped"_s)->click();
    type(u"word"_s, u"Union not wiped yet"_s);
    QCOMPARE(sign(u"ben"_s), QString());
    QVERIFY2(readOn(*m_list).contains(u"Union not wiped yet"), qPrintable(readOn(*m_list)));
    named<QPushButton>(*m_list, u"work.resumed"_s)->click();
    QCOMPARE(sign(u"ana"_s), QString());
    QVERIFY(m_session->state()->item(item("D1"))->stopped->seenBy.contains(*core::PersonId::parse(u"ana")));
}

void TestStates::conditionStandsOnTheCardAndAtHandover()
{
    say(u"ben"_s, u"condition.stated"_s, u"D1"_s, {{u"condition"_s, u"slave hardware"_s}, {u"reason"_s, u"New bolt is on its way."_s}, {u"to_come_out"_s, u"1 bolt"_s}});
    QVERIFY2(readOn(*m_list).contains(u"Slave hardware: to come out: 1 bolt; New bolt is on its way."), qPrintable(readOn(*m_list)));
    QVERIFY(named<QPushButton>(*m_list, u"condition.cleared"_s)->isVisible());
    // Damaged, and never undone in this job: the handover has it all the same.
    say(u"ana"_s, u"interface.listed"_s, u"D3"_s, {{u"name"_s, u"Drain, mast"_s}, {u"kind"_s, u"drain"_s}, {u"zone"_s, u"Left"_s}});
    say(u"ben"_s, u"condition.stated"_s, u"D3"_s, {{u"condition"_s, u"damaged"_s}, {u"reason"_s, u"Dent"_s}, {u"finding"_s, u"F1"_s}});
    desktop::HandoverPage handover(tools());
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
    const auto *words = named<QListWidget>(*sheet(), u"words"_s);
    for (int i = 0; i < words->count(); ++i)
        told << words->item(i)->text();
    QVERIFY2(told.join(u'\n').contains(u"D2 (Drain, aft): its inspection is void."), qPrintable(told.join(u'\n')));
    type(u"reason"_s, u"Turned while wiped down"_s);
    QCOMPARE(sign(u"ben"_s), QString());
    QVERIFY(m_session->state()->item(item("D2"))->acceptances.empty());
}

/// The re-inspection is an exception that this job does not know, so nothing offers it.
void TestStates::ownWorkIsNotHeldOut()
{
    QCOMPARE(core::stageOf(*m_session->state()->item(item("D1"))), core::Stage::Secured);
    QVERIFY(!named<QPushButton>(*m_list, u"inspection.repeated"_s)->isVisible());
    QVERIFY(named<QPushButton>(*m_list, u"inspection.accepted"_s)->isVisible());
}

QTEST_MAIN(TestStates)
#include "tst_states.moc"
