// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QAccessible>
#include <QApplication>
#include <QPushButton>
#include <QTest>

#include <set>

#include "app/desktop/main_window.hpp"
#include "app/desktop/manual/manual_window.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/pages.hpp"
#include "app/desktop/parts/theme.hpp"
#include "tests/app/desktop/all_screens.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;

/// What a screen reader and a keyboard meet on each screen: WCAG 2.2, 4.1.2 (name, role), 2.1.1 (keyboard), 2.1.2 (no trap), 2.5.5 (target size).
class TstAccessibility : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void everyControlHasNameAndRole_data() { screens(); }
    void everyControlHasNameAndRole();
    void tabReachesEveryControl_data() { screens(); }
    void tabReachesEveryControl();
    void targetsCanBeHit_data() { screens(); }
    void targetsCanBeHit();
    void everyDialogIsTold_data();
    void everyDialogIsTold();

private:
    void screens();
    QWidget *screen(const QString &name);

    AllScreens m_screens;
    Bench m_bench;
    ScriptedAsk m_ask;
    std::unique_ptr<session::Session> m_session;
    std::optional<core::LedgerId> m_job;
    std::unique_ptr<desktop::MainWindow> m_welcome; ///< without a store
    std::unique_ptr<desktop::MainWindow> m_window;
};

namespace {

/// A part of a control, not one of its own: the field within a spin box, the frame within a table.
bool isPartOfAnother(const QWidget &widget)
{
    const QWidget *parent = widget.parentWidget();
    return widget.objectName().startsWith(u"qt_") || qobject_cast<const QAbstractScrollArea *>(parent) || (parent && parent->focusProxy() == &widget)
        || (parent && parent->inherits("QAbstractSpinBox")) || (parent && parent->inherits("QComboBox"));
}

/// What can be worked with now.
std::vector<QWidget *> controlsOf(const QWidget &screen)
{
    std::vector<QWidget *> controls;
    for (QWidget *widget : screen.findChildren<QWidget *>()) {
        const bool isMet = (widget->focusPolicy() & Qt::TabFocus) != 0 || qobject_cast<QAbstractButton *>(widget);
        const bool isControl = isMet && widget->isVisibleTo(&screen) && widget->isEnabledTo(&screen) && widget->window() == screen.window();
        if (isControl && !isPartOfAnother(*widget) && !widget->focusProxy())
            controls.push_back(widget);
    }
    return controls;
}

QString wordsOf(const QWidget &widget)
{
    return QString::fromLatin1(widget.metaObject()->className()) + u" \""_s + widget.objectName() + u"\" in "_s + (widget.parentWidget() ? QString::fromLatin1(widget.parentWidget()->metaObject()->className()) : QString());
}

bool hasName(const QWidget &widget, QAccessibleInterface &told)
{
    if (!told.text(QAccessible::Name).isEmpty())
        return true;
    // A label in front of it names it, too.
    for (const auto &[related, how] : told.relations(QAccessible::Label)) {
        if (related && !related->text(QAccessible::Name).isEmpty())
            return true;
    }
    return !widget.accessibleName().isEmpty();
}

/// Those that a screen reader has no name or no role for.
QString nameless(const std::vector<QWidget *> &controls)
{
    QStringList all;
    for (QWidget *control : controls) {
        QAccessibleInterface *told = QAccessible::queryAccessibleInterface(control);
        const bool isTold = told && hasName(*control, *told) && told->role() != QAccessible::NoRole && (told->role() != QAccessible::Client || qobject_cast<QAbstractScrollArea *>(control));
        if (!isTold)
            all << wordsOf(*control);
    }
    return all.join(u'\n');
}

/// Once round with Tab: those that are not met before the first comes again; and a trap, where it never does.
QString missedByTab(QWidget &screen)
{
    std::set<const QWidget *> met;
    QWidget *at = &screen;
    for (int steps = 0; steps < 10000; ++steps) {
        at = at->nextInFocusChain();
        if (at == &screen)
            break;
        if ((at->focusPolicy() & Qt::TabFocus) != 0)
            met.insert(at);
    }
    if (at != &screen)
        return u"a trap"_s;
    QStringList missed;
    for (const QWidget *control : controlsOf(screen)) {
        const bool byOther = (control->focusPolicy() & Qt::TabFocus) == 0; // by its key, its row or its group
        if (!byOther && !met.contains(control))
            missed << wordsOf(*control);
    }
    return missed.join(u'\n');
}

} // namespace

void TstAccessibility::initTestCase()
{
    QCOMPARE(m_bench.trouble(), QString());
    QCOMPARE(m_screens.trouble(), QString());
    desktop::applyAppearance(*qApp, desktop::Appearance::Light);
    m_session = m_bench.another();
    m_job = m_bench.openJob(*m_session);
    QVERIFY(m_job);
    m_window = std::make_unique<desktop::MainWindow>(m_ask, m_bench.kinds(), desktop::SessionMaker{m_bench.clock(), core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
    m_welcome = std::make_unique<desktop::MainWindow>(m_ask, m_bench.kinds(), desktop::SessionMaker{m_bench.clock(), core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
    for (desktop::MainWindow *window : {m_welcome.get(), m_window.get()}) {
        window->resize(1366, 768);
        window->show();
    }
}

void TstAccessibility::screens()
{
    QTest::addColumn<QString>("name");
    for (const QString &name : {u"welcome"_s, u"jobs"_s, u"people"_s, u"calculator"_s, u"manual"_s})
        QTest::newRow(qPrintable(name)) << name;
    for (const desktop::PageLine &line : desktop::pages())
        QTest::newRow(line.name.data()) << QString(line.name);
}

QWidget *TstAccessibility::screen(const QString &name)
{
    const auto press = [&](const QString &keys) {
        for (QAction *action : m_window->findChildren<QAction *>()) {
            if (action->shortcut() == QKeySequence(keys))
                action->trigger();
        }
    };
    if (name == u"welcome")
        return m_welcome.get();
    if (!m_window->windowTitle().contains(u"bench"))
        m_window->openStore(m_bench.path());
    if (name == u"jobs")
        press(u"Ctrl+J"_s);
    else if (name == u"people")
        m_window->findChild<QPushButton *>(u"peopleAndTools"_s)->click();
    else if (name == u"calculator")
        press(u"Ctrl+K"_s);
    else if (name == u"manual") {
        press(u"F1"_s);
        return m_window->manual();
    } else {
        m_window->openJob(*m_job);
        m_window->findChild<desktop::JobPlace *>()->showPage(name);
    }
    QCoreApplication::processEvents();
    return m_window.get();
}

void TstAccessibility::everyControlHasNameAndRole()
{
    QFETCH(QString, name);
    const auto controls = controlsOf(*screen(name));
    QVERIFY(!controls.empty());
    QCOMPARE(nameless(controls), QString());
}

void TstAccessibility::tabReachesEveryControl()
{
    QFETCH(QString, name);
    QCOMPARE(missedByTab(*screen(name)), QString());
}

/// With gloves: 44 px each way, by 2.5.5; links within text and lists are not targets by themselves.
void TstAccessibility::targetsCanBeHit()
{
    QFETCH(QString, name);
    const QWidget *shown = screen(name);
    QStringList small;
    for (const QWidget *control : controlsOf(*shown)) {
        const auto *button = qobject_cast<const QPushButton *>(control);
        if (button && (button->height() < 44 || button->width() < 44))
            small << u"%1: %2 x %3"_s.arg(wordsOf(*button)).arg(button->width()).arg(button->height());
    }
    QCOMPARE(small.join(u'\n'), QString());
}

void TstAccessibility::everyDialogIsTold_data()
{
    QTest::addColumn<AllScreens::Screen>("screen");
    for (const AllScreens::Screen &screen : m_screens.dialogs())
        QTest::addRow("%s", qPrintable(screen.name)) << screen;
}

void TstAccessibility::everyDialogIsTold()
{
    QFETCH(AllScreens::Screen, screen);
    QWidget *dialog = screen.show();
    QVERIFY(dialog->isModal());
    const QString title = dialog->windowTitle();
    const auto controls = controlsOf(*dialog);
    const QString untold = nameless(controls);
    const QString missed = missedByTab(*dialog);
    m_screens.leave();
    QVERIFY(!title.isEmpty());
    QVERIFY(!controls.empty());
    QCOMPARE(untold, QString());
    QCOMPARE(missed, QString());
}

QTEST_MAIN(TstAccessibility)
#include "tst_accessibility.moc"
