// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QAction>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTextBrowser>

#include "app/desktop/main_window.hpp"
#include "app/desktop/manual/manual_window.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/pages.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;

/// The manual beside the work, through its window.
class TstManualWindow : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup() { m_window.reset(); }
    void helpLeadsToThePageOfWhatIsShown();
    void wordsNarrowTheContents();
    void linksLeadOnAndBack();
    void keysAreThoseOfTheMenus();

private:
    template <class Child>
    Child *child(const char *name) const { return manualWindow()->findChild<Child *>(QString::fromLatin1(name)); }
    desktop::ManualWindow *manualWindow() const { return m_window->manual(); }
    void press(const QString &keys)
    {
        for (QAction *action : m_window->findChildren<QAction *>()) {
            if (action->shortcut() == QKeySequence(keys) && action->isEnabled())
                action->trigger();
        }
    }
    QStringList contents() const
    {
        QStringList titles;
        const auto *list = child<QListWidget>("contents");
        for (int row = 0; row < list->count(); ++row)
            titles << list->item(row)->text();
        return titles;
    }

    Bench m_bench;
    ScriptedAsk m_ask;
    std::unique_ptr<desktop::MainWindow> m_window;
};

void TstManualWindow::init()
{
    QCOMPARE(m_bench.trouble(), QString());
    m_window = std::make_unique<desktop::MainWindow>(m_ask, m_bench.kinds(), desktop::SessionMaker{m_bench.clock(), core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
    m_window->show();
}

void TstManualWindow::helpLeadsToThePageOfWhatIsShown()
{
    press(u"F1"_s);
    QCOMPARE(manualWindow()->shownPage(), u"index"_s);
    press(u"Ctrl+K"_s);
    press(u"F1"_s);
    QCOMPARE(manualWindow()->shownPage(), u"calculator"_s);
    const auto session = m_bench.another();
    const auto job = m_bench.openJob(*session);
    QVERIFY(job);
    m_window->openStore(m_bench.path());
    m_window->openJob(*job);
    auto *place = m_window->findChild<desktop::JobPlace *>();
    QVERIFY(place);
    for (const desktop::PageLine &line : desktop::pages()) {
        place->showPage(QString(line.name));
        press(u"F1"_s);
        QCOMPARE(manualWindow()->shownPage(), QString(line.manual)); // no such page would show the contents
    }
}

void TstManualWindow::wordsNarrowTheContents()
{
    press(u"F1"_s);
    const QStringList all = contents();
    QTest::keyClicks(child<QLineEdit>("search"), u"wrench batch"_s);
    QVERIFY(!contents().isEmpty() && contents().size() < all.size());
    child<QListWidget>("contents")->setCurrentRow(0);
    QVERIFY(child<QTextBrowser>("text")->toPlainText().contains(u"wrench"));
    child<QLineEdit>("search")->setText(u"nobodywrotethis"_s);
    QCOMPARE(contents(), QStringList{u"No page has all of these words."_s});
    child<QLineEdit>("search")->clear();
    QCOMPARE(contents(), all);
}

void TstManualWindow::linksLeadOnAndBack()
{
    press(u"F1"_s);
    auto *text = child<QTextBrowser>("text");
    auto *back = child<QPushButton>("back");
    QVERIFY(!back->isEnabled());
    emit text->anchorClicked(QUrl(u"strikes.md"_s));
    QCOMPARE(manualWindow()->shownPage(), u"strikes"_s);
    QVERIFY(text->toPlainText().startsWith(u"Striking"));
    QCOMPARE(child<QListWidget>("contents")->currentItem()->data(Qt::UserRole).toString(), u"strikes"_s);
    QVERIFY(back->isEnabled());
    back->click();
    QCOMPARE(manualWindow()->shownPage(), u"index"_s);
    QVERIFY(!back->isEnabled());
}

void TstManualWindow::keysAreThoseOfTheMenus()
{
    press(u"Ctrl+F1"_s);
    QCOMPARE(manualWindow()->shownPage(), u"shortcuts"_s);
    const QString text = child<QTextBrowser>("text")->toPlainText();
    int told = 0;
    for (const QAction *action : m_window->findChildren<QAction *>()) {
        if (action->shortcut().isEmpty())
            continue;
        QVERIFY2(text.contains(action->shortcut().toString(QKeySequence::NativeText)), qPrintable(action->text()));
        ++told;
    }
    QVERIFY(told > 15);
    QVERIFY(text.contains(u"Disconnect"));
}

QTEST_MAIN(TstManualWindow)
#include "tst_manual_window.moc"
