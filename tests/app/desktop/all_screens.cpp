// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/desktop/all_screens.hpp"

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QFile>
#include <QKeyEvent>
#include <QMimeData>
#include <QPushButton>
#include <QUrl>

#include <algorithm>

#include "app/demo/scenario.hpp"
#include "app/demo/table.hpp"
#include "app/desktop/actions.hpp"
#include "app/desktop/flows/import_dialog.hpp"
#include "app/desktop/flows/signing.hpp"
#include "app/desktop/manual/manual_window.hpp"
#include "app/desktop/pages/calculator/calculator_page.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/pages.hpp"
#include "app/desktop/pages/people/people_page.hpp"
#include "app/desktop/pages/photos/photos_page.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "core/labels/label_text.hpp"
#include "core/list/interface_list.hpp"
#include "resources/resources.hpp"
#include "tests/app/desktop/on_screen.hpp"

using namespace Qt::StringLiterals;

namespace {

/// After the last entry of the story's second shift.
session::Clock evening()
{
    return [] { return *core::Instant::parse(u"2026-03-02T18:00:00Z"); };
}

core::Kinds kindsOrNone()
{
    auto kinds = resources::loadKinds();
    Q_ASSERT(kinds);
    return *std::move(kinds);
}

/// All that an act may name: an item, or what a page names by itself.
struct About {
    std::vector<core::InterfaceId> items;
    std::optional<QString> subject;
};

std::vector<About> allAbout(const core::JobState &job)
{
    std::vector<About> all{{{}, {}}};
    for (const core::InterfaceState &item : job.items) {
        all.push_back({{item.listed.id}, {}});
        for (const core::Photo &photo : item.photos)
            all.push_back({{item.listed.id}, photo.digest.hex()});
    }
    const auto add = [&](const auto &things, auto idOf) {
        for (const auto &one : things)
            all.push_back({{}, idOf(one)});
    };
    add(job.findings, [](const auto &one) { return one.id.text(); });
    add(job.holds, [](const auto &one) { return one.id.text(); });
    add(job.temporaries, [](const auto &one) { return one.id.text(); });
    add(job.tools.out(), [](const auto *one) { return one->marking.text(); });
    for (const core::Line &line : job.lines)
        all.push_back({{}, QString::number(line.seq)});
    return all;
}

} // namespace

AllScreens::AllScreens() : m_kinds(kindsOrNone()), m_words(QLocale::c())
{
    const auto ready = core::readyCryptography();
    auto store = db::Store::create(m_folder.filePath(u"demo.remate"_s));
    if (!ready || m_kinds.all().empty() || !store) {
        m_trouble = u"no cryptography, no kinds or no store"_s;
        return;
    }
    const auto played = demo::play(**store, m_kinds, QDate(2026, 3, 2), demo::Until::SecondShift, core::leastCost);
    if (!played) {
        m_trouble = played.error().message;
        return;
    }
    m_job = played->job;
    const auto empty = db::Store::create(m_folder.filePath(u"empty.remate"_s));
    if (!empty || !(*empty)->close() || !(*store)->close()) {
        m_trouble = u"a store was not made or not closed"_s;
        return;
    }
    for (const QString &name : {u"photo_SL3_before.png"_s, u"photo_SL3_after.png"_s}) {
        QFile photo(m_folder.filePath(name));
        if (const auto bytes = demo::scenarioFile(name); !bytes || !photo.open(QIODevice::WriteOnly) || photo.write(*bytes) != bytes->size())
            m_trouble = u"no photos"_s;
    }
    QFile list(m_folder.filePath(u"faulty.csv"_s));
    if (list.open(QIODevice::WriteOnly))
        list.write("id,name,kind,zone\r\nX1,Duct,duct,Nowhere\r\n");
    speak(language::Language::English);
    addPages();
    addHappenings();
    addDialogs();
    addRegister();
    addActs();
}

AllScreens::~AllScreens() { leave(); }

void AllScreens::speak(language::Language language)
{
    m_window.reset();
    m_words.speak(language);
    m_other.reset();
    m_window = newWindow();
    m_window->keepBegunForms(m_folder.filePath(u"begun"_s));
    m_window->openStore(m_folder.filePath(u"demo.remate"_s));
    m_window->openJob(*m_job);
}

std::unique_ptr<desktop::MainWindow> AllScreens::newWindow()
{
    const desktop::SessionMaker maker{evening(), core::leastCost, session::IdentityRule::usualIdleLimit};
    auto window = std::make_unique<desktop::MainWindow>(m_ask, m_kinds, maker, desktop::Preferences());
    window->resize(1366, 768);
    window->show();
    return window;
}

QWidget *AllScreens::top()
{
    QCoreApplication::processEvents();
    QWidget *modal = QApplication::activeModalWidget();
    return modal ? modal : m_window.get();
}

void AllScreens::leave()
{
    while (auto *dialog = qobject_cast<QDialog *>(QApplication::activeModalWidget())) {
        dialog->reject();
        QCoreApplication::processEvents();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
}

QWidget *AllScreens::trigger(const QString &keys)
{
    for (QAction *action : m_window->findChildren<QAction *>()) {
        if (action->shortcut() == QKeySequence(keys))
            action->trigger();
    }
    return top();
}

QWidget *AllScreens::press(const QString &page, const char *button)
{
    m_window->openJob(*m_job);
    auto *place = m_window->findChild<desktop::JobPlace *>();
    place->showPage(page);
    place->findChild<QPushButton *>(QString::fromLatin1(button))->click();
    return top();
}

void AllScreens::addPages()
{
    m_pages.push_back({u"welcome"_s, [this] {
                           m_other = newWindow();
                           return m_other.get();
                       }});
    m_pages.push_back({u"found"_s, [this] {
                           m_other = newWindow();
                           m_other->openStore(m_folder.filePath(u"empty.remate"_s));
                           return m_other.get();
                       }});
    m_pages.push_back({u"jobs"_s, [this] { return trigger(u"Ctrl+J"_s); }});
    m_pages.push_back({u"people"_s, [this] { return trigger(u"Ctrl+P"_s); }});
    m_pages.push_back({u"calculator"_s, [this] { return trigger(u"Ctrl+K"_s); }});
    m_pages.push_back({u"manual"_s, [this]() -> QWidget * {
                           (void)trigger(u"F1"_s);
                           return m_window->manual();
                       }});
    for (const desktop::PageLine &line : desktop::pages()) {
        m_pages.push_back({u"page "_s + QString(line.name), [this, name = QString(line.name)] {
                               m_window->openJob(*m_job);
                               m_window->findChild<desktop::JobPlace *>()->showPage(name);
                               return top();
                           }});
    }
}

/// What gets its text when something happens on a page: photos came in while a folder is watched; a label of another job was scanned.
void AllScreens::addHappenings()
{
    m_pages.push_back({u"photos that wait"_s, [this]() -> QWidget * {
                           m_window->openJob(*m_job);
                           auto *place = m_window->findChild<desktop::JobPlace *>();
                           place->showPage(u"photos"_s);
                           auto *page = place->findChild<desktop::PhotosPage *>();
                           m_ask.folderPath = m_folder.path();
                           named<QPushButton>(*page, "watch")->click();
                           QMimeData dropped;
                           QList<QUrl> photos;
                           for (const QString &name : {u"photo_SL3_before.png"_s, u"photo_SL3_after.png"_s}) // of two none is attached at once
                               photos << QUrl::fromLocalFile(m_folder.filePath(name));
                           dropped.setUrls(photos);
                           page->offer(dropped);
                           return named<QPushButton>(*page, "attachWaiting")->isVisible() ? top() : nullptr;
                       }});
    m_pages.push_back({u"another job's label"_s, [this]() -> QWidget * {
                           m_window->openJob(*m_job);
                           m_window->findChild<desktop::JobPlace *>()->showPage(u"list"_s);
                           scan(core::writeLabelText({u"WO-2207-15"_s, *core::InterfaceId::parse(u"E1")}));
                           return named<QWidget>(*m_window, "otherJob")->isVisible() ? top() : nullptr;
                       }});
}

/// As a hand scanner types it, where the keyboard is.
void AllScreens::scan(const QString &text)
{
    QWidget *to = m_window->focusWidget();
    m_moment += 1000;
    for (const QChar c : text + u'\r') {
        QKeyEvent press(QEvent::KeyPress, c == u'\r' ? Qt::Key_Return : static_cast<int>(c.toUpper().unicode()), Qt::NoModifier, QString(c));
        press.setTimestamp(++m_moment);
        QCoreApplication::sendEvent(to ? to : m_window.get(), &press);
    }
}

void AllScreens::addDialogs()
{
    m_dialogs.push_back({u"find a command"_s, [this] { return trigger(u"Ctrl+Shift+A"_s); }});
    m_dialogs.push_back({u"where used"_s, [this] { return trigger(u"Ctrl+Shift+F"_s); }});
    m_dialogs.push_back({u"imported packages"_s, [this] {
                             for (QAction *action : m_window->findChildren<QAction *>()) {
                                 if (action->text() == desktop::MainWindow::tr("I&mported packages …"))
                                     action->trigger();
                             }
                             return top();
                         }});
    for (const char *button : {"verify", "sample", "progressAsked", "whoSigned", "compare"})
        m_dialogs.push_back({QString::fromLatin1(button), [this, button] { return press(u"record"_s, button); }});
    m_dialogs.push_back({u"a package that is none"_s, [this] {
                             m_window->openPackage(m_folder.filePath(u"faulty.csv"_s));
                             return top();
                         }});
    m_dialogs.push_back({u"a list with faults"_s, [this] {
                             m_window->openJob(*m_job);
                             m_window->findChild<desktop::JobPlace *>()->importList(m_folder.filePath(u"faulty.csv"_s));
                             return top();
                         }});
    m_dialogs.push_back({u"look-up table"_s, [this] {
                             (void)trigger(u"Ctrl+K"_s);
                             auto *page = m_window->findChild<desktop::CalculatorPage *>();
                             page->choose(u"leak-class");
                             QCoreApplication::processEvents();
                             page->findChild<QPushButton *>(u"table.worst"_s)->click();
                             return top();
                         }});
    m_dialogs.push_back({u"new job"_s, [this] { return trigger(u"Ctrl+N"_s); }});
    m_dialogs.push_back({u"hold point"_s, [this] { return press(u"holds"_s, "setHold"); }});
    m_dialogs.push_back({u"interface list"_s, [this] {
                             m_window->openJob(*m_job);
                             core::Draft draft{*core::PersonId::parse(u"okafor"), *core::Instant::parse(u"2026-03-02T18:00:00Z"), u"interface.listed"_s, u"X1"_s, {}};
                             m_window->findChild<desktop::Signing *>()->beginFixed(u"List"_s, {draft});
                             return top();
                         }});
}

/// Each button of the page for people and tools opens a sheet, once a person, an authorisation and a tool are chosen.
void AllScreens::addRegister()
{
    (void)trigger(u"Ctrl+P"_s);
    const auto buttons = m_window->findChild<desktop::PeoplePage *>()->findChildren<QPushButton *>();
    for (qsizetype at = 0; at < buttons.size(); ++at) {
        QString text = buttons[at]->text().remove(u'&').remove(u'…').trimmed().toLower();
        m_dialogs.push_back({text, [this, at] {
                                 (void)trigger(u"Ctrl+P"_s);
                                 auto *page = m_window->findChild<desktop::PeoplePage *>();
                                 for (const char *table : {"people", "authorisations", "tools"}) {
                                     auto *rows = page->findChild<desktop::RowTable *>(QString::fromLatin1(table));
                                     rows->choose(rows->model().rows().front().key);
                                 }
                                 page->findChildren<QPushButton *>()[at]->click();
                                 return top();
                             }});
    }
}

/// The sheet of each act that somebody may sign about something as the job stands.
void AllScreens::addActs()
{
    const auto *signing = m_window->findChild<desktop::Signing *>();
    auto store = db::Store::open(m_folder.filePath(u"demo.remate"_s), db::Access::ReadOnly);
    session::Session reader(**store, evening());
    if (!reader.refresh() || !reader.openJob(*m_job)) {
        m_trouble = u"the demo does not open"_s;
        return;
    }
    m_window->openJob(*m_job);
    for (const auto &[id, tool] : reader.reg().tools)
        m_tools << id.text();
    const auto all = allAbout(*reader.state());
    for (const desktop::ActionLine &line : desktop::actions()) {
        const auto at = std::find_if(all.begin(), all.end(), [&](const About &about) {
            return desktop::comesIntoQuestion(line, *reader.state(), about.items, about.subject.has_value()) && about.subject.has_value() == (line.over == desktop::Over::Subject)
                   && signing->whyNot(line, about.items, about.subject).empty();
        });
        if (at == all.end())
            continue;
        m_acts << QString(line.kind);
        m_dialogs.push_back({u"act "_s + QString(line.kind), [this, &line, about = *at] {
                                 m_window->openJob(*m_job);
                                 m_window->findChild<desktop::Signing *>()->begin(line, about.items, about.subject);
                                 return top();
                             }});
    }
    const auto torque = std::find_if(m_dialogs.begin(), m_dialogs.end(), [](const Screen &screen) { return screen.name == u"act torque.applied"; });
    if (torque == m_dialogs.end()) {
        m_trouble = u"nothing is to be torqued"_s;
        return;
    }
    m_dialogs.push_back({u"act torque.applied, with a setting that is offered"_s, [this, show = torque->show] {
                             QWidget *sheet = show();
                             const auto *offer = named<QPushButton>(*sheet, "offer");
                             for (const QString &tool : m_tools) {
                                 if (!offer->isVisible())
                                     typeInto(*sheet, u"tool"_s, tool);
                             }
                             return offer->isVisible() ? sheet : nullptr;
                         }});
}
