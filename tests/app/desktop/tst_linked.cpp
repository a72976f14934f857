// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include "app/desktop/flows/signing.hpp"
#include "app/desktop/job_feed.hpp"
#include "app/desktop/pages/linked/linked_page.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/sign_sheet.hpp"
#include "core/job/linked.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/on_screen.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;
using core::json::Object;

namespace {

Object listing(const QString &name) { return {{u"name"_s, name}, {u"kind"_s, u"clamp"_s}, {u"zone"_s, u"Left"_s}}; }

} // namespace

/// Two jobs of one store, linked and handing an item on, as a person signs it on sheets.
class TestLinked : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup();
    void aJobIsChosenAndItsWorkOrderTyped();
    void anItemGoesOver();
    void thePageShowsHowTheOthersStand();

private:
    void turnTo(const core::LedgerId &job);
    void link(const core::LedgerId &from, const core::LedgerId &to, const QString &workOrder);
    void begin(QLatin1String kind, const std::vector<core::InterfaceId> &items = {}, const std::optional<QString> &subject = {});
    void type(const QString &field, const QString &text);
    void choose(const QString &field, const QString &choice);
    QString problem() const { return named<QLabel>(*m_sheet, u"problem"_s)->text(); }
    core::Statement sign();
    QString cell(const desktop::LinkedPage &page, const QString &table, int row, int column) const
    {
        const auto *model = named<desktop::RowTable>(page, table)->view().model();
        return model->index(row, column).data().toString();
    }

    std::unique_ptr<Bench> m_bench;
    std::unique_ptr<session::Session> m_session;
    std::unique_ptr<ScriptedAsk> m_ask;
    std::unique_ptr<QWidget> m_window;
    std::unique_ptr<desktop::JobFeed> m_feed;
    desktop::Signing *m_signing = nullptr;
    desktop::SignSheet *m_sheet = nullptr;
    std::optional<core::LedgerId> m_wing;
    std::optional<core::LedgerId> m_shop;
};

void TestLinked::init()
{
    m_bench = std::make_unique<Bench>();
    QCOMPARE(m_bench->trouble(), QString());
    m_session = m_bench->another();
    QVERIFY(m_session);
    m_wing = m_bench->openJob(*m_session);
    m_shop = m_bench->openJob(*m_session, {{u"work_order"_s, u"WO-2"_s}, {u"title"_s, u"Build-up"_s}});
    QVERIFY2(m_wing && m_shop, qPrintable(m_bench->trouble()));
    QCOMPARE(Bench::say(*m_session, *m_wing, u"ana"_s, u"interface.listed"_s, u"E1"_s, listing(u"Drain clamp"_s)), QString());
    QCOMPARE(Bench::say(*m_session, *m_wing, u"ben"_s, u"interface.disconnected"_s, u"E1"_s, {{u"tag"_s, u"7"_s}, {u"blanks_fitted"_s, 1}, {u"as_found"_s, u"worn"_s}}), QString());
    m_ask = std::make_unique<ScriptedAsk>();
    m_window = std::make_unique<QWidget>();
    m_window->show();
    m_feed = std::make_unique<desktop::JobFeed>();
    turnTo(*m_wing);
    m_signing = new desktop::Signing(*m_session, *m_feed, m_bench->kinds(), *m_ask, m_window.get());
}

void TestLinked::cleanup()
{
    m_window.reset();
    m_feed.reset();
    m_session.reset();
    m_bench.reset();
}

void TestLinked::turnTo(const core::LedgerId &job)
{
    QVERIFY(m_session->openJob(job));
    m_feed->take(m_session->state(), m_session->said(), m_session->reg());
}

void TestLinked::begin(QLatin1String kind, const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject)
{
    QTRY_VERIFY(m_window->findChild<desktop::SignSheet *>() == nullptr); // the one before is gone
    m_session->lock(); // whoever signed last is gone
    m_signing->begin(desktop::actionFor(kind), items, subject);
    QTRY_VERIFY((m_sheet = m_window->findChild<desktop::SignSheet *>()) != nullptr);
    type(u"person"_s, u"ana"_s);
}

void TestLinked::type(const QString &field, const QString &text)
{
    auto *editor = named<QWidget>(*m_sheet, field);
    auto *line = qobject_cast<QLineEdit *>(editor);
    if (!line)
        line = editor->findChild<QLineEdit *>();
    line->setText(text);
}

void TestLinked::choose(const QString &field, const QString &choice)
{
    auto *box = named<QWidget>(*m_sheet, field)->findChild<QComboBox *>();
    QVERIFY(box->findData(choice) >= 0);
    box->setCurrentIndex(box->findData(choice));
}

core::Statement TestLinked::sign()
{
    named<QLineEdit>(*m_sheet, u"secret"_s)->setText(Bench::pinOf(u"ana"_s));
    named<QPushButton>(*m_sheet, u"sign"_s)->click();
    if (!problem().isEmpty())
        qWarning() << problem();
    m_feed->take(m_session->state(), m_session->said(), m_session->reg());
    return m_session->said().back();
}

void TestLinked::link(const core::LedgerId &from, const core::LedgerId &to, const QString &workOrder)
{
    QCOMPARE(Bench::say(*m_session, from, u"ana"_s, u"job.linked"_s, {}, {{u"ledger"_s, to.text()}, {u"work_order"_s, workOrder}}), QString());
}

void TestLinked::aJobIsChosenAndItsWorkOrderTyped()
{
    begin("job.linked"_L1);
    auto *box = named<QWidget>(*m_sheet, u"ledger"_s)->findChild<QComboBox *>();
    QCOMPARE(box->count(), 2); // none chosen, and the one other job
    QCOMPARE(box->itemText(1), u"WO-2  Build-up"_s);
    choose(u"ledger"_s, m_shop->text());
    type(u"work_order"_s, u"WO-7"_s);
    QVERIFY2(problem().contains(u"WO-2"_s), qPrintable(problem()));
    type(u"work_order"_s, u"WO-2"_s);
    QCOMPARE(problem(), QString());
    QCOMPARE(sign().kind, u"job.linked"_s);
    QVERIFY(core::seenJob(*m_feed->state(), *m_shop));
    // Sending waits for the answer.
    QVERIFY(!m_signing->whyNot(desktop::actionFor("interface.sent"_L1), {*core::InterfaceId::parse(u"E1")}).empty());
}

void TestLinked::anItemGoesOver()
{
    const auto e1 = *core::InterfaceId::parse(u"E1");
    QVERIFY(!desktop::comesIntoQuestion(desktop::actionFor("interface.sent"_L1), *m_feed->state(), {e1}, false)); // there is nowhere to send to
    link(*m_wing, *m_shop, u"WO-2"_s);
    link(*m_shop, *m_wing, u"WO-1"_s);
    turnTo(*m_wing);
    QVERIFY(desktop::comesIntoQuestion(desktop::actionFor("interface.sent"_L1), *m_feed->state(), {e1}, false));
    begin("interface.sent"_L1, {e1});
    QCOMPARE(problem(), QString()); // the one linked job is chosen
    QCOMPARE(sign().body.text(u"to"), m_shop->text());
    QVERIFY(!m_signing->whyNot(desktop::actionFor("interface.reconnected"_L1), {e1}).empty());

    turnTo(*m_shop);
    begin("interface.taken_on"_L1, {}, u"E1"_s);
    QVERIFY(!m_sheet->findChild<QWidget *>(u"as_found"_s)); // what the wing says is not asked again
    type(u"tag_instead"_s, u"S-1"_s);
    QCOMPARE(problem(), QString());
    const core::Statement said = sign();
    QCOMPARE(said.subject, u"E1"_s);
    QCOMPARE(said.body.text(u"as_found"), u"worn"_s);
    QCOMPARE(said.body.text(u"tag"), u"7"_s);
    const core::InterfaceState &taken = *m_feed->state()->item(e1);
    QCOMPARE(taken.removal->tag, u"S-1"_s);
    QVERIFY(core::hadAHand(*m_feed->state(), taken, *core::PersonId::parse(u"ben")));
}

void TestLinked::thePageShowsHowTheOthersStand()
{
    const desktop::ReadAttachment none = [](const core::Digest &) { return core::Result<QByteArray>(core::failure(core::ErrorCode::NotFound, {})); };
    desktop::Selection selection;
    const desktop::PageTools tools{*m_feed, *m_signing, selection, *m_ask, m_bench->kinds(), none};
    desktop::LinkedPage page(tools);
    page.show();
    link(*m_wing, *m_shop, u"WO-2"_s);
    turnTo(*m_wing);
    QCOMPARE(cell(page, u"linkedJobs"_s, 0, 0), u"WO-2"_s);
    QVERIFY(cell(page, u"linkedJobs"_s, 0, 2).contains(u"does not name this job"_s));
    link(*m_shop, *m_wing, u"WO-1"_s);
    QCOMPARE(Bench::say(*m_session, *m_wing, u"ana"_s, u"interface.sent"_s, u"E1"_s, {{u"to"_s, m_shop->text()}}), QString());
    turnTo(*m_wing);
    QVERIFY2(cell(page, u"handedOn"_s, 0, 3).contains(u"not taken on there yet"_s), qPrintable(cell(page, u"handedOn"_s, 0, 3)));
    QCOMPARE(desktop::LinkedPage::waiting(tools), 0);
    turnTo(*m_shop);
    QCOMPARE(desktop::LinkedPage::waiting(tools), 1);
    QCOMPARE(cell(page, u"handedOn"_s, 0, 0), u"E1"_s);
    QVERIFY(cell(page, u"handedOn"_s, 0, 2).contains(u"WO-1"_s));
    auto *table = named<desktop::RowTable>(page, u"handedOn"_s);
    table->choose(u"E1"_s);
    QCOMPARE(table->chosen(), u"E1"_s);
}

QTEST_MAIN(TestLinked)
#include "tst_linked.moc"
