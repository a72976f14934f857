// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCheckBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTableWidget>
#include <QTest>

#include "app/desktop/pages/parts_and_tools/parts_and_tools_page.hpp"
#include "app/desktop/parts/item_card.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "tests/app/desktop/on_screen.hpp"
#include "tests/app/desktop/sheet_bench.hpp"

using namespace Qt::StringLiterals;
using core::json::Array;
using core::json::Object;

/// Hardware, tags and tools as a person signs them: the parts stand there, and what has to be counted is typed or ticked.
class TestPartsAndTools : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup();
    void hardwareIsCountedAsItComesOff();
    void hardwareGoesBackOnEven();
    void cellsAreTypedInto();
    void theKeyboardFindsOutOfTheTable();
    void theCardTellsOfTheHardware();
    void toolGoesOutIsCountedAndComesBack();
    void whereNoneIsOutNoneIsTicked();
    void tagsAreCountedBack();
    void thePageShowsWhatIsOut();

private:
    void begin(QLatin1String kind, const char *id = nullptr, const std::optional<QString> &subject = {});
    void type(const QString &field, const QString &text) { typeInto(*m_sheet, field, text); }
    QTableWidget *lines(const QString &field) const { return named<QWidget>(*m_sheet, field)->findChild<QTableWidget *>(); }
    QString problem() const { return m_on->problem(); }
    bool maySign() const { return m_on->maySign(); }
    /// Signs as Ana; the last entry.
    core::Statement sign();
    const core::JobState &job() const { return *m_on->feed().state(); }

    std::unique_ptr<Bench> m_bench;
    std::unique_ptr<SheetBench> m_on;
    desktop::SignSheet *m_sheet = nullptr;
};

void TestPartsAndTools::init()
{
    m_bench = std::make_unique<Bench>();
    QCOMPARE(m_bench->trouble(), QString());
    const auto other = m_bench->another();
    QVERIFY(other);
    const auto ledger = m_bench->openJob(*other);
    QVERIFY2(ledger, qPrintable(m_bench->trouble()));
    const Array hardware{Object{{u"part"_s, u"BOLT-6"_s}, {u"quantity"_s, 4}}, Object{{u"part"_s, u"SEAL-28"_s}, {u"quantity"_s, 1}, {u"new"_s, true}}};
    QCOMPARE(Bench::say(*other, *ledger, u"ana"_s, u"interface.listed"_s, u"D1"_s, {{u"name"_s, u"Duct"_s}, {u"kind"_s, u"duct"_s}, {u"zone"_s, u"Left"_s}, {u"requirements"_s, core::json::arrayOf({u"hardware"_s})}, {u"hardware"_s, hardware}}), QString());
    m_on = std::make_unique<SheetBench>(*m_bench, ledger);
}

void TestPartsAndTools::cleanup()
{
    m_on.reset();
    m_bench.reset();
}

void TestPartsAndTools::begin(QLatin1String kind, const char *id, const std::optional<QString> &subject)
{
    QTRY_VERIFY(m_on->sheet() == nullptr); // the one before is gone
    m_on->signing().begin(desktop::actionFor(kind), id ? std::vector{item(id)} : std::vector<core::InterfaceId>(), subject);
    QTRY_VERIFY((m_sheet = m_on->sheet()) != nullptr);
    type(u"person"_s, u"ana"_s);
}

core::Statement TestPartsAndTools::sign()
{
    if (const QString no = m_on->sign(u"ana"_s); !no.isEmpty())
        qWarning() << no;
    return m_on->feed().said().back();
}

void TestPartsAndTools::hardwareIsCountedAsItComesOff()
{
    begin("interface.disconnected"_L1, "D1");
    QTableWidget *table = lines(u"hardware_removed"_s);
    QCOMPARE(table->rowCount(), 2);
    QCOMPARE(table->item(0, 0)->text(), u"BOLT-6"_s);
    QCOMPARE(table->item(0, 1)->text(), QString()); // counted, not taken over
    QCOMPARE(table->item(1, 0)->text(), u"SEAL-28"_s);
    table->item(0, 1)->setText(u"3"_s);
    QVERIFY(!maySign()); // the seal was not counted
    QVERIFY2(problem().contains(u"lines of"_s), qPrintable(problem()));
    table->item(1, 1)->setText(u"one"_s);
    QVERIFY(!maySign());
    table->item(1, 1)->setText(u"1"_s);
    QCOMPARE(problem(), QString());
    const core::Statement said = sign();
    QCOMPARE(said.kind, u"interface.disconnected"_s);
    QCOMPARE(core::hardwareRemovedIn(said.body), (std::vector<core::HardwareRemoved>{{u"BOLT-6"_s, 3}, {u"SEAL-28"_s, 1}}));
}

void TestPartsAndTools::hardwareGoesBackOnEven()
{
    hardwareIsCountedAsItComesOff();
    begin("interface.reconnected"_L1, "D1");
    type(u"tag_recovered"_s, u"1"_s);
    QTableWidget *table = lines(u"hardware"_s);
    QCOMPARE(table->rowCount(), 2);
    QCOMPARE(table->columnCount(), 5);
    table->item(1, 2)->setText(u"1"_s); // renewed
    table->item(1, 3)->setText(u"1"_s); // scrapped
    table->item(1, 4)->setText(u"L-7"_s);
    table->item(0, 1)->setText(u"4"_s); // of three that came off
    QVERIFY2(problem().contains(u"3 × BOLT-6 came off, and 4 are said to be reused"_s), qPrintable(problem()));
    table->item(0, 1)->setText(u"3"_s);
    QVERIFY2(problem().contains(u"4 × BOLT-6 are required; 3 reused and 0 renewed make 3. 1 too few."_s), qPrintable(problem()));
    QVERIFY(!maySign());
    named<QPushButton>(*m_sheet, u"addRow"_s)->click();
    QCOMPARE(table->rowCount(), 3);
    table->item(2, 0)->setText(u"BOLT-6"_s);
    table->item(2, 2)->setText(u"1"_s);
    QVERIFY2(problem().contains(u"give their batch"_s), qPrintable(problem()));
    table->item(2, 4)->setText(u"L-8"_s);
    QCOMPARE(problem(), QString());
    sign();
    QVERIFY(job().item(item("D1"))->restoration);
    QCOMPARE(job().item(item("D1"))->restoration->hardware.size(), 3U);
}

/// Keyboard first: typing into a cell begins it, Tab goes on; an empty line is no line, and one too many is removed.
void TestPartsAndTools::cellsAreTypedInto()
{
    begin("interface.disconnected"_L1, "D1");
    QTableWidget *table = lines(u"hardware_removed"_s);
    QCOMPARE(table->currentRow(), 0);
    QCOMPARE(table->currentColumn(), 1); // the first that is empty
    m_sheet->activateWindow();
    table->setFocus();
    QTest::keyClick(table, Qt::Key_4);
    auto *cell = table->findChild<QLineEdit *>();
    QVERIFY(cell);
    QTest::keyClick(cell, Qt::Key_Tab);
    QCOMPARE(table->item(0, 1)->text(), u"4"_s);
    QCOMPARE(table->currentRow(), 1);
    table->item(1, 1)->setText(u"1"_s);
    QCOMPARE(problem(), QString());
    named<QPushButton>(*m_sheet, u"addRow"_s)->click();
    QCOMPARE(problem(), QString());
    table->item(2, 0)->setText(u"WASHER-1"_s);
    QVERIFY(!problem().isEmpty());
    table->setCurrentCell(2, 0);
    named<QPushButton>(*m_sheet, u"removeRow"_s)->click();
    QCOMPARE(table->rowCount(), 2);
    QCOMPARE(problem(), QString());
    auto *remove = named<QPushButton>(*m_sheet, u"removeRow"_s);
    QVERIFY(remove->isEnabled() && !remove->toolTip().isEmpty());
    for (int row = 2; row > 0; --row) {
        table->setCurrentCell(0, 0);
        remove->click();
    }
    QVERIFY(!remove->isEnabled());
    QCOMPARE(remove->toolTip(), u"There is no row to remove."_s);
}

/// Neither Tab nor a scanner that ends its burst with Return goes round in the table for ever.
void TestPartsAndTools::theKeyboardFindsOutOfTheTable()
{
    begin("interface.disconnected"_L1, "D1");
    QCoreApplication::processEvents(); // the sheet has given the keyboard to its first gap
    QTableWidget *table = lines(u"hardware_removed"_s);
    m_sheet->activateWindow();
    table->setFocus();
    table->setCurrentCell(0, 0);
    for (int cell = 1; cell < 4; ++cell) {
        QTest::keyClick(table, Qt::Key_Tab);
        QCOMPARE(m_sheet->focusWidget(), table);
        QCOMPARE(table->currentRow() * 2 + table->currentColumn(), cell);
    }
    QTest::keyClick(table, Qt::Key_Tab);
    QVERIFY(m_sheet->focusWidget() != table);
    table->setFocus();
    table->setCurrentCell(0, 0);
    QTest::keyClick(table, Qt::Key_Backtab);
    QVERIFY(m_sheet->focusWidget() != table);

    // While a cell is typed into.
    table->setFocus();
    table->setCurrentCell(1, 1);
    QTest::keyClick(table, Qt::Key_1);
    QTest::keyClick(table->findChild<QLineEdit *>(), Qt::Key_Tab);
    QCOMPARE(table->item(1, 1)->text(), u"1"_s);
    QVERIFY(m_sheet->focusWidget() != table);

    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); // the editor of that cell goes
    table->setFocus();
    table->setCurrentCell(0, 1);
    QTest::keyClick(table, Qt::Key_4);
    QTest::keyClick(table->findChild<QLineEdit *>(), Qt::Key_Return);
    QTRY_COMPARE(table->currentRow(), 1);
    QCOMPARE(table->item(0, 1)->text(), u"4"_s);
    QCOMPARE(m_sheet->focusWidget(), table);
    table->setCurrentCell(1, 1);
    QTest::keyClick(table, Qt::Key_Return);
    QVERIFY(m_sheet->focusWidget() != table);
    QVERIFY(m_sheet->isVisible());
}

void TestPartsAndTools::theCardTellsOfTheHardware()
{
    const auto readOn = [this] {
        desktop::ItemCard card(m_on->tools(), {});
        card.show({item("D1")});
        return ::readOn(card);
    };
    QVERIFY2(readOn().contains(u"4 × BOLT-6, 1 × SEAL-28 (always new)"_s), qPrintable(readOn()));
    hardwareGoesBackOnEven();
    QVERIFY2(readOn().contains(u"came off: 3 × BOLT-6, 1 × SEAL-28"_s), qPrintable(readOn()));
    QVERIFY2(readOn().contains(u"SEAL-28: 1 renewed of L-7, 1 scrapped"_s), qPrintable(readOn()));
}

void TestPartsAndTools::toolGoesOutIsCountedAndComesBack()
{
    begin("tool.issued"_L1);
    type(u"sort"_s, u"hand tool"_s);
    type(u"name"_s, u"Ratchet"_s);
    QVERIFY(!maySign());
    type(u"newId"_s, u"TW1"_s);
    QVERIFY2(problem().contains(u"measuring tool of the register"_s), qPrintable(problem()));
    type(u"newId"_s, u"R-14"_s);
    QCOMPARE(problem(), QString());
    QCOMPARE(sign().subject, std::optional(u"R-14"_s));

    begin("tool.counted"_L1);
    QVERIFY(!maySign());
    auto *tick = named<QCheckBox>(*m_sheet, u"statement.0"_s);
    QCOMPARE(tick->accessibleName(), u"R-14"_s);
    QVERIFY(!tick->isChecked());
    tick->setChecked(true);
    QCOMPARE(problem(), QString());
    QCOMPARE(sign().body.texts(u"tools"), std::vector{u"R-14"_s});

    begin("tool.missing"_L1, nullptr, u"R-14"_s);
    type(u"description"_s, u"Last seen on the platform"_s);
    sign();
    QCOMPARE(job().findings.size(), 1U);
    begin("tool.returned"_L1, nullptr, u"R-14"_s);
    sign();
    QVERIFY(job().tools.out().empty());
}

void TestPartsAndTools::whereNoneIsOutNoneIsTicked()
{
    begin("tool.counted"_L1);
    QVERIFY(!m_sheet->findChild<QCheckBox *>(u"statement.0"_s));
    QCOMPARE(problem(), QString());
    QVERIFY(sign().body.texts(u"tools").empty());
}

void TestPartsAndTools::tagsAreCountedBack()
{
    begin("tags.issued"_L1);
    type(u"first"_s, u"11"_s);
    type(u"last"_s, u"20"_s);
    sign();
    begin("interface.disconnected"_L1, "D1");
    QCOMPARE(named<QWidget>(*m_sheet, u"tag"_s)->findChild<QLineEdit *>()->text(), u"11"_s);
    m_sheet->reject();
    begin("tags.returned"_L1, nullptr, u"11 – 20"_s);
    type(u"counted"_s, u"9"_s);
    QVERIFY2(problem().contains(u"9 are in the hand instead of 10"_s), qPrintable(problem()));
    type(u"counted"_s, u"10"_s);
    QCOMPARE(problem(), QString());
    sign();
    QVERIFY(job().tags.blocks.front().returned);
}

void TestPartsAndTools::thePageShowsWhatIsOut()
{
    hardwareIsCountedAsItComesOff();
    begin("tool.issued"_L1);
    type(u"sort"_s, u"kit"_s);
    type(u"name"_s, u"Sockets"_s);
    type(u"newId"_s, u"KIT-2"_s);
    QVERIFY2(problem().contains(u"number of its pieces"_s), qPrintable(problem()));
    type(u"pieces"_s, u"12"_s);
    sign();
    const desktop::PageTools tools = m_on->tools();
    QCOMPARE(desktop::PartsAndToolsPage::waiting(tools), 1);
    desktop::PartsAndToolsPage page(tools);
    page.resize(1200, 700);
    page.show();
    const auto text = [&](const QString &table, int row, int column) {
        auto &model = named<desktop::RowTable>(page, table)->model();
        return model.index(row, column).data().toString();
    };
    QCOMPARE(page.focusProxy(), &named<desktop::RowTable>(page, u"tools"_s)->view());
    page.chooseRow(u"none"_s);
    page.findChild<QTabWidget *>()->setCurrentIndex(2);
    QCOMPARE(page.focusProxy(), &named<desktop::RowTable>(page, u"hardware"_s)->view());
    page.chooseRow(u"KIT-2"_s);
    QCOMPARE(page.findChild<QTabWidget *>()->currentIndex(), 0);
    QCOMPARE(text(u"tools"_s, 0, 0), u"KIT-2"_s);
    QCOMPARE(text(u"tools"_s, 0, 1), u"out"_s);
    QCOMPARE(text(u"tools"_s, 0, 4), u"12"_s);
    QCOMPARE(text(u"hardware"_s, 0, 1), u"BOLT-6"_s);
    QCOMPARE(text(u"hardware"_s, 0, 2), u"4"_s);
    QCOMPARE(text(u"hardware"_s, 0, 3), u"3"_s);
    QCOMPARE(text(u"hardware"_s, 0, 7), u"3 to account for"_s);
    QCOMPARE(text(u"hardware"_s, 1, 1), u"SEAL-28, always new"_s);
    named<desktop::RowTable>(page, u"tools"_s)->choose(u"KIT-2"_s);
    auto *back = named<QPushButton>(page, u"tool.returned"_s);
    QVERIFY(back->isVisibleTo(&page));
    QTRY_VERIFY(m_on->sheet() == nullptr);
    back->click();
    QTRY_VERIFY((m_sheet = m_on->sheet()) != nullptr);
    type(u"person"_s, u"ana"_s);
    type(u"pieces"_s, u"11"_s);
    QVERIFY2(problem().contains(u"went out with 12 pieces; 11 are counted"_s), qPrintable(problem()));
    type(u"pieces"_s, u"12"_s);
    sign();
    QCOMPARE(text(u"tools"_s, 0, 1), u"returned"_s);
    QCOMPARE(desktop::PartsAndToolsPage::waiting(tools), 0);
}

QTEST_MAIN(TestPartsAndTools)
#include "tst_parts_and_tools.moc"
