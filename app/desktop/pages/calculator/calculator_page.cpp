// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/calculator/calculator_page.hpp"

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPrinter>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/flows/look_up.hpp"
#include "app/desktop/pages/calculator/calculation_answer.hpp"
#include "app/desktop/pages/calculator/calculation_form.hpp"
#include "app/desktop/pages/calculator/calculation_print.hpp"
#include "app/desktop/parts/table_dialog.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/calculations/as_text.hpp"
#include "core/rules/form.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

QPushButton *addButton(QHBoxLayout *row, const QString &text, const char *role, const QString &name, QWidget *parent)
{
    QPushButton *button = makeButton(text, role, parent);
    button->setObjectName(name);
    button->setMinimumHeight(touchHeight(parent->fontMetrics()));
    row->addWidget(button);
    return button;
}

/// The sentences on what is typed and cannot be read; what is only missing is told apart from it.
QStringList unreadable(const core::Calculation &calculation, const core::json::Object &body)
{
    QStringList sentences;
    for (const core::Field &field : calculation.fields) {
        const core::json::Value *value = body.find(QString(field.name));
        const auto why = value ? core::whyNotOfType(field, *value) : std::nullopt;
        if (why)
            sentences << *why;
    }
    return sentences;
}

QStringList missing(const core::Calculation &calculation, const core::json::Object &body)
{
    QStringList labels;
    for (const core::Field &field : calculation.fields) {
        if (field.needed == core::Needed::Always && !body.contains(QString(field.name)))
            labels << labelOf(field);
    }
    return labels;
}

} // namespace

CalculatorPage::CalculatorPage(core::LookUpTables tables, session::Clock clock, Ask &ask, QWidget *parent)
    : QWidget(parent), m_tables(std::move(tables)), m_clock(std::move(clock)), m_ask(ask)
{
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addWidget(makeList());
    auto *column = new QVBoxLayout;
    column->setSpacing(0);
    row->addLayout(column, 1);
    column->addWidget(makeHead());
    auto *splitter = new QSplitter(Qt::Horizontal, this);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(makeMiddle());
    splitter->addWidget(makeRight());
    splitter->setStretchFactor(0, 0);
    splitter->setStretchFactor(1, 1);
    column->addWidget(splitter, 1);
    m_made.resize(core::calculations().size(), nullptr);
    connect(m_list, &QListWidget::currentRowChanged, this, &CalculatorPage::showForm);
    auto *back = new QShortcut(QKeySequence(Qt::Key_Escape), this);
    back->setContext(Qt::WidgetWithChildrenShortcut);
    connect(back, &QShortcut::activated, this, &CalculatorPage::left);
    setFocusProxy(m_list);
    m_list->setCurrentRow(0);
}

QWidget *CalculatorPage::makeList()
{
    auto *rail = new QFrame(this);
    rail->setProperty("role", u"rail"_s);
    auto *column = new QVBoxLayout(rail);
    const int gap = fontMetrics().height();
    column->setContentsMargins(gap, gap, gap, gap);
    column->addWidget(makeLabel(tr("Calculator"), "title", rail));
    m_list = new QListWidget(rail);
    m_list->setObjectName(u"calculations"_s);
    m_list->setAccessibleName(tr("Calculations"));
    m_list->setWordWrap(true);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    for (const core::Calculation &one : core::calculations()) {
        auto *item = new QListWidgetItem(titleOf(one), m_list);
        item->setToolTip(summaryOf(one));
        item->setSizeHint({0, touchHeight(fontMetrics())});
    }
    column->addWidget(m_list, 1);
    auto *buttons = new QHBoxLayout;
    QPushButton *back = addButton(buttons, tr("&Back"), "", u"back"_s, rail);
    buttons->addStretch();
    column->addLayout(buttons);
    connect(back, &QPushButton::clicked, this, &CalculatorPage::left);
    rail->setFixedWidth(fontMetrics().averageCharWidth() * 40);
    return rail;
}

/// What is worked out, and what to mind at the work, above everything else.
QWidget *CalculatorPage::makeHead()
{
    auto *area = new QWidget(this);
    const int gap = fontMetrics().height();
    auto *column = new QVBoxLayout(area);
    column->setContentsMargins(gap * 3 / 2, gap, gap * 3 / 2, 0);
    m_title = makeLabel({}, "title", area);
    m_title->setObjectName(u"calculation"_s);
    m_summary = makeLabel({}, "quiet", area);
    m_cautions = makeLabel({}, "caution", area);
    m_cautions->setObjectName(u"cautions"_s);
    for (QLabel *label : {m_title, m_summary, m_cautions})
        column->addWidget(label);
    return area;
}

QWidget *CalculatorPage::makeMiddle()
{
    auto *area = new QWidget(this);
    const int gap = fontMetrics().height();
    auto *column = new QVBoxLayout(area);
    column->setContentsMargins(gap * 3 / 2, gap, gap, gap);
    m_forms = new QStackedWidget(area);
    column->addWidget(m_forms, 1);
    auto *buttons = new QHBoxLayout;
    QPushButton *clear = addButton(buttons, tr("Empty &all fields"), "", u"clear"_s, area);
    buttons->addStretch();
    column->addLayout(buttons);
    connect(clear, &QPushButton::clicked, this, [this] { form()->clear(); });
    return area;
}

QWidget *CalculatorPage::makeRight()
{
    auto *area = new QWidget(this);
    const int gap = fontMetrics().height();
    auto *column = new QVBoxLayout(area);
    column->setContentsMargins(gap / 2, gap, gap, gap);
    m_answer = new CalculationAnswer(area);
    column->addWidget(m_answer, 1);
    auto *buttons = new QHBoxLayout;
    m_print = addButton(buttons, tr("P&rint …"), "", u"print"_s, area);
    m_pdf = addButton(buttons, tr("&Save as PDF …"), "", u"pdf"_s, area);
    m_copy = addButton(buttons, tr("&Copy"), "", u"copy"_s, area);
    buttons->addStretch();
    column->addLayout(buttons);
    connect(m_print, &QPushButton::clicked, this, &CalculatorPage::printAsked);
    connect(m_pdf, &QPushButton::clicked, this, &CalculatorPage::pdfAsked);
    connect(m_copy, &QPushButton::clicked, this, &CalculatorPage::copy);
    return area;
}

CalculationForm *CalculatorPage::form() const { return m_made[static_cast<std::size_t>(m_list->currentRow())]; }

void CalculatorPage::choose(QStringView name)
{
    const auto &all = core::calculations();
    const auto at = std::find_if(all.begin(), all.end(), [name](const core::Calculation &one) { return one.name == name; });
    if (at != all.end())
        m_list->setCurrentRow(static_cast<int>(at - all.begin()));
}

void CalculatorPage::showForm(int row)
{
    if (row < 0)
        return;
    CalculationForm *&form = m_made[static_cast<std::size_t>(row)];
    if (!form) {
        form = new CalculationForm(core::calculations()[static_cast<std::size_t>(row)], m_forms);
        m_forms->addWidget(form);
        connect(form, &CalculationForm::edited, this, &CalculatorPage::work);
        connect(form, &CalculationForm::tablesWanted, this, &CalculatorPage::openTables);
    }
    m_forms->setCurrentWidget(form);
    m_title->setText(titleOf(form->calculation()));
    m_summary->setText(summaryOf(form->calculation()));
    const QStringList cautions = form->calculation().cautions();
    m_cautions->setText(cautionsText(cautions));
    m_cautions->setVisible(!cautions.isEmpty());
    work();
}

void CalculatorPage::work()
{
    m_worked.reset();
    const core::Calculation &calculation = form()->calculation();
    const core::json::Object body = form()->body();
    const QStringList faults = unreadable(calculation, body);
    const QStringList labels = missing(calculation, body);
    if (!faults.isEmpty()) {
        m_answer->showFault(faults.join(u'\n'));
    } else if (!labels.isEmpty() || body.isEmpty()) {
        m_answer->showMissing(labels);
    } else if (const auto result = core::calculate(calculation, body, m_tables); !result) {
        m_answer->showFault(core::errorInWords(result.error()));
    } else {
        m_worked = WorkedOut{&calculation, body, *result};
        m_answer->showWorked(*result);
    }
    for (QPushButton *button : {m_print, m_pdf, m_copy})
        button->setEnabled(m_worked.has_value());
}

void CalculatorPage::openTables(const QString &name)
{
    const core::Calculation &calculation = form()->calculation();
    const auto field = std::find_if(calculation.fields.begin(), calculation.fields.end(), [&](const core::Field &one) { return one.name == name; });
    const TableDialog *dialog = lookUp(m_tables, calculation.tables, *field, m_ask, this);
    if (dialog)
        connect(dialog, &TableDialog::taken, this, [this, name](const QString &value) { form()->fill(name, value); });
}

void CalculatorPage::copy() const
{
    if (m_worked)
        QGuiApplication::clipboard()->setText(core::linesOf(*m_worked->calculation, m_worked->body, m_worked->result).join(u'\n'));
}

void CalculatorPage::printAsked()
{
    if (!m_worked)
        return;
    const auto printer = m_ask.printer(tr("Print the calculation"));
    if (!printer)
        return;
    if (const auto printed = print(*m_worked, m_clock(), *printer); !printed)
        m_ask.tell(tr("The calculation was not printed"), core::errorInWords(printed.error()));
}

void CalculatorPage::pdfAsked()
{
    if (!m_worked)
        return;
    const auto path = m_ask.fileToSave(tr("Save the calculation"), m_worked->calculation->name + u".pdf"_s, tr("PDF (*.pdf)"));
    if (!path)
        return;
    const auto written = writePdf(*m_worked, m_clock(), *path);
    if (written)
        m_ask.tell(tr("The calculation was saved"), *path);
    else
        m_ask.tell(tr("The calculation was not saved"), core::errorInWords(written.error()));
}

} // namespace desktop
