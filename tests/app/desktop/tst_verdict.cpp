// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QAction>
#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include "app/desktop/main_window.hpp"
#include "app/desktop/pages/page.hpp"
#include "app/desktop/pages/verdict/packages_dialog.hpp"
#include "app/desktop/pages/verdict/verify_dialog.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/on_screen.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;

namespace {

/// The ink of a label as it is drawn: the pixel that stands out most.
struct Ink {
    QColor colour;
    double contrast = 0; ///< against what it lies on
};

Ink inkOf(QLabel &label)
{
    const QImage drawn = label.grab().toImage();
    const QColor paper = drawn.pixelColor(drawn.width() - 1, drawn.height() - 1);
    Ink ink;
    for (int y = 0; y < drawn.height(); ++y) {
        for (int x = 0; x < drawn.width(); ++x) {
            const double contrast = desktop::contrast(drawn.pixelColor(x, y), paper);
            if (contrast > ink.contrast)
                ink = {drawn.pixelColor(x, y), contrast};
        }
    }
    return ink;
}

/// How many rows a person sees whole, without scrolling.
int rowsInSight(desktop::RowTable &table)
{
    int count = 0;
    for (int row = 0; row < table.model().rowCount(); ++row) {
        const QRect rect = table.view().visualRect(table.model().index(row, 0));
        const auto holds = [&](const QWidget &around) { // the view may itself be cut off by what it stands in
            const int top = table.view().viewport()->mapTo(&around, rect.topLeft()).y();
            return top >= 0 && top + rect.height() <= around.height();
        };
        count += holds(*table.view().viewport()) && holds(table) && holds(*table.window()) ? 1 : 0;
    }
    return count;
}

} // namespace

/// An auditor at the window: a package is exported, checked, imported, and what was altered is named.
class TestVerdict : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void init();
    void cleanup();
    void storeHolds();
    void packageHolds();
    void knownHashIsAskedFor();
    void hashThatIsNoneIsRefused();
    void alteredPackageIsNamed();
    void packageNeedsNoStore();
    void importedPackageIsListed();
    void verdictIsSaved();
    void badIsToldFromGood_data();
    void badIsToldFromGood();
    void rowsAreInSight();

private:
    desktop::VerifyDialog *dialog() const { return m_window->findChild<desktop::VerifyDialog *>(); }
    QString sentence() const { return named<QLabel>(*dialog(), u"verdict"_s)->text(); }
    void exportPackage();

    Bench m_bench;
    std::optional<core::LedgerId> m_job;
    ScriptedAsk m_ask;
    std::unique_ptr<desktop::MainWindow> m_window;
    QString m_package;
};

void TestVerdict::initTestCase()
{
    QCOMPARE(m_bench.trouble(), QString());
    const auto session = m_bench.another();
    m_job = m_bench.openJob(*session, {{u"work_order"_s, u"WO-1"_s}});
    QVERIFY2(m_job, qPrintable(m_bench.trouble()));
    m_package = m_bench.file(u"record.zip"_s, {});
    init();
    exportPackage();
    QVERIFY2(QFile::exists(m_package), qPrintable(m_ask.told.join(u'\n')));
    QVERIFY2(m_ask.told.value(0).contains(u"NOT CLOSED"_s), qPrintable(m_ask.told.value(0)));
    cleanup();
}

void TestVerdict::init()
{
    m_ask.told.clear();
    m_window = std::make_unique<desktop::MainWindow>(m_ask, m_bench.kinds(), desktop::SessionMaker{m_bench.clock(), core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
    m_window->resize(1366, 768);
    m_window->show();
    m_window->openStore(m_bench.path());
    m_window->openJob(*m_job);
}

void TestVerdict::cleanup() { m_window.reset(); }

void TestVerdict::exportPackage()
{
    m_ask.savePath = m_package;
    for (QAction *action : m_window->findChildren<QAction *>()) {
        if (action->shortcut() == QKeySequence(u"Ctrl+E"_s))
            action->trigger();
    }
}

void TestVerdict::storeHolds()
{
    for (QAction *action : m_window->findChildren<QAction *>()) {
        if (action->text() == u"Record"_s || action->text() == u"&Record"_s)
            action->trigger();
    }
    auto *verify = m_window->findChild<QPushButton *>(u"verify"_s);
    QVERIFY(verify);
    verify->click();
    QVERIFY2(sentence().startsWith(u"✓ It holds"_s), qPrintable(sentence()));
    QCOMPARE(named<desktop::RowTable>(*dialog(), u"ledgers"_s)->model().rowCount(), 2);
    QVERIFY(!named<QPushButton>(*dialog(), u"import"_s)->isVisible());
}

void TestVerdict::packageHolds()
{
    m_window->openStore(m_package); // as if it were opened, or dropped on the window
    QVERIFY(dialog());
    QVERIFY2(sentence().startsWith(u"✓ It holds"_s), qPrintable(sentence()));
    QVERIFY2(named<QLabel>(*dialog(), u"about"_s)->text().contains(u"WO-1"_s), "what it is about");
    QVERIFY2(named<QLabel>(*dialog(), u"about"_s)->text().endsWith(u"NOT CLOSED"_s), "a draft says so");
    QVERIFY2(named<QLabel>(*dialog(), u"limits"_s)->text().contains(u"which root"_s), "what nobody gave to compare with");
}

void TestVerdict::knownHashIsAskedFor()
{
    m_window->openPackage(m_package);
    auto &ledgers = named<desktop::RowTable>(*dialog(), u"ledgers"_s)->model();
    const QString head = ledgers.index(1, 3).data().toString();
    // As copied from paper: in capitals, with blanks between.
    named<QLineEdit>(*dialog(), u"head"_s)->setText(head.left(32).toUpper() + u' ' + head.mid(32));
    named<QPushButton>(*dialog(), u"again"_s)->click();
    QVERIFY2(sentence().startsWith(u"✓"_s), qPrintable(sentence()));
    named<QLineEdit>(*dialog(), u"head"_s)->setText(QString(64, u'0'));
    named<QPushButton>(*dialog(), u"again"_s)->click();
    QVERIFY2(sentence().startsWith(u"✗ It does not hold"_s), qPrintable(sentence()));
    QCOMPARE(named<desktop::RowTable>(*dialog(), u"faults"_s)->model().index(0, 1).data().toString(), u"ledger.missing"_s);
    QVERIFY(!named<QPushButton>(*dialog(), u"import"_s)->isEnabled());
}

void TestVerdict::hashThatIsNoneIsRefused()
{
    m_window->openPackage(m_package);
    named<QLineEdit>(*dialog(), u"root"_s)->setText(u"abc"_s);
    named<QPushButton>(*dialog(), u"again"_s)->click();
    QCOMPARE(m_ask.told.size(), 1);
    QVERIFY2(m_ask.told.front().contains(u"64 digits"_s), qPrintable(m_ask.told.front()));
}

void TestVerdict::alteredPackageIsNamed()
{
    QFile file(m_package);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QByteArray bytes = file.readAll();
    bytes[bytes.size() / 3] = static_cast<char>(bytes[bytes.size() / 3] ^ 4);
    m_window->openPackage(m_bench.file(u"altered.zip"_s, bytes));
    QVERIFY2(sentence().startsWith(u"✗ It does not hold"_s), qPrintable(sentence()));
    QVERIFY(named<desktop::RowTable>(*dialog(), u"faults"_s)->model().rowCount() > 0);
}

void TestVerdict::packageNeedsNoStore()
{
    m_window = std::make_unique<desktop::MainWindow>(m_ask, m_bench.kinds(), desktop::SessionMaker{m_bench.clock(), core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
    m_window->show();
    m_ask.openPath = m_package;
    named<QPushButton>(*m_window, u"verifyPackage"_s)->click();
    QVERIFY(dialog());
    QVERIFY2(sentence().startsWith(u"✓"_s), qPrintable(sentence()));
    QVERIFY(!named<QPushButton>(*dialog(), u"import"_s)->isVisible());
}

/// The package is the store's own job up to where it is: refused. After the job went on, it is an earlier state of it, and taken.
void TestVerdict::importedPackageIsListed()
{
    m_window->openPackage(m_package);
    named<QPushButton>(*dialog(), u"import"_s)->click();
    QVERIFY2(m_ask.told.value(0).contains(u"holds this job itself"_s), qPrintable(m_ask.told.value(0)));
    const auto session = m_bench.another();
    QCOMPARE(Bench::say(*session, *m_job, u"ana"_s, u"interface.listed"_s, u"F9"_s, {{u"name"_s, u"Fuel feed line"_s}, {u"kind"_s, u"fuel_line"_s}, {u"zone"_s, u"Right"_s}}), QString());
    named<QPushButton>(*dialog(), u"import"_s)->click();
    QVERIFY2(m_ask.told.value(1).contains(u"It is an earlier state of this store's own job."_s), qPrintable(m_ask.told.value(1)));
    dialog()->close();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    for (QAction *action : m_window->findChildren<QAction *>()) {
        if (action->text() == u"I&mported packages …"_s)
            action->trigger();
    }
    auto *list = m_window->findChild<desktop::PackagesDialog *>();
    QVERIFY(list);
    QCOMPARE(named<desktop::RowTable>(*list, u"packages"_s)->model().rowCount(), 1);
    QVERIFY(!named<QPushButton>(*list, u"save"_s)->isEnabled());
    named<desktop::RowTable>(*list, u"packages"_s)->choose(u"1"_s);
    m_ask.savePath = m_bench.file(u"saved.zip"_s, {});
    named<QPushButton>(*list, u"save"_s)->click();
    QFile saved(*m_ask.savePath);
    QFile original(m_package);
    QVERIFY(saved.open(QIODevice::ReadOnly) && original.open(QIODevice::ReadOnly));
    QVERIFY(saved.readAll() == original.readAll());
    named<QPushButton>(*list, u"verify"_s)->click();
    QVERIFY2(named<QLabel>(*list->findChild<desktop::VerifyDialog *>(), u"verdict"_s)->text().startsWith(u"✓"_s), "verified where it is kept");
}

void TestVerdict::verdictIsSaved()
{
    m_window->openPackage(m_package);
    m_ask.savePath = m_bench.file(u"verdict.txt"_s, {});
    named<QPushButton>(*dialog(), u"write"_s)->click();
    QFile file(*m_ask.savePath);
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QString text = QString::fromUtf8(file.readAll());
    QVERIFY2(text.contains(u"It holds"_s) && text.contains(u"WO-1"_s), qPrintable(text));
}

/// By its sign, its words and its colour. Contrast: WCAG 2.2, 1.4.3 asks for 4.5:1 of text; that colour is not the only means: 1.4.1.
void TestVerdict::badIsToldFromGood_data()
{
    QTest::addColumn<bool>("isDark");
    QTest::addRow("light") << false;
    QTest::addRow("dark") << true;
}

void TestVerdict::badIsToldFromGood()
{
    QFETCH(bool, isDark);
    desktop::applyAppearance(*qApp, isDark ? desktop::Appearance::Dark : desktop::Appearance::Light);
    m_window->openPackage(m_package);
    const QString good = sentence();
    const Ink goodInk = inkOf(*named<QLabel>(*dialog(), u"verdict"_s));
    named<QLineEdit>(*dialog(), u"head"_s)->setText(QString(64, u'0'));
    named<QPushButton>(*dialog(), u"again"_s)->click();
    const QString bad = sentence();
    const Ink badInk = inkOf(*named<QLabel>(*dialog(), u"verdict"_s));
    QVERIFY(good.startsWith(u"✓ It holds"_s) && bad.startsWith(u"✗ It does not hold"_s));
    QVERIFY2(goodInk.contrast >= 4.5, qPrintable(QString::number(goodInk.contrast)));
    QVERIFY2(badInk.contrast >= 4.5, qPrintable(QString::number(badInk.contrast)));
    QVERIFY2(goodInk.colour != badInk.colour, qPrintable(badInk.colour.name()));
    // And back: the colour belongs to the verdict, not to the window.
    named<QLineEdit>(*dialog(), u"head"_s)->clear();
    named<QPushButton>(*dialog(), u"again"_s)->click();
    QCOMPARE(inkOf(*named<QLabel>(*dialog(), u"verdict"_s)).colour, goodInk.colour);
    desktop::applyAppearance(*qApp, desktop::Appearance::Light);
}

/// A verdict with several faults is not read through a slit: both ledgers and four faults stand there at once.
void TestVerdict::rowsAreInSight()
{
    QFile file(m_package);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QByteArray bytes = file.readAll();
    // The lists at the end of the file name what was renamed here, so each of them is a fault of its own.
    for (const QByteArray &name : {QByteArray("VERIFY.txt"), QByteArray("verify.py"), QByteArray("interfaces.csv"), QByteArray("record.pdf")})
        bytes.replace("data/" + name, "dbta/" + name);
    m_window->openPackage(m_bench.file(u"renamed.zip"_s, bytes));
    auto &faults = *named<desktop::RowTable>(*dialog(), u"faults"_s);
    auto &ledgers = *named<desktop::RowTable>(*dialog(), u"ledgers"_s);
    QVERIFY2(faults.model().rowCount() >= 4, qPrintable(sentence()));
    QCOMPARE(ledgers.model().rowCount(), 2);
    QTRY_VERIFY2(rowsInSight(ledgers) == 2, qPrintable(QString::number(rowsInSight(ledgers))));
    QTRY_VERIFY2(rowsInSight(faults) >= 4, qPrintable(QString::number(rowsInSight(faults))));
    QVERIFY(dialog()->height() <= 768);
}

QTEST_MAIN(TestVerdict)
#include "tst_verdict.moc"
