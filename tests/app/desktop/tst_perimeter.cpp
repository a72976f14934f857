// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QAccessible>
#include <QElapsedTimer>
#include <QLabel>
#include <QProcess>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>
#include <QFontMetricsF>
#include <QImage>
#include <QPainter>
#include <QTest>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

#include "app/desktop/pages/list/list_page.hpp"
#include "app/desktop/pages/loose_ends/loose_ends_page.hpp"
#include "app/desktop/pages/perimeter/perimeter_legend.hpp"
#include "app/desktop/pages/perimeter/perimeter_page.hpp"
#include "app/desktop/pages/perimeter/perimeter_view.hpp"
#include "app/desktop/parts/stage_glyph.hpp"
#include "app/picture/perimeter_of.hpp"
#include "core/measure/working.hpp"
#include "resources/resources.hpp"
#include "tests/app/desktop/scripted_ask.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;

namespace {

class NoDeeds : public desktop::Deeds {
public:
    core::Refusals whyNot(const desktop::ActionLine &, const std::vector<core::InterfaceId> &, const std::optional<QString> &) const override { return {}; }
    void begin(const desktop::ActionLine &, const std::vector<core::InterfaceId> &, const std::optional<QString> &) override {}
    std::optional<core::PersonId> person() const override { return {}; }
};

/// A job on a feed, without a store.
struct Desk {
    story::Story story;
    desktop::JobFeed feed;
    NoDeeds deeds;
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
    QString chosen() const { return selection.isSingle() ? selection.items().front().text() : QString(); }
};

struct Shown {
    desktop::PerimeterPage page;
    desktop::PerimeterView &view;

    explicit Shown(Desk &desk, QSize size = {1000, 700}) : page(desk.tools()), view(*page.findChild<desktop::PerimeterView *>())
    {
        page.resize(size);
        page.show();
    }
    void press(int key, int times = 1)
    {
        for (int i = 0; i < times; ++i)
            QTest::keyClick(&view, static_cast<Qt::Key>(key));
    }
    QString current() const { return view.current() ? view.current()->id : QString(); }
    QString text(const char *label) const { return page.findChild<QLabel *>(QString::fromLatin1(label))->text(); }
    QImage picture() { return view.viewport()->grab().toImage(); }
};

core::InterfaceId item(const QString &id) { return *core::InterfaceId::parse(id); }

/// All items in the order of the walk.
std::vector<picture::PerimeterItem> walkOf(const picture::Perimeter &perimeter)
{
    std::vector<picture::PerimeterItem> all;
    for (const picture::PerimeterZone &zone : perimeter)
        all.insert(all.end(), zone.items.begin(), zone.items.end());
    return all;
}

const picture::PerimeterItem *found(const picture::Perimeter &perimeter, const QString &id)
{
    for (const picture::PerimeterZone &zone : perimeter) {
        for (const picture::PerimeterItem &item : zone.items) {
            if (item.id == id)
                return &item;
        }
    }
    return nullptr;
}

/// A job that asks for so many items more than the story's own, without telling of each.
std::shared_ptr<const core::JobState> jobOf(const core::JobState &like, qsizetype items)
{
    auto job = std::make_shared<core::JobState>(like);
    const core::InterfaceState sample = like.items[like.items.size() - 1];
    for (qsizetype i = static_cast<qsizetype>(job->items.size()); i < items; ++i) {
        core::InterfaceState more = sample;
        more.listed.id = item(u"X%1"_s.arg(i));
        more.listed.zone = u"Zone %1"_s.arg(i % 6);
        job->itemAt.insert(more.listed.id, i);
        job->items.push_back(more);
    }
    return job;
}

} // namespace

class TestPerimeter : public QObject {
    Q_OBJECT

private slots:
    void drawingHoldsTheList();
    void arrowWalksAlongTheBoundary();
    void pageDownGoesOnToTheNextZone();
    void selectionIsTheListsOwn();
    void returnOpensTheItem();
    void clickChoosesWhatItHits();
    void glyphChangesWhenItIsSigned();
    void looseIsWhatStopsClosure();
    void closureIsSaidAsOnTheOtherPage_data();
    void closureIsSaidAsOnTheOtherPage();
    void appliedStandsOutsideUntilItIsRemoved();
    void hoistIsToldOf_data();
    void hoistIsToldOf();
    void mountsAreMarked();
    void screenReaderHearsWhatIsChosen();
    void oneGapIsSeenAmongThousands();
    void keysEnlargeAndShowAll();
    void wheelKeepsWhatLiesUnderIt();
    void walkKeepsTheItemInSight();
    void legendCounts();
    void legendBreaksIntoRows();
    void printsOnOnePage_data();
    void printsOnOnePage();
    void failedPrintSaysSo();
    void emptyListSaysWhatToDo();
    void anotherJobIsShown();
    void thousandsArePaintedAtOnce();
};

/// Zones in the order of the job, in each the order of the list.
void TestPerimeter::drawingHoldsTheList()
{
    Desk desk;
    const picture::Perimeter perimeter = picture::perimeterOf(desk.story.job(), desk.feed.looseEnds());
    for (std::size_t i = 0; i < desk.story.job().facts.zones.size(); ++i)
        QCOMPARE(perimeter[i].name, desk.story.job().facts.zones[i].name);
    QStringList drawn, listed;
    for (const picture::PerimeterZone &zone : perimeter) {
        for (const picture::PerimeterItem &one : zone.items)
            drawn << zone.name + u' ' + one.id;
        for (const core::InterfaceState &one : desk.story.job().items) {
            if (one.listed.zone == zone.name)
                listed << zone.name + u' ' + one.listed.id.text();
        }
    }
    QCOMPARE(drawn, listed);
    QCOMPARE(drawn.size(), static_cast<qsizetype>(desk.story.job().items.size()));
}

/// A long list begins along the top.
void TestPerimeter::arrowWalksAlongTheBoundary()
{
    Desk desk;
    desk.feed.take(jobOf(desk.story.job(), 60), desk.story.fold().said(), desk.story.reg());
    Shown shown(desk);
    const auto walk = walkOf(shown.view.perimeter());
    QCOMPARE(shown.current(), QString());
    shown.press(Qt::Key_Right);
    QCOMPARE(shown.current(), walk[0].id);
    shown.press(Qt::Key_Right);
    QCOMPARE(shown.current(), walk[1].id);
    shown.press(Qt::Key_Left);
    QCOMPARE(shown.current(), walk[0].id);
    shown.press(Qt::Key_End);
    QCOMPARE(shown.current(), walk.back().id);
    shown.press(Qt::Key_Home);
    QCOMPARE(shown.current(), walk[0].id);
}

void TestPerimeter::pageDownGoesOnToTheNextZone()
{
    Desk desk;
    Shown shown(desk);
    shown.press(Qt::Key_Home);
    const QString first = shown.view.currentZone()->name;
    shown.press(Qt::Key_PageDown);
    QVERIFY(shown.view.currentZone()->name != first);
    QCOMPARE(shown.current(), shown.view.currentZone()->items.front().id);
    shown.press(Qt::Key_PageUp);
    QCOMPARE(shown.view.currentZone()->name, first);
}

void TestPerimeter::selectionIsTheListsOwn()
{
    Desk desk;
    Shown shown(desk);
    desktop::ListPage list(desk.tools());
    list.show();
    auto *table = list.findChild<QTableView *>(u"interfaces"_s);
    shown.press(Qt::Key_Home);
    shown.press(Qt::Key_Right);
    QCOMPARE(desk.chosen(), shown.current());
    QCOMPARE(table->selectionModel()->selectedRows().size(), 1);
    QCOMPARE(table->selectionModel()->selectedRows(1).front().data().toString(), shown.current());

    table->selectRow(table->model()->rowCount() - 1);
    QCOMPARE(shown.current(), table->model()->index(table->model()->rowCount() - 1, 1).data().toString());
    table->clearSelection();
    QCOMPARE(shown.current(), QString());
}

void TestPerimeter::returnOpensTheItem()
{
    Desk desk;
    Shown shown(desk);
    QSignalSpy led(&shown.page, &desktop::Page::pageWanted);
    shown.press(Qt::Key_Return);
    QCOMPARE(led.size(), 0); // nothing is chosen
    QVERIFY(!shown.page.findChild<QPushButton *>(u"open"_s)->isEnabled());
    desk.selection.choose({item(u"D1"_s)});
    shown.press(Qt::Key_Return);
    QCOMPARE(led.size(), 1);
    QCOMPARE(led.front().front().toString(), u"list"_s);
    QCOMPARE(desk.chosen(), u"D1"_s);
    QTest::mouseClick(shown.page.findChild<QPushButton *>(u"open"_s), Qt::LeftButton);
    QCOMPARE(led.size(), 2);
}

/// Somewhere on the picture of each item a click chooses that item, and a double click opens it; far from all, nothing.
void TestPerimeter::clickChoosesWhatItHits()
{
    Desk desk;
    Shown shown(desk);
    QSignalSpy led(&shown.page, &desktop::Page::pageWanted);
    QTest::mouseClick(shown.view.viewport(), Qt::LeftButton, {}, shown.view.viewport()->rect().center());
    QCOMPARE(desk.chosen(), QString());
    QStringList hit;
    const QRect area = shown.view.viewport()->rect();
    for (int y = 0; y < area.height(); y += 7) {
        for (int x = 0; x < area.width(); x += 24) {
            QTest::mouseClick(shown.view.viewport(), Qt::LeftButton, {}, {x, y});
            hit << desk.chosen();
        }
    }
    for (const core::InterfaceState &one : desk.story.job().items)
        QVERIFY2(hit.contains(one.listed.id.text()), qPrintable(one.listed.id.text()));
    QCOMPARE(led.size(), 0);
}

void TestPerimeter::glyphChangesWhenItIsSigned()
{
    Desk desk(u"Ana disconnects K1"_s);
    QCOMPARE(desk.story.refusedBy(), QString());
    Shown shown(desk);
    const std::pair<QString, core::Stage> steps[] = {{u"Ben reconnects K1"_s, core::Stage::Secured}, {u"Cho accepts K1"_s, core::Stage::Inspected}};
    core::Stage stage = core::Stage::Disconnected;
    for (const auto &[sentence, then] : steps) {
        QCOMPARE(found(shown.view.perimeter(), u"K1"_s)->stage, std::optional(stage));
        const QImage before = shown.picture();
        desk.tell(sentence);
        QCOMPARE(desk.story.refusedBy(), QString());
        QCOMPARE(found(shown.view.perimeter(), u"K1"_s)->stage, std::optional(then));
        QVERIFY(shown.picture() != before);
        stage = then;
    }
    const QImage before = shown.picture();
    desk.take(); // nothing was signed: nothing changes
    QCOMPARE(shown.picture(), before);
}

void TestPerimeter::looseIsWhatStopsClosure()
{
    Desk desk(u"Ana disconnects K1; Ana disconnects C1; Ben reconnects K1; Cho accepts K1; Ben reconnects C1"_s);
    QCOMPARE(desk.story.refusedBy(), QString());
    Shown shown(desk);
    QVERIFY(!found(shown.view.perimeter(), u"K1"_s)->isLoose); // inspected
    QVERIFY(found(shown.view.perimeter(), u"C1"_s)->isLoose);  // waits for its inspection
    QVERIFY(found(shown.view.perimeter(), u"D1"_s)->isLoose);  // never disconnected
    for (const picture::PerimeterItem &one : walkOf(shown.view.perimeter()))
        QCOMPARE(one.isLoose, !desk.feed.looseEndsOf(item(one.id)).empty());
}

void TestPerimeter::closureIsSaidAsOnTheOtherPage_data()
{
    QTest::addColumn<QString>("told");
    QTest::addRow("nothing done") << QString();
    QTest::addRow("one undone") << u"Ana disconnects D1"_s;
}

void TestPerimeter::closureIsSaidAsOnTheOtherPage()
{
    QFETCH(QString, told);
    Desk desk(told);
    QCOMPARE(desk.story.refusedBy(), QString());
    Shown shown(desk);
    desktop::LooseEndsPage other(desk.tools());
    QStringList said;
    for (const QLabel *label : other.findChildren<QLabel *>())
        said << label->text();
    QVERIFY(said.contains(shown.text("closure")));
    QVERIFY(shown.text("closure").contains(QString::number(desk.feed.looseEnds().size())));
}

void TestPerimeter::appliedStandsOutsideUntilItIsRemoved()
{
    Desk desk(u"Ana applies T1 sort=isolation name=Fuel_valve"_s);
    QCOMPARE(desk.story.refusedBy(), QString());
    Shown shown(desk);
    const picture::PerimeterItem *applied = found(shown.view.perimeter(), u"T1"_s);
    QVERIFY(applied && applied->isTemporary() && applied->isLoose);
    desk.selection.choose({item(u"D1"_s)});
    shown.press(Qt::Key_End); // it has no zone, and stands last
    QCOMPARE(shown.current(), u"T1"_s);
    QCOMPARE(desk.selection.items().size(), 0U); // it is no interface
    QSignalSpy led(&shown.page, &desktop::Page::pageWanted);
    shown.press(Qt::Key_Return);
    QCOMPARE(led.front(), (QVariantList{u"temporaries"_s, u"T1"_s}));
    desk.tell(u"Ana removes T1"_s);
    QCOMPARE(desk.story.refusedBy(), QString());
    QVERIFY(!found(shown.view.perimeter(), u"T1"_s));
    QCOMPARE(shown.current(), QString());
}

void TestPerimeter::hoistIsToldOf_data()
{
    QTest::addColumn<QString>("told");
    QTest::addColumn<QString>("says");
    QTest::addRow("the job knows nothing of it") << QString() << QString();
    QTest::addRow("on") << u"Ana applies T1 sort=hoist name=Beam_hoist"_s << u"Hoist on: T1 Beam hoist."_s;
}

void TestPerimeter::hoistIsToldOf()
{
    QFETCH(QString, told);
    QFETCH(QString, says);
    Desk desk(told);
    QCOMPARE(desk.story.refusedBy(), QString());
    Shown shown(desk);
    QCOMPARE(shown.text("hoist"), says);
    QCOMPARE(shown.page.findChild<QLabel *>(u"hoist"_s)->isVisible(), !says.isEmpty());
}

void TestPerimeter::mountsAreMarked()
{
    Desk desk;
    Shown shown(desk);
    int mounts = 0;
    for (const core::InterfaceState &one : desk.story.job().items) {
        const picture::PerimeterItem *drawn = found(shown.view.perimeter(), one.listed.id.text());
        QCOMPARE(drawn->isMount, one.listed.kind == u"mount");
        QCOMPARE(desktop::inWords(*drawn).contains(u"mount"_s), drawn->isMount);
        mounts += drawn->isMount;
    }
    QVERIFY(mounts > 0);
}

void TestPerimeter::screenReaderHearsWhatIsChosen()
{
    Desk desk(u"Ana disconnects D1"_s);
    Shown shown(desk);
    QAccessibleInterface *reader = QAccessible::queryAccessibleInterface(&shown.view);
    QVERIFY(!reader->text(QAccessible::Name).isEmpty());
    QCOMPARE(reader->text(QAccessible::Description), QString());
    desk.selection.choose({item(u"D1"_s)});
    const core::Listing &listed = desk.story.item(u"D1"_s).listed;
    QCOMPARE(reader->text(QAccessible::Description), u"D1 Disconnected: %1, %2"_s.arg(listed.name, listed.zone));
    QVERIFY(shown.text("current").contains(desk.feed.looseEndsOf(item(u"D1"_s)).front().sentence));
    desk.tell(u"Ben reconnects D1"_s);
    QVERIFY(reader->text(QAccessible::Description).startsWith(u"D1 Reconnected"_s));
}

/// Where thousands are drawn as dots on one another, the one that is open still shows.
void TestPerimeter::oneGapIsSeenAmongThousands()
{
    Desk desk(u"Ana disconnects D1"_s);
    desk.feed.take(jobOf(desk.story.job(), 5000), desk.story.fold().said(), desk.story.reg());
    Shown shown(desk);
    const QRgb open = desktop::stageColour(core::Stage::Disconnected, desktop::shadeAround(&shown.view)).rgb();
    const auto seen = [&] {
        const QImage picture = shown.picture();
        int count = 0;
        for (int y = 0; y < picture.height(); ++y) {
            for (int x = 0; x < picture.width(); ++x)
                count += picture.pixel(x, y) == open;
        }
        return count;
    };
    QVERIFY2(seen() >= 9, qPrintable(QString::number(seen())));
    desk.tell(u"Ben reconnects D1"_s);
    desk.feed.take(jobOf(desk.story.job(), 5000), desk.story.fold().said(), desk.story.reg());
    QCOMPARE(seen(), 0);
}

void TestPerimeter::keysEnlargeAndShowAll()
{
    Desk desk;
    desk.feed.take(jobOf(desk.story.job(), 200), desk.story.fold().said(), desk.story.reg());
    Shown shown(desk);
    const double all = shown.view.scale();
    QCOMPARE(shown.view.horizontalScrollBar()->maximum(), 0);
    shown.press(Qt::Key_Minus); // it is never smaller than needed
    QCOMPARE(shown.view.scale(), all);
    shown.press(Qt::Key_Plus, 3);
    QVERIFY(shown.view.scale() > all * 1.9);
    QVERIFY(shown.view.horizontalScrollBar()->maximum() > 0);
    shown.page.resize(900, 650); // what was enlarged stays so
    QVERIFY(shown.view.scale() > all * 1.9);
    shown.press(Qt::Key_0);
    QCOMPARE(shown.view.horizontalScrollBar()->maximum(), 0);
    QCOMPARE(shown.view.verticalScrollBar()->maximum(), 0);
    shown.press(Qt::Key_Plus, 40);
    QVERIFY(shown.view.scale() <= 4);
    QTest::mouseClick(shown.page.findChild<QPushButton *>(u"fit"_s), Qt::LeftButton);
    QCOMPARE(shown.view.horizontalScrollBar()->maximum(), 0);
}

void TestPerimeter::wheelKeepsWhatLiesUnderIt()
{
    Desk desk;
    desk.feed.take(jobOf(desk.story.job(), 300), desk.story.fold().said(), desk.story.reg());
    Shown shown(desk);
    // Find an item on the lower edge by clicking, then turn the wheel there and click again.
    QPoint at;
    for (int y = shown.view.viewport()->height() - 1; y > 0 && desk.chosen().isEmpty(); --y) {
        at = {shown.view.viewport()->width() / 3, y};
        QTest::mouseClick(shown.view.viewport(), Qt::LeftButton, {}, at);
    }
    const QString there = desk.chosen();
    QVERIFY(!there.isEmpty());
    for (int i = 0; i < 2; ++i) {
        QWheelEvent turn(at, shown.view.viewport()->mapToGlobal(at), {}, {0, 120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(shown.view.viewport(), &turn);
    }
    desk.selection.choose({});
    const auto walk = walkOf(shown.view.perimeter());
    const auto placeOf = [&](const QString &id) { return std::find_if(walk.begin(), walk.end(), [&](const auto &one) { return one.id == id; }) - walk.begin(); };
    QString now;
    for (int y = at.y() - 30; y < at.y() + 30 && now.isEmpty(); ++y) {
        QTest::mouseClick(shown.view.viewport(), Qt::LeftButton, {}, {at.x(), y});
        now = desk.chosen();
    }
    QVERIFY2(!now.isEmpty() && std::abs(placeOf(now) - placeOf(there)) <= 4, qPrintable(there + u' ' + now));
}

/// However far it is enlarged, the item that the keys came to is seen: its frame is painted.
void TestPerimeter::walkKeepsTheItemInSight()
{
    Desk desk;
    desk.feed.take(jobOf(desk.story.job(), 120), desk.story.fold().said(), desk.story.reg());
    Shown shown(desk);
    shown.press(Qt::Key_Home);
    shown.press(Qt::Key_Plus, 8);
    const QRgb mark = shown.page.palette().color(QPalette::Highlight).rgb();
    for (int i = 0; i < 30; ++i) {
        shown.press(i % 3 == 0 ? Qt::Key_PageDown : Qt::Key_Right);
        const QImage picture = shown.picture();
        int marked = 0;
        for (int y = 0; y < picture.height(); ++y) {
            for (int x = 0; x < picture.width(); ++x)
                marked += picture.pixel(x, y) == mark;
        }
        QVERIFY2(marked > 200, qPrintable(shown.current()));
    }
}

void TestPerimeter::legendCounts()
{
    Desk desk(u"Ana disconnects D1; Ana disconnects K1; Ana applies T1 sort=isolation name=Valve"_s);
    QCOMPARE(desk.story.refusedBy(), QString());
    Shown shown(desk);
    const QString says = shown.page.findChild<desktop::PerimeterLegend *>()->accessibleName();
    QVERIFY(says.startsWith(u"Disconnected 2, Connected %1"_s.arg(desk.story.job().items.size() - 2)));
    QVERIFY(says.endsWith(u"Applied for the job 1"_s));
    QVERIFY(!says.contains(u"Inspected"_s));
}

void TestPerimeter::printsOnOnePage_data()
{
    QTest::addColumn<int>("items");
    QTest::addColumn<bool>("isLegible");
    QTest::addRow("a short list") << 10 << true;
    QTest::addRow("as long as an engine's") << 90 << true;
    QTest::addRow("more than a page can name") << 1000 << false;
}

void TestPerimeter::printsOnOnePage()
{
    QFETCH(int, items);
    QFETCH(bool, isLegible);
    Desk desk(u"Ana disconnects D1"_s);
    desk.feed.take(jobOf(desk.story.job(), items), desk.story.fold().said(), desk.story.reg());
    Shown shown(desk);
    auto *print = shown.page.findChild<QPushButton *>(u"print"_s);
    print->click(); // the person thought better of it
    QTemporaryDir folder;
    desk.ask.printPath = folder.filePath(u"perimeter.pdf"_s);
    print->click();
    QCOMPARE(desk.ask.told, QStringList());
    const auto output = [&](const QString &program, const QStringList &arguments) {
        QProcess process;
        process.start(program, arguments);
        return process.waitForFinished(30'000) && process.exitCode() == 0 ? QString::fromUtf8(process.readAllStandardOutput()) : QString();
    };
    const QString about = output(u"pdfinfo"_s, {*desk.ask.printPath});
    QVERIFY2(about.contains(QRegularExpression(u"Pages: +1\n"_s)), qPrintable(about));
    const QString words = output(u"pdftotext"_s, {u"-layout"_s, *desk.ask.printPath, u"-"_s}).normalized(QString::NormalizationForm_KC); // the font joins some letters
    QVERIFY2(words.contains(desk.feed.state()->facts.workOrder), qPrintable(words));
    QVERIFY(words.contains(shown.text("closure")));
    QVERIFY(words.contains(u"Disconnected 1"_s));
    QVERIFY2(words.contains(core::measure::dataGoverns()), qPrintable(words));
    for (const picture::PerimeterItem &one : walkOf(shown.view.perimeter()))
        QVERIFY2(!isLegible || words.contains(one.id), qPrintable(one.id + words));
}

void TestPerimeter::failedPrintSaysSo()
{
    Desk desk;
    Shown shown(desk);
    desk.ask.printPath = u"/no such folder/perimeter.pdf"_s;
    shown.page.findChild<QPushButton *>(u"print"_s)->click();
    QCOMPARE(desk.ask.told.size(), 1);
}

void TestPerimeter::emptyListSaysWhatToDo()
{
    Desk desk;
    auto empty = std::make_shared<core::JobState>(desk.story.job());
    empty->items = {};
    empty->itemAt.clear();
    desk.feed.take(empty, {}, desk.story.reg());
    Shown shown(desk);
    QVERIFY(!shown.view.isVisible());
    QVERIFY(!shown.page.findChild<QPushButton *>(u"print"_s)->isEnabled());
    auto *import = shown.page.findChild<QPushButton *>(u"import"_s);
    QVERIFY(import->isVisible());
    QSignalSpy wanted(&shown.page, &desktop::Page::importWanted);
    QTest::mouseClick(import, Qt::LeftButton);
    QCOMPARE(wanted.size(), 1);
    desk.take();
    QVERIFY(shown.view.isVisible());
}

void TestPerimeter::anotherJobIsShown()
{
    Desk desk;
    Shown shown(desk);
    shown.press(Qt::Key_Home);
    shown.press(Qt::Key_Plus, 9);
    desk.feed.take(nullptr, {}, desk.story.reg());
    QCOMPARE(shown.current(), QString());
    desk.feed.take(jobOf(desk.story.job(), 50), {}, desk.story.reg());
    QCOMPARE(shown.view.horizontalScrollBar()->maximum(), 0); // all of it
    QCOMPARE(walkOf(shown.view.perimeter()).size(), 50U);
}

/// Walking through 5,000 items waits for nothing. The limit is loose, for a machine that does other things as well.
void TestPerimeter::thousandsArePaintedAtOnce()
{
    Desk desk;
    desk.feed.take(jobOf(desk.story.job(), 5000), desk.story.fold().said(), desk.story.reg());
    Shown shown(desk);
    const auto measure = [&](const char *what) {
        qint64 best = 1'000'000;
        for (int i = 0; i < 5; ++i) {
            QElapsedTimer timer;
            timer.start();
            shown.press(Qt::Key_Right);
            (void)shown.picture();
            best = std::min(best, timer.elapsed());
        }
        qInfo("%s: a step takes %lld ms", what, static_cast<long long>(best));
        return best;
    };
    QVERIFY(measure("all of 5,000 in sight") < 1000);
    std::vector<core::InterfaceId> all;
    for (const core::InterfaceState &one : desk.feed.state()->items)
        all.push_back(one.listed.id);
    QElapsedTimer timer;
    timer.start();
    desk.selection.choose(all); // as somebody does who marks the whole list
    (void)shown.picture();
    QVERIFY2(timer.elapsed() < 2000, qPrintable(QString::number(timer.elapsed())));
    while (shown.view.scale() < 1)
        shown.press(Qt::Key_Plus);
    QVERIFY(measure("enlarged") < 500);
}

/// Where they do not fit side by side; not one row more than they take.
void TestPerimeter::legendBreaksIntoRows()
{
    using Shape = desktop::LegendLine::Shape;
    const std::vector<desktop::LegendLine> lines(5, {Shape::Mount, {}, u"Mount 4"_s});
    const QFont font;
    const double row = desktop::legendHeight(lines, 10000, font);
    const double one = desktop::legendHeight({lines.front()}, 10000, font);
    QCOMPARE(row, one);
    QCOMPARE(desktop::legendHeight(lines, 1, font), one * 5);
    QVERIFY(desktop::legendHeight(lines, QFontMetricsF(font).horizontalAdvance(u"Mount 4"_s) * 5, font) > one);
    // Nothing is painted below the height that is told.
    const int wide = 200;
    const int high = static_cast<int>(std::ceil(desktop::legendHeight(lines, wide, font)));
    QImage paper(wide, high * 2, QImage::Format_ARGB32);
    paper.fill(Qt::white);
    QPainter painter(&paper);
    desktop::paintLegend(painter, lines, QRectF(0, 0, wide, high), font, desktop::Shade::Light);
    painter.end();
    const auto isBlank = [&](int from, int to) {
        for (int y = from; y < to; ++y) {
            for (int x = 0; x < wide; ++x) {
                if (paper.pixelColor(x, y) != Qt::white)
                    return false;
            }
        }
        return true;
    };
    QVERIFY(!isBlank(high - static_cast<int>(one), high));
    QVERIFY(isBlank(high, high * 2));
}

QTEST_MAIN(TestPerimeter)
#include "tst_perimeter.moc"
