// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <map>

#include "app/desktop/actions.hpp"
#include "app/desktop/pages/figures/figures_page.hpp"
#include "app/desktop/pages/findings/findings_page.hpp"
#include "app/desktop/pages/handover/handover_page.hpp"
#include "app/desktop/pages/inspect/inspect_page.hpp"
#include "app/desktop/pages/list/list_page.hpp"
#include "app/desktop/pages/loose_ends/loose_ends_page.hpp"
#include "app/desktop/pages/pages.hpp"
#include "app/desktop/pages/photos/photos_page.hpp"
#include "app/desktop/pages/record/compare_dialog.hpp"
#include "app/desktop/pages/record/progress_dialog.hpp"
#include "app/desktop/pages/record/progress_view.hpp"
#include "app/desktop/pages/record/record_page.hpp"
#include "app/desktop/pages/record/sample_dialog.hpp"
#include "app/desktop/pages/record/signings_dialog.hpp"
#include "app/desktop/pages/record/signings_view.hpp"
#include "app/desktop/parts/item_facts.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/seeds.hpp"
#include "core/job/admit.hpp"
#include "core/job/stage.hpp"
#include "core/reports/sample.hpp"
#include "core/reports/timeline.hpp"
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

/// A job with a lift of two points and a weight change.
struct Figures : Desk {
    Figures()
    {
        json(u"lift.planned"_s, {{u"unit"_s, u"outgoing"_s}, {u"unit_weight"_s, u"360 kg"_s}, {u"rigging_weight"_s, u"40 kg"_s}, {u"hoist"_s, u"HO-1"_s},
                                 {u"hoist_limit"_s, u"1000 kg"_s}, {u"hoist_due"_s, u"2099-06-30"_s}, {u"sling"_s, u"SL-3"_s}, {u"sling_limit"_s, u"600 kg"_s},
                                 {u"sling_due"_s, u"2099-05-31"_s}, {u"points"_s, 2}, {u"legs"_s, 1}, {u"angle_from_horizontal"_s, u"30 °"_s}, {u"span"_s, u"1200 mm"_s},
                                 {u"centre"_s, u"400 mm"_s}, {u"reference"_s, u"task 71-00"_s}});
        json(u"weight.recorded"_s, {{u"outgoing_weight"_s, u"360 kg"_s}, {u"outgoing_arm"_s, u"6.5 m"_s}, {u"incoming_weight"_s, u"366 kg"_s}, {u"incoming_arm"_s, u"6.5 m"_s},
                                    {u"aircraft_weight"_s, u"12000 kg"_s}, {u"aircraft_centre"_s, u"7 m"_s}, {u"reference"_s, u"task 08-10"_s}});
        take();
    }
    void json(const QString &kind, const core::json::Object &body) { job.figures.push_back({{seq++, *core::PersonId::parse(u"ana"), core::Instant::fromMilliseconds(1'772'438'400'000)}, kind, body}); }
    void take() { feed.take(std::make_shared<const core::JobState>(job), story.fold().said(), story.reg()); }

    core::JobState job = story.job();
    qint64 seq = 900;
};

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
    void aPhotoThatMayNotBeAttachedSaysWhy();
    void struckEntryStaysLegible();
    void timelineIsFiltered();
    void sampleIsDrawn();
    void progressIsDrawn();
    void signingsAreDrawn();
    void headsAreCompared();
    void findingIsClosedFromItsRow();
    void handoverListsWhatIsOpen();
    void figuresTellHowTheyWereWorkedOut();
    void strickenFigureIsNotShown();
    void figuresAreBegunFromTheirPage();
    void noFigureSaysWhatComesHere();
    void inspectorSeesHowItWasMeasured_data();
    void inspectorSeesHowItWasMeasured();
    void figuresMayBeBegunByTheCrew_data();
    void figuresMayBeBegunByTheCrew();
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
        QVERIFY2(!QIcon(u":/icons/%1.svg"_s.arg(line.icon)).pixmap(24, 24).isNull(), line.name.data());
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

void TstPages::aPhotoThatMayNotBeAttachedSaysWhy()
{
    Desk desk;
    desktop::PhotosPage page(desk.tools());
    page.resize(900, 600);
    page.show();
    page.chooseRow(u"D1"_s);
    QSignalSpy wanted(&page, &desktop::Page::sheetWanted);
    QImage picture(40, 30, QImage::Format_RGB32);
    picture.fill(Qt::darkGreen);
    QMimeData pasted;
    pasted.setImageData(picture);
    desk.deeds.refused = {{u"photo.attached"_s, u"D1 is in another job now."_s}};
    page.offer(pasted);
    QCOMPARE(wanted.size(), 0);
    QCOMPARE(named<QLabel>(page, "waitingProblem")->text(), u"D1 is in another job now."_s);
    QVERIFY(named<QLabel>(page, "waitingProblem")->isVisible());
    // It waits, and its sheet opens once nothing stands in the way.
    desk.deeds.refused.clear();
    QTest::mouseClick(named<QPushButton>(page, "attachWaiting"), Qt::LeftButton);
    QCOMPARE(wanted.size(), 1);
    QCOMPARE(wanted.front().front().toString(), u"photo.attached"_s);
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

/// Person, kind, zone, struck and words together; what is chosen stays when the job moves on, and a button shows all of it.
void TstPages::timelineIsFiltered()
{
    Desk desk(u"Ana disconnects D1; Ben disconnects C1; Ana disconnects B1; Ana strikes entry=%1"_s.arg(Desk().story.job().lines.size() + 3));
    QCOMPARE(desk.story.refusedBy(), QString());
    desktop::RecordPage page(desk.tools());
    page.resize(1100, 600);
    const auto &rows = named<desktop::RowTable>(page, "entries")->model();
    const auto all = static_cast<int>(desk.story.job().lines.size());
    const auto count = [&] { return named<QLabel>(page, "count")->text(); };
    const auto choose = [&](const char *box, const QString &what) {
        auto *found = named<QComboBox>(page, box);
        const int at = found->findData(what);
        found->setCurrentIndex(at);
        return at > 0;
    };
    QCOMPARE(count(), u"%1 of %1 entries"_s.arg(all));
    QVERIFY(!named<QPushButton>(page, "clearFilter")->isEnabled());
    QVERIFY(choose("kind", u"interface.disconnected"_s));
    QCOMPARE(rows.rowCount(), 3);
    QVERIFY(choose("person", u"Ana"_s));
    QCOMPARE(count(), u"2 of %1 entries"_s.arg(all));
    QVERIFY(choose("zone", desk.story.item(u"D1"_s).listed.zone));
    const int ofZone = rows.rowCount();
    QVERIFY(ofZone >= 1 && rows.rowOf(QString::number(all - 3)) >= 0);
    named<QCheckBox>(page, "struck")->setChecked(true);
    for (const desktop::Row &row : rows.rows())
        QVERIFY(row.isStruck);
    named<QCheckBox>(page, "struck")->setChecked(false);
    desk.tell(u"Ben disconnects M1"_s); // not hers: it does not appear, and what was chosen stays
    QCOMPARE(count(), u"%1 of %2 entries"_s.arg(ofZone).arg(all + 1));
    named<QPushButton>(page, "clearFilter")->click();
    QCOMPARE(count(), u"%1 of %1 entries"_s.arg(all + 1));
    named<QLineEdit>(page, "words")->setText(u"no such word"_s);
    QCOMPARE(count(), u"0 of %1 entries"_s.arg(all + 1));
    page.chooseRow(QString::number(all)); // what is filtered away cannot be chosen
    QCOMPARE(rows.rowCount(), all + 1);
    QCOMPARE(named<desktop::RowTable>(page, "entries")->chosen(), QString::number(all));
}

/// By its seed, the same each time; a seed that is none is refused with the reason.
void TstPages::sampleIsDrawn()
{
    Desk desk(u"Ana disconnects D1; Ben disconnects C1"_s);
    desktop::RecordPage page(desk.tools());
    named<QPushButton>(page, "sample")->click();
    const auto *dialog = page.findChild<desktop::SampleDialog *>();
    QVERIFY(dialog);
    QVERIFY(!named<QPushButton>(*dialog, "csv")->isEnabled());
    named<QSpinBox>(*dialog, "many")->setValue(2);
    named<QLineEdit>(*dialog, "seed")->setText(u" "_s);
    QVERIFY(!named<QPushButton>(*dialog, "draw")->isEnabled());
    QVERIFY(!named<QPushButton>(*dialog, "draw")->toolTip().isEmpty());
    named<QLineEdit>(*dialog, "seed")->setText(u"audit-7"_s);
    named<QPushButton>(*dialog, "draw")->click();
    const auto sample = core::sampleOf(desk.story.job(), 2, u"audit-7"_s);
    const auto &rows = named<desktop::RowTable>(*dialog, "evidence")->model().rows();
    QCOMPARE(rows.size(), sample.drawn[0].entries.size() + sample.drawn[1].entries.size());
    QVERIFY(rows.front().cells[0].startsWith(sample.drawn[0].id.text()));
    QVERIFY(named<QLabel>(*dialog, "said")->text().contains(u"audit-7"));
    QTemporaryDir folder;
    desk.ask.savePath = folder.filePath(u"sample.csv"_s);
    named<QPushButton>(*dialog, "csv")->click();
    QFile file(*desk.ask.savePath);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(static_cast<std::size_t>(file.readAll().count("\r\n")), rows.size() + 1);
    const QString seq = rows.back().cells[1];
    named<desktop::RowTable>(*dialog, "evidence")->choose(rows.back().key);
    named<QPushButton>(*dialog, "lead")->click();
    QCOMPARE(named<desktop::RowTable>(page, "entries")->chosen(), seq);
}

/// The picture says in words what it shows, for whoever does not see it, and a zone or a person stands beside the whole job when asked for.
void TstPages::progressIsDrawn()
{
    Desk desk(u"Ana disconnects D1; Ben disconnects K1; Ana disconnects C1"_s);
    const desktop::RecordPage page(desk.tools());
    named<QPushButton>(page, "progressAsked")->click();
    auto *dialog = page.findChild<desktop::ProgressDialog *>();
    QVERIFY(dialog);
    const auto progress = core::progressOf(desk.story.job(), desk.story.reg());
    auto *view = named<desktop::ProgressView>(*dialog, "progress");
    QCOMPARE(view->accessibleDescription(), core::progressInWords(progress->total));
    QVERIFY2(named<QLabel>(*dialog, "pace")->text().contains(u" not undone. Too little done to say"_s), qPrintable(named<QLabel>(*dialog, "pace")->text()));
    auto *beside = named<QComboBox>(*dialog, "beside");
    QCOMPARE(beside->count(), 5); // nothing; left, right; Ana, Ben
    QVERIFY(beside->hasFocus() || dialog->focusWidget() == beside);
    const auto inks = [&] {
        view->resize(800, 400);
        const QImage picture = view->grab().toImage();
        int differ = 0;
        for (int y = 0; y < picture.height(); ++y) {
            for (int x = 0; x < picture.width(); ++x)
                differ += picture.pixel(x, y) != picture.pixel(0, 0) ? 1 : 0;
        }
        return differ;
    };
    const int whole = inks();
    QVERIFY(whole > 500); // axes and steps are there
    beside->setCurrentIndex(beside->findText(u"Undone by: Ben"_s));
    QCOMPARE(view->accessibleDescription(), core::progressInWords(progress->total) + u' ' + core::progressInWords(progress->persons.back()));
    QVERIFY2(named<QLabel>(*dialog, "said")->text().contains(u"Ben: at most 1 interface undone and not inspected"_s), qPrintable(named<QLabel>(*dialog, "said")->text()));
    QVERIFY(inks() > whole);
    beside->setCurrentIndex(0);
    QCOMPARE(inks(), whole);
}

/// A picture that can be walked through by keyboard, and the same as a table.
void TstPages::signingsAreDrawn()
{
    Desk desk(u"Ana disconnects D1; Ben disconnects C1"_s);
    const desktop::RecordPage page(desk.tools());
    named<QPushButton>(page, "whoSigned")->click();
    auto *dialog = page.findChild<desktop::SigningsDialog *>();
    QVERIFY(dialog);
    auto *view = named<desktop::SigningsView>(*dialog, "signings");
    auto *lead = named<QPushButton>(*dialog, "lead");
    QVERIFY(!lead->isEnabled() && !lead->toolTip().isEmpty());
    QTest::keyClick(view, Qt::Key_Right);
    QCOMPARE(view->chosen(), std::optional<qint64>(1));
    const auto last = static_cast<qint64>(desk.story.job().said.size());
    for (qint64 i = 0; i < last + 3; ++i) // stays at the end
        QTest::keyClick(view, Qt::Key_Right);
    QCOMPARE(view->chosen(), std::optional<qint64>(last));
    // The same moment in the same words as in the table, where no moment wraps.
    const core::Statement &said = desk.story.job().said[static_cast<std::size_t>(last - 1)];
    QVERIFY2(named<QLabel>(*dialog, "said")->text().startsWith(u"No. %1, %2, "_s.arg(QString::number(last), core::momentText(said.at))), qPrintable(named<QLabel>(*dialog, "said")->text()));
    auto &table = *named<desktop::RowTable>(*dialog, "table");
    const auto &rows = table.model();
    const QString lastMoment = rows.rows().back().cells.back();
    QCOMPARE(lastMoment, core::momentText(said.at));
    for (const int column : {rows.columnCount() - 2, rows.columnCount() - 1}) {
        const int wanted = table.view().fontMetrics().horizontalAdvance(lastMoment) + table.view().fontMetrics().height(); // and the padding at both sides
        QVERIFY2(table.view().columnWidth(column) >= wanted, qPrintable(u"%1 of %2"_s.arg(table.view().columnWidth(column)).arg(wanted)));
    }
    const auto signings = core::signingsOf(desk.story.job(), desk.story.reg());
    QCOMPARE(static_cast<std::size_t>(rows.rowCount()), signings.lanes.size());
    view->resize(900, 300);
    const auto layout = picture::laySignings(signings, QRectF(view->rect()), view->font());
    QTest::mouseClick(view, Qt::LeftButton, {}, layout.marks.front().centre.toPoint());
    QVERIFY(view->chosen().has_value());
    QTest::mouseClick(view, Qt::LeftButton, {}, QPoint(1, 1));
    QVERIFY(!view->chosen());
    QTest::keyClick(view, Qt::Key_Right);
    lead->click();
    QCOMPARE(named<desktop::RowTable>(page, "entries")->chosen(), u"1"_s);
}

/// By number or hash; a hash of elsewhere is told as that.
void TstPages::headsAreCompared()
{
    Desk desk(u"Ana disconnects D1"_s);
    const auto earlier = desk.story.job().said.size();
    desk.tell(u"Ben disconnects C1"_s);
    const desktop::RecordPage page(desk.tools());
    named<QPushButton>(page, "compare")->click();
    const auto *dialog = page.findChild<desktop::CompareDialog *>();
    QVERIFY(dialog);
    auto *compare = named<QPushButton>(*dialog, "doCompare");
    QVERIFY(!compare->isEnabled() && !compare->toolTip().isEmpty());
    const auto &rows = named<desktop::RowTable>(*dialog, "differences")->model();
    named<QLineEdit>(*dialog, "from")->setText(QString::number(earlier));
    compare->click();
    QVERIFY(named<QLabel>(*dialog, "refused")->text().isEmpty());
    QVERIFY(rows.rowCount() >= 2);
    QCOMPARE(rows.rows()[0].cells[1], QString::number(earlier + 1));
    QVERIFY(std::any_of(rows.rows().begin(), rows.rows().end(), [](const desktop::Row &row) { return row.cells[2] == u"C1" && row.cells[3] == core::stageWord(core::Stage::Connected) && row.cells[4] == core::stageWord(core::Stage::Disconnected); }));
    QVERIFY(named<QPushButton>(*dialog, "csv")->isEnabled());
    named<QLineEdit>(*dialog, "from")->setText(core::Digest::of("another job").hex());
    compare->click();
    QVERIFY(named<QLabel>(*dialog, "refused")->text().contains(u"is not part of this job's history"));
    QCOMPARE(rows.rowCount(), 0);
    QVERIFY(!named<QPushButton>(*dialog, "csv")->isEnabled());
    named<QLineEdit>(*dialog, "from")->setText(core::hashesOf(desk.story.job().said).back().hex());
    compare->click();
    QCOMPARE(named<QLabel>(*dialog, "said")->text(), u"Nothing came between."_s);
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

/// 240 kg on the left point and 480 kg on its leg at 30°: sling makers' pages, as in the tests of lifting.
void TstPages::figuresTellHowTheyWereWorkedOut()
{
    Figures desk;
    desktop::FiguresPage page(desk.tools());
    page.resize(1100, 650);
    page.show();
    auto *rows = named<desktop::RowTable>(page, "figures");
    QCOMPARE(rows->model().rowCount(), 2);
    QCOMPARE(rows->chosen(), u"901"_s); // what was signed last
    QVERIFY(!named<QWidget>(page, "lift")->isVisible());
    QVERIFY(!named<QLabel>(page, "cautions")->isVisible());
    QVERIFY(named<QLabel>(page, "weightRecord")->text().contains(u"Difference in weight: +6 kg"_s));
    rows->choose(u"900"_s);
    auto *lift = named<QWidget>(page, "lift");
    QVERIFY(lift->isVisible());
    QVERIFY(lift->width() >= 320 && lift->height() >= 240);
    QVERIFY2(lift->accessibleDescription().contains(u"carries 240 kg, leg 480 kg, limit 600 kg, margin 20 %"_s), qPrintable(lift->accessibleDescription()));
    QVERIFY(named<QLabel>(page, "cautions")->isVisible());
    QVERIFY(named<QLabel>(page, "cautions")->text().contains(u"Nobody stands"_s));
    const auto isShown = [&](const QString &text) {
        const auto labels = page.findChildren<QLabel *>();
        return std::any_of(labels.begin(), labels.end(), [&](const QLabel *label) { return label->isVisibleTo(&page) && label->text().contains(text); });
    };
    for (const QString &expected : {u"H = W + G = 360 kg + 40 kg"_s, u"k = 1 / sin a"_s, u"480 kg"_s, u"No limit is exceeded"_s, u"29 CFR 1910.184(b)"_s, u"The approved maintenance data governs"_s, u"task 71-00"_s})
        QTRY_VERIFY2(isShown(expected), qPrintable(expected));
    auto &model = rows->model();
    QCOMPARE(model.index(0, 1).data().toString(), u"Outgoing unit"_s);
    QCOMPARE(model.index(0, 2).data().toString(), u"Margin of the hoist 60 %, of a leg 20 %"_s);
    QCOMPARE(model.index(1, 3).data().toString(), u"task 08-10"_s);
}

/// The state leaves a struck figure out; its row goes, and the card with it.
void TstPages::strickenFigureIsNotShown()
{
    Figures desk;
    desktop::FiguresPage page(desk.tools());
    page.show();
    auto *rows = named<desktop::RowTable>(page, "figures");
    rows->choose(u"900"_s);
    QVERIFY(named<QWidget>(page, "lift")->isVisible());
    desk.job.figures.erase(desk.job.figures.begin());
    desk.job.lines.push_back({902, u"entry.struck"_s, std::nullopt, *core::PersonId::parse(u"ana"), core::Instant::fromMilliseconds(0), core::Standing::Stands, std::nullopt, true});
    desk.take();
    QCOMPARE(rows->model().rowCount(), 1);
    QVERIFY(!named<QWidget>(page, "lift")->isVisible());
}

void TstPages::figuresAreBegunFromTheirPage()
{
    Desk desk;
    desk.deeds.refused = {{u"servicing.recorded"_s, u"Not of this crew."_s}};
    desktop::FiguresPage page(desk.tools());
    page.show();
    for (const char *kind : {"lift.planned", "weight.recorded"})
        QTest::mouseClick(named<QPushButton>(page, kind), Qt::LeftButton);
    QCOMPARE(desk.deeds.begun, (QStringList{u"lift.planned"_s, u"weight.recorded"_s}));
    QVERIFY(!named<QPushButton>(page, "servicing.recorded")->isEnabled());
    QCOMPARE(named<QLabel>(page, "servicing.recorded.reason")->text(), u"Not of this crew."_s);
}

void TstPages::noFigureSaysWhatComesHere()
{
    Desk desk;
    desktop::FiguresPage page(desk.tools());
    page.show();
    auto *rows = named<desktop::RowTable>(page, "figures");
    QCOMPARE(rows->currentIndex(), 1); // the sentence
    QVERIFY(!named<QWidget>(page, "lift")->isVisible());
    QVERIFY(!named<QLabel>(page, "answer")->isVisible());
}

void TstPages::inspectorSeesHowItWasMeasured_data()
{
    QTest::addColumn<QString>("told");
    QTest::addColumn<QString>("fact");
    QTest::newRow("a bond, its leads zeroed") << u"Ana lists X1 requirements=bonding bonding_max=3 bonding_unit=mΩ; Ana disconnects X1; Ben reconnects X1; Ben measures X1 value=1.5 lead_zero=0.02_mΩ"_s
                                              << u"1.5 mΩ · leads together 0.02 mΩ · BM1"_s;
    QTest::newRow("a leak in drops of the list's size") << u"Ana lists X1 requirements=leak leak_rate=2_mL/min leak_drops_per_ml=15; Ana disconnects X1; Ben reconnects X1; Ben checks X1 rate= drops=6_drops/min how=pump_on_for_5_min"_s
                                                        << u"6 drops/min · 15 drops to the millilitre · pump on for 5 min"_s;
    QTest::newRow("a leak in drops") << u"Ana lists X1 requirements=leak leak_rate=2_mL/min; Ana disconnects X1; Ben reconnects X1; Ben checks X1 rate= drops=6_drops/min drops_per_ml=20 how=pump_on_for_5_min"_s
                                     << u"6 drops/min · 20 drops to the millilitre · pump on for 5 min"_s;
}

void TstPages::inspectorSeesHowItWasMeasured()
{
    QFETCH(QString, told);
    QFETCH(QString, fact);
    const story::Story tale(told);
    QCOMPARE(tale.refusedSentence(), QString());
    QStringList values;
    for (const desktop::Fact &one : desktop::recordedAbout(*tale.job().item(*core::InterfaceId::parse(u"X1")), tale.job(), tale.reg()))
        values << one.value;
    QVERIFY2(values.join(u'\n').contains(fact), qPrintable(values.join(u'\n')));
}

void TstPages::figuresMayBeBegunByTheCrew_data()
{
    QTest::addColumn<QString>("kind");
    for (const char *kind : {"lift.planned", "servicing.recorded", "weight.recorded"})
        QTest::addRow("%s", kind) << QString::fromLatin1(kind);
}

/// The question whether a figure may be signed is put with numbers that no rule objects to: only the person decides.
void TstPages::figuresMayBeBegunByTheCrew()
{
    QFETCH(QString, kind);
    Desk desk;
    const auto refusedBy = [&](const QString &person) {
        const core::PersonId who = *core::PersonId::parse(person);
        const core::Instant at = *desk.story.job().lastAt;
        const desktop::Situation situation{desk.story.job(), desk.story.reg(), {}, who, at, std::nullopt};
        const QByteArray name = kind.toLatin1();
        const desktop::ActionLine &action = desktop::actionFor(QLatin1String(name));
        const desktop::Seed seed = action.seeds(situation).front();
        QStringList rules;
        for (const core::Refusal &refusal : core::admit(desk.story.job(), desk.story.reg(), {who, at, kind, seed.subject, desktop::probeOf(action.kind, seed, situation)}))
            rules << refusal.rule;
        return rules.join(u' ');
    };
    QCOMPARE(refusedBy(u"Ana"_s), QString());
    QVERIFY(!refusedBy(u"Zoe"_s).isEmpty());
}

QTEST_MAIN(TstPages)
#include "tst_pages.moc"
