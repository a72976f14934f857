// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>
#include <QTextBlock>
#include <QTextBrowser>
#include <QWindow>

#include <algorithm>

#include "app/desktop/actions.hpp"
#include "app/desktop/manual/manual_window.hpp"
#include "app/desktop/parts/help_page.hpp"
#include "app/manual/pages.hpp"
#include "app/manual/sections.hpp"
#include "tests/app/desktop/all_screens.hpp"

using namespace Qt::StringLiterals;

/// F1 opens the section of the page that tells of what is done, where it has one.
class TstHelpSections : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void cleanup() { m_screens.leave(); }
    void everyActsSectionIsThere();
    void everyDialogsSectionIsThere();
    void opensThere_data();
    void opensThere();

private:
    bool isThere(const QString &page, const QString &section) const
    {
        const manual::Page *found = manual::findPage(m_pages, page);
        return section.isEmpty() || (found && manual::sectionsOf(*found).contains(section));
    }

    AllScreens m_screens;
    std::vector<manual::Page> m_pages;
};

void TstHelpSections::initTestCase()
{
    QCOMPARE(m_screens.trouble(), QString());
    auto pages = manual::loadPages();
    QVERIFY(pages);
    m_pages = *std::move(pages);
}

void TstHelpSections::everyActsSectionIsThere()
{
    QVERIFY(!isThere(u"measuring"_s, u"tools"_s)); // another page has one of that name
    for (const desktop::ActionLine &line : desktop::actions())
        QVERIFY2(isThere(QString(line.manual), QString(line.section)), qPrintable(QString(line.kind) + u": "_s + line.section));
}

void TstHelpSections::everyDialogsSectionIsThere()
{
    int named = 0;
    for (const AllScreens::Screen &screen : m_screens.dialogs()) {
        const QWidget *dialog = screen.show();
        QVERIFY2(dialog, qPrintable(screen.name));
        const QString section = desktop::helpSectionOf(*dialog);
        QVERIFY2(isThere(desktop::helpPageOf(*dialog), section), qPrintable(screen.name + u": "_s + section));
        named += section.isEmpty() ? 0 : 1;
        m_screens.leave();
    }
    QVERIFY(named > 20);
}

void TstHelpSections::opensThere_data()
{
    QTest::addColumn<QString>("screen");
    QTest::addColumn<QString>("top"); ///< the line at the top of what is shown
    QTest::newRow("another page") << u"sample"_s << u"A sample with all its evidence"_s;
    QTest::newRow("a section of a page") << u"act torque.applied"_s << u"Torque"_s;
    QTest::newRow("another section of the same page") << u"act bonding.measured"_s << u"Bonding"_s;
    QTest::newRow("a page without sections") << u"act entry.struck"_s << u"Striking an entry"_s;
}

void TstHelpSections::opensThere()
{
    QFETCH(QString, screen);
    const auto &dialogs = m_screens.dialogs();
    const auto at = std::find_if(dialogs.begin(), dialogs.end(), [&](const AllScreens::Screen &one) { return one.name == screen; });
    QVERIFY(at != dialogs.end());
    QWidget *dialog = at->show();
    QTest::keyClick(dialog->windowHandle(), Qt::Key_F1);
    desktop::ManualWindow *manual = m_screens.window().manual();
    QVERIFY(QTest::qWaitForWindowExposed(manual));
    manual->resize(900, 260); // low, so that the last section of a page can come to the top as well
    QCoreApplication::processEvents();
    QTest::keyClick(dialog->windowHandle(), Qt::Key_F1);
    const auto *text = manual->findChild<QTextBrowser *>(u"text"_s);
    const QTextCursor top = text->cursorForPosition({text->viewport()->width() / 3, text->fontMetrics().height()});
    QTEST(top.block().text(), "top");
}

QTEST_MAIN(TstHelpSections)
#include "tst_help_sections.moc"
