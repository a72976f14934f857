// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QDirIterator>
#include <QFile>
#include <QLineEdit>
#include <QMap>
#include <QRegularExpression>
#include <QSet>
#include <QTest>
#include <QWindow>

#include <algorithm>

#include "app/desktop/actions.hpp"
#include "app/desktop/manual/manual_window.hpp"
#include "app/desktop/parts/help_page.hpp"
#include "app/manual/pages.hpp"
#include "tests/app/desktop/all_screens.hpp"

using namespace Qt::StringLiterals;

/// F1 in a dialog opens the page of the manual that tells of it, and it can be read while the dialog waits.
class TstHelpInDialogs : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { QCOMPARE(m_screens.trouble(), QString()); }
    void cleanup();
    void leadsToItsPage_data();
    void leadsToItsPage();
    void everySortOfDialogIsAmongThem();
    void everyActHasAPage();
    void isReadBesideTheSheet();

private:
    AllScreens m_screens;
};

namespace {

void press(QWidget &window, Qt::Key key) { QTest::keyClick(window.windowHandle(), key); } // as the system does: what is blocked gets nothing

} // namespace

void TstHelpInDialogs::cleanup()
{
    m_screens.leave();
    if (m_screens.window().manual())
        m_screens.window().manual()->hide();
}

void TstHelpInDialogs::leadsToItsPage_data()
{
    QTest::addColumn<AllScreens::Screen>("screen");
    QTest::addColumn<QString>("page"); // of those where another one would be wrong at first sight
    const QMap<QString, QString> known{{u"act torque.applied"_s, u"measuring"_s}, {u"act interface.reconnected"_s, u"start_technician"_s},
        {u"act interface.disturbed"_s, u"conditions"_s}, {u"act walkround.free"_s, u"hold_points"_s}, {u"act tool.issued"_s, u"parts_and_tools"_s},
        {u"act inspection.accepted"_s, u"start_inspector"_s}, {u"act photo.attached"_s, u"photos"_s}, {u"act entry.struck"_s, u"strikes"_s},
        {u"act job.revised"_s, u"changes"_s}, {u"act interface.sent"_s, u"linked_jobs"_s}, {u"verify"_s, u"package"_s}, {u"sample"_s, u"auditing"_s},
        {u"progressAsked"_s, u"progress"_s}, {u"look-up table"_s, u"tables"_s}, {u"a list with faults"_s, u"interface_list"_s}, {u"stop the key"_s, u"threats"_s}};
    qsizetype told = 0;
    for (const AllScreens::Screen &screen : m_screens.dialogs()) {
        QTest::addRow("%s", qPrintable(screen.name)) << screen << known.value(screen.name);
        told += known.contains(screen.name) ? 1 : 0;
    }
    QCOMPARE(told, known.size());
}

void TstHelpInDialogs::leadsToItsPage()
{
    QFETCH(AllScreens::Screen, screen);
    QFETCH(QString, page);
    QWidget *dialog = screen.show();
    QVERIFY(dialog && dialog->isModal());
    const QString named = desktop::helpPageOf(*dialog);
    QVERIFY(!named.isEmpty());
    press(*dialog, Qt::Key_F1);
    QVERIFY(m_screens.window().manual() && m_screens.window().manual()->isVisible());
    QCOMPARE(m_screens.window().manual()->shownPage(), named); // no such page would show the contents
    if (!page.isEmpty())
        QCOMPARE(named, page);
    QVERIFY(dialog->isVisible());
}

/// Or the walk above would pass over one that was added since.
void TstHelpInDialogs::everySortOfDialogIsAmongThem()
{
    QSet<QString> shown;
    for (const AllScreens::Screen &screen : m_screens.dialogs()) {
        shown.insert(QString::fromLatin1(screen.show()->metaObject()->className()).section(u"::"_s, -1));
        m_screens.leave();
    }
    static const QRegularExpression declared(u"^class (\\w+) : public QDialog"_s, QRegularExpression::MultilineOption);
    int met = 0;
    for (QDirIterator at(qEnvironmentVariable("REMATE_SOURCE_DIR") + u"/app/desktop"_s, {u"*.hpp"_s}, QDir::Files, QDirIterator::Subdirectories); at.hasNext();) {
        QFile file(at.next());
        QVERIFY(file.open(QIODevice::ReadOnly));
        const auto found = declared.match(QString::fromUtf8(file.readAll()));
        if (!found.hasMatch() || found.captured(1) == u"ManualWindow")
            continue;
        ++met;
        QVERIFY2(shown.contains(found.captured(1)), qPrintable(found.captured(1)));
    }
    QVERIFY(met > 8);
}

/// Those whose sheet nobody can open as the demo stands have one, too.
void TstHelpInDialogs::everyActHasAPage()
{
    const auto pages = manual::loadPages();
    QVERIFY(pages);
    for (const desktop::ActionLine &line : desktop::actions())
        QVERIFY2(manual::findPage(*pages, QString(line.manual)), line.kind.data());
}

/// A window that a sheet blocks takes no key.
void TstHelpInDialogs::isReadBesideTheSheet()
{
    const auto &dialogs = m_screens.dialogs();
    const auto at = std::find_if(dialogs.begin(), dialogs.end(), [](const AllScreens::Screen &screen) { return screen.name == u"act torque.applied"; });
    QVERIFY(at != dialogs.end());
    QWidget *sheet = at->show();
    press(*sheet, Qt::Key_F1);
    desktop::ManualWindow *manual = m_screens.window().manual();
    QVERIFY(QTest::qWaitForWindowExposed(manual));
    auto *words = manual->findChild<QLineEdit *>(u"search"_s);
    words->clear();
    words->setFocus();
    press(*manual, Qt::Key_W);
    QCOMPARE(words->text(), u"w"_s);
    // The nearest that must not: the window below the sheet.
    auto *list = m_screens.window().findChild<QLineEdit *>(u"filter"_s);
    list->clear();
    list->setFocus();
    press(m_screens.window(), Qt::Key_W);
    QCOMPARE(list->text(), QString());
    QVERIFY(sheet->isVisible());
}

QTEST_MAIN(TstHelpInDialogs)
#include "tst_help_in_dialogs.moc"
