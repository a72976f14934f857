// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QStyle>
#include <QStyleOptionViewItem>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include "app/desktop/pages/calculator/calculation_form.hpp"
#include "app/desktop/pages/calculator/calculator_page.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/table_dialog.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/language/spoken.hpp"
#include "core/calculations/as_text.hpp"
#include "core/measure/working.hpp"
#include "resources/resources.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;
using core::Calculation;
using language::Language;

namespace {

core::LookUpTables tables()
{
    auto all = resources::loadTables();
    if (!all)
        qFatal("%s", qPrintable(all.error().message));
    return *std::move(all);
}

session::Clock noon()
{
    return [] { return *core::Instant::parse(u"2026-03-02T12:00:00Z"); };
}

} // namespace

/// The calculator as somebody at a desk uses it.
class TestCalculator : public QObject {
    Q_OBJECT

private slots:
    void init();
    void nothingIsFilledInBeforehand_data() { everyCalculation(); }
    void nothingIsFilledInBeforehand();
    void exampleIsWorkedOutAsTyped_data() { everyCalculation(); }
    void exampleIsWorkedOutAsTyped();
    void limitThatIsNotMetSaysNo();
    void whatCannotBeReadIsNamed();
    void whatWasTypedStaysUntilItIsEmptied();
    void tableFillsNothingByItself();
    void tableWithoutAFittingColumnIsRead();
    void printsOnPaper();
    void saysWhyItWasNotSaved();
    void escapeLeadsBack();
    void noButtonIsCut_data() { everyCalculation(); }
    void noButtonIsCut();
    void noFigureIsCut_data();
    void noFigureIsCut();

private:
    void everyCalculation();
    void choose(QStringView name) { m_page->choose(name); }
    desktop::CalculationForm &form() const;
    QString text(const char *name) const { return m_page->findChild<QLabel *>(QString::fromLatin1(name))->text(); }
    bool isShown(const char *name) const { return m_page->findChild<QLabel *>(QString::fromLatin1(name))->isVisible(); }
    QPushButton &button(const char *name) const { return *m_page->findChild<QPushButton *>(QString::fromLatin1(name)); }
    void type(const QString &field, const QString &value) { form().findChild<QWidget *>(field)->findChild<QLineEdit *>()->setText(value); }
    void fillExample();

    std::unique_ptr<ScriptedAsk> m_ask;
    std::unique_ptr<desktop::CalculatorPage> m_page;
};

void TestCalculator::init()
{
    m_page.reset();
    m_ask = std::make_unique<ScriptedAsk>();
    m_page = std::make_unique<desktop::CalculatorPage>(tables(), noon(), *m_ask, nullptr);
    m_page->resize(1200, 700);
    m_page->show();
}

void TestCalculator::everyCalculation()
{
    QTest::addColumn<QString>("name");
    for (const Calculation &one : core::calculations())
        QTest::newRow(one.name.data()) << QString(one.name);
}

desktop::CalculationForm &TestCalculator::form() const
{
    for (auto *one : m_page->findChildren<desktop::CalculationForm *>()) {
        if (one->isVisible())
            return *one;
    }
    qFatal("no form is shown");
}

void TestCalculator::fillExample()
{
    for (const core::ExampleValue &value : form().calculation().example)
        form().fill(value.field, QString::fromUtf8(value.text));
}

void TestCalculator::nothingIsFilledInBeforehand()
{
    QFETCH(QString, name);
    choose(name);
    QVERIFY(form().body().isEmpty());
    QVERIFY(!isShown("answer"));
    for (const char *one : {"print", "pdf", "copy"})
        QVERIFY(!button(one).isEnabled());
    // What to mind, and whose data governs, stand there before anything was worked out.
    const QStringList cautions = form().calculation().cautions();
    QCOMPARE(isShown("cautions"), !cautions.isEmpty());
    for (const QString &caution : cautions)
        QVERIFY2(text("cautions").contains(caution), qPrintable(caution));
    QCOMPARE(text("governs"), core::measure::dataGoverns());
}

void TestCalculator::exampleIsWorkedOutAsTyped()
{
    QFETCH(QString, name);
    choose(name);
    fillExample();
    const Calculation &calculation = *core::findCalculation(name);
    const auto expected = core::calculate(calculation, form().body(), tables());
    QVERIFY2(expected, expected ? "" : qPrintable(expected.error().message));
    QVERIFY(isShown("answer"));
    QCOMPARE(text("answer"), expected->working.answer);
    auto *steps = m_page->findChild<desktop::RowTable *>(u"steps"_s);
    QCOMPARE(steps->model().rows().size(), expected->working.steps.size());
    for (std::size_t i = 0; i < expected->working.steps.size(); ++i)
        QCOMPARE(steps->model().rows()[i].cells.back(), expected->working.steps[i].result);
    button("copy").click();
    QCOMPARE(QGuiApplication::clipboard()->text(), core::linesOf(calculation, form().body(), *expected).join(u'\n'));
}

/// AC 43.13-1B (9/8/98) paragraph 11-188 f: less than 2.5 mΩ at a frame, so that 2.5 mΩ is too much and 2.49 mΩ is not.
void TestCalculator::limitThatIsNotMetSaysNo()
{
    choose(u"bonding");
    fillExample();
    auto *comparison = form().findChild<QWidget *>(u"comparison"_s)->findChild<QComboBox *>();
    comparison->setCurrentIndex(comparison->findData(u"less than"_s));
    type(u"limit"_s, u"2.5 mohm"_s);
    type(u"reading"_s, u"2.5 mohm"_s);
    QCOMPARE(text("verdict"), u"No"_s);
    QVERIFY2(text("answer").contains(u"does not meet"), qPrintable(text("answer")));
    type(u"reading"_s, u"2.49"_s);
    QCOMPARE(text("verdict"), u"Answer"_s);
    QVERIFY2(!text("answer").contains(u"does not meet"), qPrintable(text("answer")));
}

void TestCalculator::whatCannotBeReadIsNamed()
{
    choose(u"servicing");
    fillExample();
    const QString before = text("answer");
    type(u"quantity"_s, u"9,5 L"_s);
    QVERIFY(!isShown("answer"));
    QVERIFY2(text("state").contains(u"Quantity"), qPrintable(text("state")));
    QVERIFY(!button("print").isEnabled());
    type(u"quantity"_s, u"9.5 kg"_s);
    QVERIFY(!isShown("answer"));
    QVERIFY(!text("state").isEmpty());
    fillExample();
    QCOMPARE(text("answer"), before);
}

void TestCalculator::whatWasTypedStaysUntilItIsEmptied()
{
    choose(u"lift");
    type(u"unit_weight"_s, u"486 kg"_s);
    choose(u"convert");
    choose(u"lift");
    QCOMPARE(form().body().text(u"unit_weight"), u"486 kg"_s);
    button("clear").click();
    QVERIFY(form().body().isEmpty());
}

/// Table 7-1 of AC 43.13-1B (9/8/98) gives 50 to 70 lbf·in to a 1/4-28 nut in tension.
void TestCalculator::tableFillsNothingByItself()
{
    choose(u"wrench-setting");
    form().findChild<QPushButton *>(u"table.least"_s)->click();
    auto *dialog = m_page->findChild<desktop::TableDialog *>();
    QVERIFY(dialog);
    auto *take = dialog->findChild<QPushButton *>(u"take.tension_least"_s);
    QVERIFY(!take->isEnabled()); // no row is chosen
    dialog->findChild<desktop::RowTable *>(u"lookUp"_s)->choose(u"fine-1/4-28"_s);
    QVERIFY(take->isEnabled());
    QVERIFY2(dialog->findChild<QLabel *>(u"detail"_s)->text().contains(u"AC 43.13-1B"), "the row's source");
    QVERIFY(form().body().isEmpty());
    take->click();
    QCOMPARE(form().body().text(u"least"), u"50 lbf·in"_s);
}

void TestCalculator::tableWithoutAFittingColumnIsRead()
{
    choose(u"leak-class");
    form().findChild<QPushButton *>(u"table.worst"_s)->click();
    auto *dialog = m_page->findChild<desktop::TableDialog *>();
    QVERIFY(dialog);
    dialog->findChild<desktop::RowTable *>(u"lookUp"_s)->choose(u"faa-2"_s);
    QVERIFY(dialog->findChild<QLabel *>(u"detail"_s)->text().contains(u"FAA-H-8083-31"));
}

void TestCalculator::printsOnPaper()
{
    QTemporaryDir folder;
    choose(u"weight-change");
    fillExample();
    button("print").click();
    QVERIFY(m_ask->told.isEmpty()); // the person thought better of it
    m_ask->printPath = folder.filePath(u"printed.pdf"_s);
    m_ask->savePath = folder.filePath(u"saved.pdf"_s);
    button("print").click();
    button("pdf").click();
    for (const QString &path : {*m_ask->printPath, *m_ask->savePath}) {
        QFile file(path);
        QVERIFY2(file.open(QIODevice::ReadOnly), qPrintable(path));
        QVERIFY(file.readAll().startsWith("%PDF-"));
    }
    QCOMPARE(m_ask->told, QStringList(u"The calculation was saved: "_s + *m_ask->savePath));
}

void TestCalculator::saysWhyItWasNotSaved()
{
    QTemporaryDir folder;
    choose(u"servicing");
    fillExample();
    m_ask->savePath = folder.filePath(u"no such folder/saved.pdf"_s);
    button("pdf").click();
    QCOMPARE(m_ask->told.size(), 1);
    QVERIFY2(m_ask->told.front().startsWith(u"The calculation was not saved: "_s) && m_ask->told.front().contains(*m_ask->savePath), qPrintable(m_ask->told.front()));
}

void TestCalculator::escapeLeadsBack()
{
    QSignalSpy left(m_page.get(), &desktop::CalculatorPage::left);
    m_page->activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(m_page.get()));
    auto *list = m_page->findChild<QListWidget *>(u"calculations"_s);
    list->setFocus();
    QTest::keyClick(list, Qt::Key_Down);
    QCOMPARE(text("calculation"), QString::fromUtf8(core::calculations()[1].title));
    QTest::keyClick(list, Qt::Key_Escape);
    QCOMPARE(left.size(), 1);
}

/// In the room that a window of 1366 × 768 leaves the page, in the look that the program has.
void TestCalculator::noButtonIsCut()
{
    QFETCH(QString, name);
    desktop::applyAppearance(*qApp, desktop::Appearance::Light);
    init();
    m_page->resize(1366, 720);
    choose(name);
    for (int i = 0; i < 3; ++i)
        QCoreApplication::processEvents();
    for (const QPushButton *one : m_page->findChildren<QPushButton *>()) {
        if (one->isVisible())
            QVERIFY2(one->width() >= one->sizeHint().width(), qPrintable(u"%1: %2 of %3"_s.arg(one->objectName()).arg(one->width()).arg(one->sizeHint().width())));
    }
    const auto *fields = form().findChild<QScrollArea *>();
    QVERIFY(fields->widget()->minimumSizeHint().width() <= fields->viewport()->width());
    qApp->setStyleSheet({});
}

void TestCalculator::noFigureIsCut_data()
{
    QTest::addColumn<QString>("name");
    QTest::addColumn<Language>("language");
    QTest::addColumn<int>("width");
    for (const Calculation &one : core::calculations()) {
        for (const language::LanguageLine &line : language::languages())
            QTest::addRow("%s, %s", one.name.data(), line.code) << QString(one.name) << line.language << 1366;
        QTest::addRow("%s, narrower than its columns", one.name.data()) << QString(one.name) << Language::German << 1100;
    }
}

/// Neither a figure nor its unit ends in three dots: a cell is as wide as what must not be broken in it, and as high as its lines.
void TestCalculator::noFigureIsCut()
{
    QFETCH(QString, name);
    QFETCH(Language, language);
    QFETCH(int, width);
    desktop::applyAppearance(*qApp, desktop::Appearance::Light);
    language::Spoken words(QLocale::c());
    words.speak(language);
    init();
    m_page->resize(width, 720);
    choose(name);
    fillExample();
    for (int i = 0; i < 3; ++i)
        QCoreApplication::processEvents();
    auto *steps = m_page->findChild<desktop::RowTable *>(u"steps"_s);
    const QTableView &view = steps->view();
    QVERIFY(!steps->isHidden());
    const int margin = view.style()->pixelMetric(QStyle::PM_FocusFrameHMargin, nullptr, &view) + 1;
    for (int row = 0; row < view.model()->rowCount(); ++row) {
        for (int column = 0; column < view.model()->columnCount(); ++column) {
            QStyleOptionViewItem cell;
            cell.initFrom(&view);
            cell.widget = &view;
            cell.rect = view.visualRect(view.model()->index(row, column));
            cell.features = QStyleOptionViewItem::HasDisplay;
            cell.showDecorationSelected = true; // the room for the text, not the text in it
            cell.text = view.model()->index(row, column).data().toString();
            if (steps->keepsFiguresWhole())
                cell.text = core::measure::unbroken(cell.text);
            if (view.isColumnHidden(column) || cell.text.isEmpty())
                continue;
            const QRect room = view.style()->subElementRect(QStyle::SE_ItemViewItemText, &cell, &view).adjusted(margin, 0, -margin, 0);
            for (const QString &word : cell.text.split(u' '))
                QVERIFY2(view.fontMetrics().horizontalAdvance(word) <= room.width(), qPrintable(u"%1: %2 in %3"_s.arg(cell.text, word).arg(room.width())));
        }
    }
    const int all = view.horizontalHeader()->length();
    QVERIFY2(all <= view.viewport()->width() || view.horizontalScrollBar()->maximum() >= all - view.viewport()->width(), qPrintable(QString::number(all)));
    QVERIFY2(width < 1366 || all <= view.viewport()->width(), qPrintable(u"%1 of %2"_s.arg(all).arg(view.viewport()->width())));
    QVERIFY(view.verticalScrollBar()->maximum() == 0);
    words.speak(Language::English);
    qApp->setStyleSheet({});
}

QTEST_MAIN(TestCalculator)
#include "tst_calculator.moc"
