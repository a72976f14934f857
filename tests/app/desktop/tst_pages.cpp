// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

#include <map>

#include "app/desktop/actions.hpp"
#include "app/desktop/pages/findings/findings_page.hpp"
#include "app/desktop/pages/handover/handover_page.hpp"
#include "app/desktop/pages/inspect/inspect_page.hpp"
#include "app/desktop/pages/list/list_page.hpp"
#include "app/desktop/pages/loose_ends/loose_ends_page.hpp"
#include "app/desktop/pages/pages.hpp"
#include "app/desktop/pages/record/record_page.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "resources/resources.hpp"
#include "tests/app/desktop/scripted_ask.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;

namespace {

/// Says no where it is told to, and remembers what was begun.
class StubDeeds : public desktop::Deeds {
public:
    core::Refusals whyNot(const desktop::ActionLine &action, const std::vector<core::InterfaceId> &, const std::optional<QString> &) const override
    {
        const auto at = refused.find(action.kind);
        return at == refused.end() ? core::Refusals() : core::Refusals{{u"stub.no"_s, {}, at->second, {}}};
    }
    void begin(const desktop::ActionLine &action, const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject) override
    {
        QStringList line{action.kind};
        for (const core::InterfaceId &item : items)
            line << item.text();
        if (subject)
            line << *subject;
        begun << line.join(u' ');
    }
    std::optional<core::PersonId> person() const override { return {}; }

    std::map<QString, QString> refused;
    QStringList begun;
};

/// A job on a feed, without a store.
struct Desk {
    story::Story story;
    desktop::JobFeed feed;
    StubDeeds deeds;
    desktop::Selection selection;
    ScriptedAsk ask;
    core::Result<core::Kinds> kinds = resources::loadKinds();

    explicit Desk(const QString &told = {}) : story(told) { take(); }
    void take() { feed.take(std::make_shared<const core::JobState>(story.job()), story.fold().said(), story.reg()); }
    void tell(const QString &text)
    {
        story.tell(text);
        take();
    }
    desktop::PageTools tools() { return {feed, deeds, selection, ask, *kinds, {}}; }
};

core::InterfaceId item(const QString &id) { return *core::InterfaceId::parse(id); }

template <class Widget>
Widget *named(const QWidget &in, const char *name)
{
    return in.findChild<Widget *>(QString::fromLatin1(name));
}

} // namespace

class TstPages : public QObject {
    Q_OBJECT

private slots:
    void everyPageTakesAnEmptyFeed();
    void chosenRowOffersActions();
    void refusedActionSaysWhy();
    void keyBeginsWhatTheButtonDoes();
    void keyOfARefusedActionDoesNothing();
    void severalRowsAreBegunTogether();
    void scannedTagLeavesOneRow();
    void looseEndLeadsToItsItem();
    void inspectorGetsTheNextItem();
    void inspectorSeesWhyNot();
    void struckEntryStaysLegible();
    void findingIsClosedFromItsRow();
    void handoverListsWhatIsOpen();
};

void TstPages::everyPageTakesAnEmptyFeed()
{
    Desk desk;
    desk.feed.take(nullptr, {}, desk.story.reg());
    for (const desktop::PageLine &line : desktop::pages()) {
        const std::unique_ptr<desktop::Page> page(line.make(desk.tools(), nullptr));
        page->show();
        QVERIFY2(page->isVisible(), line.name.data());
        QCOMPARE(line.waiting(desk.tools()), 0);
    }
}

void TstPages::chosenRowOffersActions()
{
    Desk desk;
    desktop::ListPage page(desk.tools());
    page.show();
    desk.selection.choose({item(u"D1"_s)});
    auto *button = named<QPushButton>(page, "interface.disconnected");
    QVERIFY(button->isVisible());
    QVERIFY(button->isEnabled());
    QVERIFY(button->height() >= 44);
    QTest::mouseClick(button, Qt::LeftButton);
    QCOMPARE(desk.deeds.begun, QStringList{u"interface.disconnected D1"_s});
}

void TstPages::refusedActionSaysWhy()
{
    Desk desk;
    desk.deeds.refused = {{u"interface.reconnected"_s, u"D1 was never disconnected."_s}};
    desktop::ListPage page(desk.tools());
    page.show();
    desk.selection.choose({item(u"D1"_s)});
    QVERIFY(!named<QPushButton>(page, "interface.reconnected")->isEnabled());
    auto *reason = named<QLabel>(page, "interface.reconnected.reason");
    QVERIFY(reason->isVisible());
    QCOMPARE(reason->text(), u"D1 was never disconnected."_s);
    QVERIFY(!named<QLabel>(page, "interface.disconnected.reason")->isVisible());
}

void TstPages::keyBeginsWhatTheButtonDoes()
{
    Desk desk;
    desktop::ListPage page(desk.tools());
    page.show();
    desk.selection.choose({item(u"D1"_s)});
    QTest::keyClick(named<QTableView>(page, "interfaces"), Qt::Key_D);
    QCOMPARE(desk.deeds.begun, QStringList{u"interface.disconnected D1"_s});
}

void TstPages::keyOfARefusedActionDoesNothing()
{
    Desk desk;
    desk.deeds.refused = {{u"interface.disconnected"_s, u"No."_s}};
    desktop::ListPage page(desk.tools());
    page.show();
    desk.selection.choose({item(u"D1"_s)});
    QTest::keyClick(named<QTableView>(page, "interfaces"), Qt::Key_D);
    QCOMPARE(desk.deeds.begun, QStringList());
}

void TstPages::severalRowsAreBegunTogether()
{
    Desk desk;
    desktop::ListPage page(desk.tools());
    page.show();
    auto *table = named<QTableView>(page, "interfaces");
    table->selectAll();
    QVERIFY(desk.selection.items().size() > 1);
    QTest::keyClick(table, Qt::Key_D);
    QCOMPARE(desk.deeds.begun.size(), 1);
    QCOMPARE(desk.deeds.begun.front().count(u' '), static_cast<qsizetype>(desk.selection.items().size()));
}

void TstPages::scannedTagLeavesOneRow()
{
    Desk desk(u"Ana disconnects D1"_s);
    QCOMPARE(desk.story.refusedBy(), QString());
    const QString id = u"D1"_s;
    desktop::ListPage page(desk.tools());
    page.show();
    QTest::keyClicks(named<QLineEdit>(page, "filter"), id);
    QTest::keyClick(named<QLineEdit>(page, "filter"), Qt::Key_Return);
    QCOMPARE(desk.selection.items().front().text(), id);
}

void TstPages::looseEndLeadsToItsItem()
{
    Desk desk(u"Ana disconnects D1"_s);
    desktop::LooseEndsPage page(desk.tools());
    page.show();
    QSignalSpy led(&page, &desktop::Page::pageWanted);
    auto *table = named<desktop::RowTable>(page, "looseEnds");
    QCOMPARE(table->model().rowCount(), static_cast<int>(desk.feed.looseEnds().size()));
    table->choose(u"loose.disconnected\nD1"_s);
    QTest::keyClick(&table->view(), Qt::Key_Return);
    QCOMPARE(led.size(), 1);
    QCOMPARE(led.front().front().toString(), u"list"_s);
    QCOMPARE(desk.selection.items().front().text(), u"D1"_s);
}

void TstPages::inspectorGetsTheNextItem()
{
    Desk desk(u"Ana disconnects C1; Ana disconnects K1; Ben reconnects C1; Ben reconnects K1"_s);
    QCOMPARE(desk.story.refusedBy(), QString());
    desktop::InspectPage page(desk.tools());
    page.show();
    auto *queue = named<desktop::RowTable>(page, "queue");
    QCOMPARE(queue->model().rowCount(), 2);
    QCOMPARE(queue->chosen(), u"C1"_s);
    QTest::keyClick(&queue->view(), Qt::Key_A);
    QCOMPARE(desk.deeds.begun, QStringList{u"inspection.accepted C1"_s});
    desk.tell(u"Cho accepts C1"_s);
    QCOMPARE(desk.story.refusedBy(), QString());
    QCOMPARE(queue->model().rowCount(), 1);
    QCOMPARE(queue->chosen(), u"K1"_s);
}

void TstPages::inspectorSeesWhyNot()
{
    Desk desk(u"Ana disconnects K1; Ben reconnects K1"_s);
    QCOMPARE(desk.story.refusedBy(), QString());
    desk.deeds.refused = {{u"inspection.accepted"_s, u"Ben had a hand in K1."_s}};
    desktop::InspectPage page(desk.tools());
    page.show();
    QCOMPARE(named<QLabel>(page, "inspection.accepted.reason")->text(), u"Ben had a hand in K1."_s);
}

void TstPages::struckEntryStaysLegible()
{
    Desk desk(u"Ana disconnects D1"_s);
    const qint64 seq = static_cast<qint64>(desk.story.fold().said().size());
    desk.tell(u"Ana strikes entry=%1"_s.arg(seq));
    QCOMPARE(desk.story.refusedBy(), QString());
    desktop::RecordPage page(desk.tools());
    page.show();
    auto &model = named<desktop::RowTable>(page, "entries")->model();
    const int row = model.rowOf(QString::number(seq));
    QVERIFY(row >= 0);
    QVERIFY(model.index(row, 0).data(Qt::FontRole).value<QFont>().strikeOut());
    QVERIFY(model.index(row, 3).data().toString().contains(u"D1"_s));
    QVERIFY(!model.index(row - 1, 0).data(Qt::FontRole).value<QFont>().strikeOut());
}

void TstPages::findingIsClosedFromItsRow()
{
    Desk desk;
    desk.tell(u"Ana raises F1"_s);
    QCOMPARE(desk.story.refusedBy(), QString());
    desktop::FindingsPage page(desk.tools());
    page.show();
    named<desktop::RowTable>(page, "findings")->choose(u"F1"_s);
    QTest::mouseClick(named<QPushButton>(page, "finding.closed"), Qt::LeftButton);
    QCOMPARE(desk.deeds.begun, QStringList{u"finding.closed F1"_s});
}

void TstPages::handoverListsWhatIsOpen()
{
    Desk desk(u"Ana disconnects D1"_s);
    desktop::HandoverPage page(desk.tools());
    page.show();
    auto *open = named<desktop::RowTable>(page, "open");
    QCOMPARE(open->model().rowCount(), 1);
    desk.tell(u"Ana disconnects K1"_s);
    QCOMPARE(open->model().rowCount(), 2);
}

QTEST_MAIN(TstPages)
#include "tst_pages.moc"
