// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

// Draws every screen of the program into a folder, for people to look at:
//   desktop_screens FOLDER              all of them in every look, at scale 1 and 2
//   desktop_screens FOLDER LOOK         one of light, dark, stark, stark-dark, at the scale of QT_SCALE_FACTOR
//   desktop_screens FOLDER LOOK LANGUAGE   in en, de or fr; or marked: every text that is translated stands in ⟦ ⟧
// Beside the pictures stand narrow.txt, what is said in less room than it takes, and for marked plain.txt, what is said
// and not translated: data, or a text that was forgotten.

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDeadlineTimer>
#include <QDir>
#include <QEventLoop>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QProcess>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollBar>
#include <QSet>
#include <QTableView>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>

#include "app/demo/scenario.hpp"
#include "app/demo/table.hpp"
#include "app/desktop/actions.hpp"
#include "app/desktop/first_run/found_page.hpp"
#include "app/desktop/flows/import_dialog.hpp"
#include "app/desktop/flows/signing.hpp"
#include "app/desktop/main_window.hpp"
#include "app/desktop/manual/manual_window.hpp"
#include "app/desktop/pages/calculator/calculation_form.hpp"
#include "app/desktop/pages/calculator/calculator_page.hpp"
#include "app/desktop/parts/table_dialog.hpp"
#include "app/desktop/pages/figures/figure_card.hpp"
#include "app/desktop/pages/figures/figures_page.hpp"
#include "app/desktop/pages/inspect/inspect_page.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/people/people_page.hpp"
#include "app/desktop/pages/perimeter/perimeter_view.hpp"
#include "app/desktop/pages/photos/photo_pair.hpp"
#include "app/desktop/pages/photos/photos_page.hpp"
#include "app/desktop/pages/pages.hpp"
#include "app/desktop/pages/verdict/packages_dialog.hpp"
#include "app/desktop/pages/verdict/verify_dialog.hpp"
#include "app/desktop/pages/record/compare_dialog.hpp"
#include "app/desktop/pages/record/progress_dialog.hpp"
#include "app/desktop/pages/record/record_page.hpp"
#include "app/desktop/pages/record/sample_dialog.hpp"
#include "app/desktop/pages/record/signings_dialog.hpp"
#include "app/desktop/pages/record/signings_view.hpp"
#include "app/desktop/pages/where_used/where_used_dialog.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/sign_sheet.hpp"
#include "app/language/spoken.hpp"
#include "core/job/stage.hpp"
#include "resources/resources.hpp"
#include "tests/app/desktop/scripted_ask.hpp"
#include "tests/app/language/marked_words.hpp"

using namespace Qt::StringLiterals;

namespace {

/// After the last entry of the story's second shift.
session::Clock evening()
{
    return [] { return *core::Instant::parse(u"2026-03-02T18:00:00Z"); };
}

/// Lets things happen until that is so; ends the program where it never is.
template <class Happened>
void awaitThat(const char *what, const Happened &happened)
{
    for (const QDeadlineTimer late(60'000); !happened();) {
        if (late.hasExpired())
            qFatal("waited in vain until %s", what);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); // the sheets that were signed before
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
}

/// Tells when a key comes where it was meant for.
class KeyCame : public QObject {
public:
    explicit KeyCame(QWidget &widget) { widget.installEventFilter(this); }
    bool came = false;

protected:
    bool eventFilter(QObject *, QEvent *event) override
    {
        came = came || event->type() == QEvent::KeyPress;
        return false;
    }
};

/// The key is held back for as long as it could be a scanner's; until it came and was acted upon.
void typeInto(QWidget &widget, Qt::Key key)
{
    const KeyCame told(widget);
    QKeyEvent press(QEvent::KeyPress, key, Qt::NoModifier, QKeySequence(key).toString());
    QCoreApplication::sendEvent(&widget, &press);
    awaitThat("a key came", [&] { return told.came; });
}

/// The sheet that came up and has the focus.
desktop::SignSheet &sheetInFront()
{
    desktop::SignSheet *shown = nullptr;
    awaitThat("a sheet came up", [&] {
        shown = qobject_cast<desktop::SignSheet *>(QApplication::activeModalWidget());
        return shown && shown->isVisible() && shown->isActiveWindow();
    });
    return *shown;
}

/// What is shown and cut off.
QStringList narrowIn(const QWidget &window)
{
    QStringList all;
    for (const QAbstractButton *button : window.findChildren<QAbstractButton *>()) {
        if (button->isVisible() && !button->text().isEmpty() && button->width() < button->sizeHint().width())
            all << button->text();
    }
    for (const QLabel *label : window.findChildren<QLabel *>()) {
        if (label->isVisible() && !label->wordWrap() && !label->text().isEmpty() && label->width() < label->sizeHint().width())
            all << label->text();
    }
    return all;
}

/// Texts outside ⟦ ⟧.
QStringList plainIn(const QWidget &window)
{
    QStringList all;
    const auto take = [&](const QString &text) {
        static const QRegularExpression letters(u"[a-z]{3}"_s);
        if (!text.contains(u'⟦') && text.contains(letters))
            all << text;
    };
    for (const QWidget *widget : window.findChildren<QWidget *>()) {
        if (!widget->isVisible())
            continue;
        take(widget->toolTip());
        take(widget->accessibleName());
        if (const auto *button = qobject_cast<const QAbstractButton *>(widget))
            take(button->text());
        if (const auto *label = qobject_cast<const QLabel *>(widget))
            take(label->text());
        if (const auto *line = qobject_cast<const QLineEdit *>(widget))
            take(line->placeholderText());
        if (const auto *box = qobject_cast<const QComboBox *>(widget)) {
            for (int i = 0; i < box->count(); ++i)
                take(box->itemText(i));
        }
        if (const auto *view = qobject_cast<const QAbstractItemView *>(widget); view && view->model()) {
            for (int column = 0; column < view->model()->columnCount(); ++column) {
                take(view->model()->headerData(column, Qt::Horizontal).toString());
                for (int row = 0; row < std::min(view->model()->rowCount(), 40); ++row)
                    take(view->model()->index(row, column).data().toString());
            }
        }
    }
    for (const QAction *action : window.findChildren<QAction *>())
        take(action->text());
    return all;
}

class Screens {
public:
    Screens(const QString &folder, const core::Kinds &kinds, bool isMarked) : m_folder(folder), m_kinds(kinds), m_isMarked(isMarked) {}
    void draw();

private:
    QString makeDemo();
    void keep(QWidget &widget, const QString &name);
    void settle();
    void sheets(desktop::MainWindow &window, QTableView &table);
    void knownSigner(desktop::MainWindow &window, QTableView &table);
    void calculator(desktop::MainWindow &window);
    void manual(desktop::MainWindow &window);
    void perimeter(desktop::MainWindow &window, desktop::JobPlace &place);
    void figures(desktop::MainWindow &window, desktop::JobPlace &place);
    void photos(desktop::MainWindow &window, desktop::JobPlace &place);
    void whereUsed(desktop::MainWindow &window);
    void verdict(desktop::MainWindow &window);
    void audit(desktop::JobPlace &place);
    void setHold(desktop::MainWindow &window, desktop::JobPlace &place);
    void keys(desktop::MainWindow &window, const QString &path);
    void note(const QString &screen, const QString &into, const QStringList &texts);
    bool choose(QTableView &table, core::Stage stage, int count, int skip = 0);

    QDir m_folder;
    const core::Kinds &m_kinds;
    bool m_isMarked;
    QSet<QString> m_noted; ///< told already
    QTemporaryDir m_temp;
    ScriptedAsk m_ask;
    std::vector<demo::CastMember> m_cast;
};

QString Screens::makeDemo()
{
    const QString path = m_temp.filePath(u"hangar.remate"_s);
    auto store = db::Store::create(path);
    if (!store)
        qFatal("%s", qPrintable(store.error().message));
    const auto played = demo::play(**store, m_kinds, QDate(2026, 3, 2), demo::Until::SecondShift, core::leastCost);
    if (!played)
        qFatal("%s", qPrintable(played.error().message));
    if (const auto closed = (*store)->close(); !closed)
        qFatal("%s", qPrintable(closed.error().message));
    m_cast = played->cast;
    return path;
}

void Screens::settle()
{
    for (int i = 0; i < 20; ++i)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
}

void Screens::keep(QWidget &widget, const QString &name)
{
    settle();
    widget.grab().save(m_folder.filePath(name + u".png"_s));
    note(name, u"narrow.txt"_s, narrowIn(widget));
    if (m_isMarked)
        note(name, u"plain.txt"_s, plainIn(widget));
}

/// Each once.
void Screens::note(const QString &screen, const QString &into, const QStringList &texts)
{
    QFile file(m_folder.filePath(into));
    if (!file.open(QIODevice::Append))
        return;
    for (const QString &text : texts) {
        if (!m_noted.contains(into + text))
            file.write((screen + u": "_s + QString(text).replace(u'\n', u' ') + u'\n').toUtf8());
        m_noted.insert(into + text);
    }
}

/// Chooses `count` rows at that stage, passing over the first `skip`; false when there are not so many.
bool Screens::choose(QTableView &table, core::Stage stage, int count, int skip)
{
    table.clearSelection();
    for (int row = 0; row < table.model()->rowCount() && count > 0; ++row) {
        const QModelIndex at = table.model()->index(row, 0);
        if (at.data().toString() != core::stageWord(stage))
            continue;
        if (skip-- > 0)
            continue;
        table.selectionModel()->select(at, QItemSelectionModel::Select | QItemSelectionModel::Rows);
        table.scrollTo(at);
        --count;
    }
    return count == 0;
}

void Screens::sheets(desktop::MainWindow &window, QTableView &table)
{
    const std::tuple<const char *, core::Stage, int, Qt::Key> all[] = {{"sheet-disconnect", core::Stage::Connected, 1, Qt::Key_D},
                                                                       {"sheet-reconnect-many", core::Stage::Disconnected, 2, Qt::Key_R},
                                                                       {"sheet-reconnect", core::Stage::Disconnected, 1, Qt::Key_R},
                                                                       {"sheet-torque", core::Stage::Reconnected, 1, Qt::Key_T},
                                                                       {"sheet-accept", core::Stage::Secured, 1, Qt::Key_A},
                                                                       {"sheet-reject", core::Stage::Secured, 1, Qt::Key_X}};
    for (const auto &[name, stage, count, key] : all) {
        for (int skip = 0; choose(table, stage, count, skip); ++skip) {
            typeInto(table, key);
            auto *sheet = window.findChild<desktop::SignSheet *>();
            if (!sheet)
                continue; // refused; another one may be allowed
            keep(*sheet, QString::fromLatin1(name));
            sheet->reject();
            settle();
            break;
        }
    }
}

/// After a signature: the same person needs the PIN alone.
void Screens::knownSigner(desktop::MainWindow &window, QTableView &table)
{
    const auto begin = [&] {
        typeInto(table, Qt::Key_A);
        return window.findChild<desktop::SignSheet *>();
    };
    const auto inspector = std::find_if(m_cast.begin(), m_cast.end(), [](const demo::CastMember &member) {
        return std::find(member.authorities.begin(), member.authorities.end(), core::Authority::Inspect) != member.authorities.end();
    });
    for (int skip = 0; choose(table, core::Stage::Secured, 1, skip); ++skip) {
        desktop::SignSheet *sheet = begin();
        if (!sheet)
            continue;
        sheet->findChild<QWidget *>(u"person"_s)->findChild<QLineEdit *>()->setText(inspector->id.text());
        auto *secret = sheet->findChild<QLineEdit *>(u"secret"_s);
        secret->setText(inspector->pin);
        keep(*sheet, u"sheet-filled"_s);
        sheet->findChild<QPushButton *>(u"sign"_s)->click();
        settle();
        keep(window, u"list-after-signing"_s);
        if (window.findChild<desktop::SignSheet *>() || !choose(table, core::Stage::Secured, 1) || !begin())
            return;
        keep(*window.findChild<desktop::SignSheet *>(), u"sheet-known"_s);
        window.findChild<desktop::SignSheet *>()->reject();
        settle();
        return;
    }
}

/// Every calculation with its example; one empty, one refused, one that cannot be read, one table.
void Screens::calculator(desktop::MainWindow &window)
{
    for (QAction *action : window.findChildren<QAction *>()) {
        if (action->shortcut() == QKeySequence(u"Ctrl+K"_s))
            action->trigger();
    }
    auto *page = window.findChild<desktop::CalculatorPage *>();
    keep(window, u"calculator"_s);
    const auto form = [&] {
        const auto forms = page->findChildren<desktop::CalculationForm *>();
        return *std::find_if(forms.begin(), forms.end(), [](const desktop::CalculationForm *one) { return one->isVisible(); });
    };
    for (const core::Calculation &one : core::calculations()) {
        page->choose(QString(one.name));
        settle();
        for (const core::ExampleValue &value : one.example)
            form()->fill(value.field, QString::fromUtf8(value.text));
        keep(window, u"calculator-"_s + one.name);
    }
    page->choose(u"bonding");
    form()->fill(u"reading"_s, u"2.5 mΩ"_s);
    keep(window, u"calculator-refused"_s);
    form()->fill(u"reading"_s, u"2.5 kg"_s);
    keep(window, u"calculator-unreadable"_s);
    for (const auto &[calculation, field] : {std::pair(u"wrench-setting"_s, u"least"_s), std::pair(u"leak-class"_s, u"worst"_s)}) {
        page->choose(calculation);
        settle();
        form()->findChild<QPushButton *>(u"table."_s + field)->click();
        settle();
        auto *dialog = window.findChild<desktop::TableDialog *>();
        auto *rows = dialog->findChild<desktop::RowTable *>();
        rows->choose(rows->model().rows()[2].key);
        keep(*dialog, u"calculator-table-"_s + calculation);
        dialog->close();
        settle();
    }
    page->findChild<QPushButton *>(u"back"_s)->click();
}

/// The contents, a page with tables, the keys, and a search.
void Screens::manual(desktop::MainWindow &window)
{
    for (QAction *action : window.findChildren<QAction *>()) {
        if (action->shortcut() == QKeySequence(u"F1"_s))
            action->trigger();
    }
    auto *shown = window.manual();
    keep(*shown, u"manual"_s);
    for (const QString &page : {u"glossary"_s, u"threats"_s, u"shortcuts"_s, u"rules"_s, u"start_technician"_s}) {
        shown->showPage(page);
        keep(*shown, u"manual-"_s + page);
    }
    shown->findChild<QLineEdit *>(u"search"_s)->setText(u"torque wrench"_s);
    keep(*shown, u"manual-search"_s);
    shown->close();
}

/// Every figure of the job, from the top of its card and to the end of its working; in a window as small as it goes, too.
void Screens::figures(desktop::MainWindow &window, desktop::JobPlace &place)
{
    place.showPage(u"figures"_s);
    settle();
    auto *page = window.findChild<desktop::FiguresPage *>();
    auto *rows = page->findChild<desktop::RowTable *>(u"figures"_s);
    for (const desktop::Row &row : rows->model().rows()) {
        rows->choose(row.key);
        keep(window, u"figures-entry-"_s + row.key);
        QScrollBar *bar = page->findChild<desktop::FigureCard *>()->verticalScrollBar();
        bar->setValue(bar->maximum());
        keep(window, u"figures-entry-"_s + row.key + u"-end"_s);
    }
    const QSize usual = window.size();
    window.resize(window.minimumSizeHint());
    keep(window, u"figures-small"_s);
    window.resize(usual);
}

/// A photo on its sheet; before and after side by side, enlarged, with a mark that is placed; in a window as small as it goes; one that waits.
void Screens::photos(desktop::MainWindow &window, desktop::JobPlace &place)
{
    place.showPage(u"photos"_s, u"SL3"_s);
    auto *page = place.findChild<desktop::PhotosPage *>();
    keep(window, u"photos-before-alone"_s);
    const auto after = demo::scenarioFile(u"photo_SL3_after.png"_s);
    QMimeData pasted;
    pasted.setImageData(QImage::fromData(*after));
    page->offer(pasted);
    auto *sheet = &sheetInFront();
    keep(*sheet, u"sheet-photo"_s);
    sheet->findChild<QCheckBox *>(u"smaller"_s)->click();
    sheet->findChild<QWidget *>(u"moment"_s)->findChild<QComboBox *>()->setCurrentIndex(2);
    const auto technician = std::find_if(m_cast.begin(), m_cast.end(), [](const demo::CastMember &member) { return member.id.text() == u"novak"; });
    if (auto *who = sheet->findChild<QPushButton *>(u"somebodyElse"_s); who->isVisible())
        who->click();
    sheet->findChild<QWidget *>(u"person"_s)->findChild<QLineEdit *>()->setText(technician->id.text());
    sheet->findChild<QLineEdit *>(u"secret"_s)->setText(technician->pin);
    keep(*sheet, u"sheet-photo-copy"_s);
    sheet->findChild<QPushButton *>(u"sign"_s)->click();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    keep(window, u"photos-both"_s);
    page->findChild<QPushButton *>(u"place"_s)->click();
    auto &left = page->findChild<desktop::PhotoPair *>()->view(desktop::Side::Left);
    for (const int key : {int(Qt::Key_Right), int(Qt::Key_Right), int(Qt::Key_Plus), int(Qt::Key_Plus)}) {
        QKeyEvent press(QEvent::KeyPress, key, Qt::NoModifier);
        QApplication::sendEvent(&left, &press);
    }
    emit left.placed({0.62, 0.63});
    page->findChild<QLineEdit *>(u"markWords"_s)->setText(u"Chafed at the edge of the clamp"_s);
    emit page->findChild<QLineEdit *>(u"markWords"_s)->textEdited(u"Chafed at the edge of the clamp"_s);
    keep(window, u"photos-marking"_s);
    page->findChild<QPushButton *>(u"photo.marked"_s)->click();
    desktop::SignSheet &marks = sheetInFront();
    keep(marks, u"sheet-photo-marks"_s);
    marks.findChild<QLineEdit *>(u"secret"_s)->setText(technician->pin);
    marks.findChild<QPushButton *>(u"sign"_s)->click();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    m_ask.folderPath = m_temp.path();
    page->findChild<QPushButton *>(u"watch"_s)->click();
    page->offer(pasted);
    settle();
    if (auto *again = window.findChild<desktop::SignSheet *>()) {
        keep(*again, u"sheet-photo-again"_s);
        again->reject();
    }
    settle();
    keep(window, u"photos-waiting"_s);
    const QSize usual = window.size();
    window.resize(window.minimumSizeHint());
    keep(window, u"photos-small"_s);
    window.resize(usual);
    place.showItem(*core::InterfaceId::parse(u"SL3"_s));
    keep(window, u"list-photos"_s);
}

/// Enlarged at an item that is applied, and in a larger window.
void Screens::perimeter(desktop::MainWindow &window, desktop::JobPlace &place)
{
    place.showPage(u"perimeter"_s);
    settle();
    auto *view = window.findChild<desktop::PerimeterView *>();
    for (const int key : {int(Qt::Key_Home), int(Qt::Key_PageDown), int(Qt::Key_PageDown), int(Qt::Key_PageDown), int(Qt::Key_PageDown), int(Qt::Key_Left), int(Qt::Key_Plus), int(Qt::Key_Plus), int(Qt::Key_Plus)}) {
        QKeyEvent press(QEvent::KeyPress, key, Qt::NoModifier);
        QApplication::sendEvent(view, &press);
    }
    keep(window, u"perimeter-enlarged"_s);
    view->fit();
    const QSize usual = window.size();
    window.resize(1920, 1050);
    keep(window, u"perimeter-wide"_s);
    window.resize(window.minimumSizeHint());
    keep(window, u"perimeter-small"_s);
    window.resize(usual);
}

/// A filtered timeline, a sample, and what came after an earlier print.
void Screens::audit(desktop::JobPlace &place)
{
    place.showPage(u"record"_s);
    auto *page = place.findChild<desktop::RecordPage *>();
    page->findChild<QComboBox *>(u"person"_s)->setCurrentIndex(2);
    keep(*place.window(), u"record-filtered"_s);
    page->findChild<QPushButton *>(u"clearFilter"_s)->click();
    page->findChild<QPushButton *>(u"progressAsked"_s)->click();
    auto *progress = page->findChild<desktop::ProgressDialog *>();
    keep(*progress, u"progress"_s);
    progress->findChild<QComboBox *>(u"beside"_s)->setCurrentIndex(1);
    keep(*progress, u"progress-zone"_s);
    progress->close();
    settle();
    page->findChild<QPushButton *>(u"sample"_s)->click();
    auto *sample = page->findChild<desktop::SampleDialog *>();
    keep(*sample, u"sample"_s);
    sample->findChild<QLineEdit *>(u"seed"_s)->setText(u"audit-7"_s);
    sample->findChild<QPushButton *>(u"draw"_s)->click();
    keep(*sample, u"sample-drawn"_s);
    sample->close();
    settle();
    page->findChild<QPushButton *>(u"compare"_s)->click();
    auto *compare = page->findChild<desktop::CompareDialog *>();
    compare->findChild<QLineEdit *>(u"from"_s)->setText(u"360"_s);
    compare->findChild<QPushButton *>(u"doCompare"_s)->click();
    keep(*compare, u"compared"_s);
    compare->findChild<QLineEdit *>(u"from"_s)->setText(QString(64, u'0'));
    compare->findChild<QPushButton *>(u"doCompare"_s)->click();
    keep(*compare, u"compared-refused"_s);
    compare->close();
    settle();
    page->findChild<QPushButton *>(u"whoSigned"_s)->click();
    auto *signings = page->findChild<desktop::SigningsDialog *>();
    QKeyEvent right(QEvent::KeyPress, Qt::Key_Right, Qt::NoModifier);
    QCoreApplication::sendEvent(signings->findChild<desktop::SigningsView *>(), &right);
    keep(*signings, u"who-signed-when"_s);
    signings->close();
    settle();
}

/// A tool in every job, and a search that finds nothing.
void Screens::whereUsed(desktop::MainWindow &window)
{
    for (QAction *action : window.findChildren<QAction *>()) {
        if (action->shortcut() == QKeySequence(u"Ctrl+Shift+F"_s))
            action->trigger();
    }
    auto *dialog = window.findChild<desktop::WhereUsedDialog *>();
    keep(*dialog, u"where-used"_s);
    dialog->findChild<QLineEdit *>(u"value"_s)->setText(m_cast.front().id.text());
    dialog->findChild<QPushButton *>(u"find"_s)->click();
    auto *rows = dialog->findChild<desktop::RowTable *>(u"uses"_s);
    rows->choose(rows->model().rows().front().key);
    keep(*dialog, u"where-used-found"_s);
    dialog->findChild<QComboBox *>(u"sort"_s)->setCurrentIndex(1);
    dialog->findChild<QLineEdit *>(u"value"_s)->setText(u"TW-51"_s);
    dialog->findChild<QPushButton *>(u"find"_s)->click();
    keep(*dialog, u"where-used-nothing"_s);
    dialog->close();
    settle();
}

/// A package that holds, one that was altered, and the list of those that were imported.
void Screens::verdict(desktop::MainWindow &window)
{
    m_ask.savePath = m_temp.filePath(u"WO-2207-14-record.zip"_s);
    const auto trigger = [&](const auto &is) {
        for (QAction *action : window.findChildren<QAction *>()) {
            if (is(*action))
                action->trigger();
        }
    };
    trigger([](const QAction &action) { return action.shortcut() == QKeySequence(u"Ctrl+E"_s); });
    const auto show = [&](const QString &path, const QString &name) {
        window.openPackage(path);
        auto *dialog = window.findChild<desktop::VerifyDialog *>();
        keep(*dialog, name);
        dialog->close();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    };
    show(*m_ask.savePath, u"verdict-good"_s);
    QFile file(*m_ask.savePath);
    if (!file.open(QIODevice::ReadWrite))
        qFatal("%s", qPrintable(file.errorString()));
    const qint64 at = file.size() / 9;
    file.seek(at);
    file.write("altered");
    file.close();
    show(*m_ask.savePath, u"verdict-altered"_s);
    trigger([](const QAction &action) { return action.text() == desktop::MainWindow::tr("I&mported packages …"); });
    auto *list = window.findChild<desktop::PackagesDialog *>();
    keep(*list, u"packages-none"_s);
    list->close();
    settle();
}

/// Empty, and as the standard set has it.
void Screens::setHold(desktop::MainWindow &window, desktop::JobPlace &place)
{
    place.showPage(u"holds"_s);
    for (QAction *action : window.findChildren<QAction *>()) { // whoever signed last is no lead
        if (action->shortcut() == QKeySequence(u"Ctrl+L"_s))
            action->trigger();
    }
    settle();
    place.findChild<QPushButton *>(u"setHold"_s)->click();
    auto *sheet = window.findChild<desktop::SignSheet *>();
    keep(*sheet, u"sheet-set-hold"_s);
    sheet->findChild<QComboBox *>(u"standardHold"_s)->setCurrentIndex(2);
    keep(*sheet, u"sheet-set-hold-standard"_s);
    sheet->reject();
    settle();
}

/// What a person does with their own key; and one whose key is at another station.
void Screens::keys(desktop::MainWindow &window, const QString &path)
{
    auto *signing = window.findChild<desktop::Signing *>();
    const auto sheet = [&](desktop::MainWindow &of, const QString &name) {
        settle();
        auto *shown = of.findChild<desktop::SignSheet *>();
        keep(*shown, name);
        shown->reject();
        settle();
    };
    signing->carryKey();
    sheet(window, u"sheet-carry-key"_s);
    signing->takeKey();
    sheet(window, u"sheet-take-key"_s);
    signing->beginRegister("key.stopped"_L1, {{u"okafor"_s, {{u"since"_s, u"2026-03-02T08:14:00.000Z"_s}}, {}}}, "threats"_L1);
    sheet(window, u"sheet-stop-key"_s);
    const session::Station another = [](const QString &) { return core::SecondKey::ofStation(QByteArray(core::SecondKey::size, 'x')); };
    desktop::MainWindow away(m_ask, m_kinds, {evening(), {core::leastCost, another}, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
    away.resize(1366, 768);
    away.show();
    away.openStore(path);
    away.findChild<QPushButton *>(u"peopleAndTools"_s)->click();
    away.findChild<desktop::PeoplePage *>()->findChild<desktop::RowTable *>(u"people"_s)->choose(u"okafor"_s);
    keep(away, u"people-elsewhere"_s);
    away.findChild<QPushButton *>(u"enrol"_s)->click();
    settle();
    away.findChild<desktop::SignSheet *>()->findChild<QWidget *>(u"person"_s)->findChild<QLineEdit *>()->setText(u"okafor"_s);
    sheet(away, u"sheet-elsewhere"_s);
}

void Screens::draw()
{
    desktop::MainWindow window(m_ask, m_kinds, {evening(), core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
    window.resize(1366, 768);
    window.show();
    keep(window, u"welcome"_s);
    calculator(window);
    manual(window);
    {
        desktop::MainWindow first(m_ask, m_kinds, {evening(), core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
        first.resize(1366, 768);
        first.show();
        auto store = db::Store::create(m_temp.filePath(u"empty.remate"_s));
        if (store && (*store)->close())
            first.openStore(m_temp.filePath(u"empty.remate"_s));
        keep(first, u"found"_s);
    }
    const QString path = makeDemo();
    window.openStore(path);
    keep(window, u"jobs"_s);
    window.findChild<QPushButton *>(u"peopleAndTools"_s)->click();
    window.findChild<desktop::PeoplePage *>()->findChild<desktop::RowTable *>(u"people"_s)->choose(u"okafor"_s);
    keep(window, u"people"_s);
    keys(window, path);
    if (auto *newJob = window.findChild<QPushButton *>(u"newJob"_s)) {
        newJob->click();
        settle();
        if (auto *sheet = window.findChild<desktop::SignSheet *>()) {
            keep(*sheet, u"sheet-new-job"_s);
            sheet->reject();
            settle();
        }
    }
    auto store = db::Store::open(path, db::Access::ReadOnly);
    session::Session reader(**store, evening());
    if (const auto read = reader.refresh(); !read)
        qFatal("%s", qPrintable(read.error().message));
    const auto jobs = reader.jobs();
    window.openJob(jobs->front().ledger);
    keep(window, u"list"_s);
    auto *place = window.findChild<desktop::JobPlace *>();
    auto *table = window.findChild<QTableView *>(u"interfaces"_s);
    for (const core::Stage stage : {core::Stage::Connected, core::Stage::Disconnected, core::Stage::Reconnected, core::Stage::Secured, core::Stage::Inspected}) {
        choose(*table, stage, 1);
        keep(window, u"list-"_s + core::stageName(stage));
    }
    choose(*table, core::Stage::Connected, 3);
    keep(window, u"list-several"_s);
    sheets(window, *table);
    knownSigner(window, *table);
    for (const desktop::PageLine &line : desktop::pages()) {
        place->showPage(QString(line.name));
        keep(window, QString(line.name));
    }
    perimeter(window, *place);
    figures(window, *place);
    photos(window, *place);
    setHold(window, *place);
    audit(*place);
    whereUsed(window);
    verdict(window);
    const QString faulty = m_temp.filePath(u"list.csv"_s);
    QFile file(faulty);
    if (file.open(QIODevice::WriteOnly))
        file.write("id,name,kind,zone\r\nX1,Duct,duct,Nowhere\r\nX2,,no_such_kind,Left\r\n");
    file.close();
    place->importList(faulty);
    settle();
    if (auto *dialog = window.findChild<desktop::ImportDialog *>()) {
        keep(*dialog, u"import-faults"_s);
        dialog->close();
        settle();
    }
}

constexpr std::pair<QLatin1String, desktop::Appearance> looks[] = {{"light"_L1, desktop::Appearance::Light}, {"dark"_L1, desktop::Appearance::Dark}, {"stark"_L1, desktop::Appearance::StarkLight}, {"stark-dark"_L1, desktop::Appearance::StarkDark}};

int drawAll(const QString &program, const QString &folder)
{
    for (const auto &[shade, appearance] : looks) {
        for (const QString &scale : {u"1"_s, u"2"_s}) {
            QProcess process;
            QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
            environment.insert(u"QT_SCALE_FACTOR"_s, scale);
            process.setProcessEnvironment(environment);
            process.setProcessChannelMode(QProcess::ForwardedChannels);
            process.start(program, {folder + u'/' + shade + u'-' + scale, QString(shade)});
            if (!process.waitForFinished(300'000) || process.exitCode() != 0)
                return 1;
        }
    }
    return 0;
}

} // namespace

int main(int argc, char **argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication app(argc, argv);
    const QStringList arguments = QApplication::arguments();
    if (arguments.size() < 2) {
        std::fprintf(stderr, "usage: desktop_screens FOLDER [light|dark|stark|stark-dark [en|de|fr|marked]]\n");
        return 2;
    }
    if (arguments.size() == 2)
        return drawAll(QApplication::applicationFilePath(), arguments[1]);
    QDir().mkpath(arguments[1]);
    const auto ready = core::readyCryptography();
    const auto kinds = resources::loadKinds();
    if (!ready || !kinds)
        return 3;
    for (const auto &[look, appearance] : looks) {
        if (arguments[2] == look)
            desktop::applyAppearance(app, appearance);
    }
    language::Spoken words(QLocale::c());
    std::optional<MarkedWords> marked;
    if (const auto spoken = language::languageOf(arguments.value(3)))
        words.speak(*spoken);
    else if (arguments.value(3) == u"marked")
        marked.emplace();
    Screens(arguments[1], *kinds, marked.has_value()).draw();
    return 0;
}
