// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QAction>
#include <QFile>
#include <QPrinter>
#include <QTest>

#include "app/desktop/flows/sheet_export.hpp"
#include "app/desktop/main_window.hpp"
#include "tests/app/cli/raw_sql.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;

namespace {

/// Chooses the last that is offered: the printer.
class OnThePrinter : public ScriptedAsk {
public:
    std::optional<QString> oneOf(const QString &, const QString &, const QStringList &choices) override { return choices.back(); }
};

} // namespace

/// One page for the wall or for the next shift, from the window.
class TestSheetExport : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup();
    void pdfIsWritten_data();
    void pdfIsWritten();
    void pageIsPrinted();
    void nothingIsWrittenWhenNothingIsChosen();
    void diskSaysNo();
    void damagedJobIsNotPutOnTheWall();
    void menuLeadsToBoth();

private:
    bool isPdf(const QString &path) const
    {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) && file.read(5) == "%PDF-";
    }
    QString at(const QString &name) const { return m_folder->filePath(name); }
    std::unique_ptr<Bench> m_bench;
    std::unique_ptr<QTemporaryDir> m_folder;
    std::unique_ptr<session::Session> m_session;
};

void TestSheetExport::init()
{
    m_folder = std::make_unique<QTemporaryDir>();
    m_bench = std::make_unique<Bench>();
    QCOMPARE(m_bench->trouble(), QString());
    m_session = m_bench->another();
    QVERIFY(m_session);
    const auto job = m_bench->openJob(*m_session);
    QVERIFY(job);
    QVERIFY(m_session->refresh());
    QVERIFY(m_session->openJob(*job));
}

void TestSheetExport::cleanup()
{
    m_session.reset();
    m_bench.reset();
}

void TestSheetExport::pdfIsWritten_data()
{
    QTest::addColumn<bool>("wall");
    QTest::addRow("wall") << true;
    QTest::addRow("handover") << false;
}

void TestSheetExport::pdfIsWritten()
{
    QFETCH(bool, wall);
    ScriptedAsk ask;
    ask.savePath = at(u"sheet.pdf"_s);
    desktop::exportSheet(*m_session, wall ? core::SheetSort::Wall : core::SheetSort::Handover, ask);
    QVERIFY(isPdf(*ask.savePath));
    QCOMPARE(ask.told.size(), 1);
    QVERIFY2(ask.told.front().startsWith(u"The sheet was written: "_s + *ask.savePath) && ask.told.front().contains(u"is not the record"_s), qPrintable(ask.told.front()));
}

void TestSheetExport::pageIsPrinted()
{
    OnThePrinter ask;
    ask.printPath = at(u"printed.pdf"_s);
    desktop::exportSheet(*m_session, core::SheetSort::Wall, ask);
    QVERIFY(isPdf(*ask.printPath));
    QCOMPARE(ask.told, QStringList());
}

void TestSheetExport::nothingIsWrittenWhenNothingIsChosen()
{
    ScriptedAsk ask; // no path
    desktop::exportSheet(*m_session, core::SheetSort::Wall, ask);
    QCOMPARE(ask.told, QStringList());
    OnThePrinter noPrinter;
    desktop::exportSheet(*m_session, core::SheetSort::Wall, noPrinter);
    QCOMPARE(noPrinter.told, QStringList());
}

void TestSheetExport::diskSaysNo()
{
    ScriptedAsk ask;
    ask.savePath = at(u"no/such/folder/sheet.pdf"_s);
    desktop::exportSheet(*m_session, core::SheetSort::Handover, ask);
    QCOMPARE(ask.told.size(), 1);
    QVERIFY2(ask.told.front().startsWith(u"The sheet was not written: "_s), qPrintable(ask.told.front()));
}

/// What comes after the damage would be missing on the sheet, and nobody would see that.
void TestSheetExport::damagedJobIsNotPutOnTheWall()
{
    QCOMPARE(tamper(m_bench->path(), u"UPDATE entries SET hash = randomblob(32) WHERE seq = 1 AND ledger = (SELECT id FROM ledgers WHERE is_register = 0)"_s), QString());
    const auto reader = m_bench->another();
    QVERIFY(reader);
    QVERIFY(reader->openJob(*m_session->job()));
    QVERIFY(reader->trouble());
    ScriptedAsk ask;
    ask.savePath = at(u"damaged.pdf"_s);
    desktop::exportSheet(*reader, core::SheetSort::Wall, ask);
    QVERIFY(!QFile::exists(*ask.savePath));
    QCOMPARE(ask.told.size(), 1);
    QVERIFY2(ask.told.front().startsWith(u"The sheet was not written: "_s), qPrintable(ask.told.front()));
}

/// They are of a job: without one they are greyed.
void TestSheetExport::menuLeadsToBoth()
{
    ScriptedAsk ask;
    ask.savePath = at(u"menu.pdf"_s);
    desktop::MainWindow window(ask, m_bench->kinds(), {m_bench->clock(), core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
    QList<QAction *> found;
    for (QAction *action : window.findChildren<QAction *>()) {
        if (action->text().contains(u"all sheet"_s) || action->text().contains(u"andover sheet"_s))
            found << action;
    }
    QCOMPARE(found.size(), 2);
    window.openStore(m_bench->path());
    for (QAction *action : found)
        QVERIFY(!action->isEnabled());
    window.openJob(*m_session->job());
    for (QAction *action : found) {
        QFile::remove(*ask.savePath);
        QVERIFY(action->isEnabled());
        action->trigger();
        QVERIFY(isPdf(*ask.savePath));
    }
}

QTEST_MAIN(TestSheetExport)
#include "tst_sheet_export.moc"
