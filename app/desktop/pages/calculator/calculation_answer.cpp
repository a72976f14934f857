// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/calculator/calculation_answer.hpp"

#include <QHeaderView>
#include <QLabel>
#include <QStyle>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

std::vector<Row> rowsOf(const core::measure::Working &working)
{
    std::vector<Row> rows;
    for (const core::measure::WorkingStep &step : working.steps)
        rows.push_back({QString::number(rows.size()), {step.what, step.formula, step.numbers, step.result}});
    return rows;
}

/// A role or state of the style sheet that changed.
void setLook(QLabel *label, const char *role, bool isRefused)
{
    label->setProperty("role", QString::fromLatin1(role));
    label->setProperty("isRefused", isRefused);
    label->style()->unpolish(label);
    label->style()->polish(label);
}

} // namespace

CalculationAnswer::CalculationAnswer(QWidget *parent) : QScrollArea(parent)
{
    setAccessibleName(tr("Answer"));
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto *inside = new QWidget(this);
    auto *column = new QVBoxLayout(inside);
    const int gap = fontMetrics().height();
    column->setContentsMargins(0, 0, fontMetrics().averageCharWidth() * 2, 0);
    column->setSpacing(gap / 2);
    const auto add = [&](const QString &text, const char *role, const QString &name) {
        QLabel *label = makeLabel(text, role, inside);
        label->setObjectName(name);
        column->addWidget(label);
        return label;
    };
    m_state = add({}, "quiet", u"state"_s);
    // First what it comes to: a no must not lie below the fold.
    m_verdict = add({}, "label", u"verdict"_s);
    m_answer = add({}, "answer", u"answer"_s);
    m_workingHead = add(tr("Working"), "heading", u"workingHead"_s);
    m_workingHead->setContentsMargins(0, gap / 2, 0, 0);
    m_steps = new RowTable({{tr("What"), 0}, {tr("Formula"), 0}, {tr("Numbers"), 0}, {tr("Result"), 0}}, tr("Steps of the working"), {}, inside);
    m_steps->setObjectName(u"steps"_s);
    m_steps->view().setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    column->addWidget(m_steps);
    const auto addHead = [&](const QString &text, const QString &name) {
        QLabel *label = add(text, "heading", name);
        label->setContentsMargins(0, gap / 2, 0, 0);
        return label;
    };
    m_recordHead = addHead(tr("For the record"), u"recordHead"_s);
    m_record = add({}, "", u"record"_s);
    m_notesHead = addHead(tr("Notes"), u"notesHead"_s);
    m_notes = add({}, "", u"notes"_s);
    m_sourcesHead = addHead(tr("Sources"), u"sourcesHead"_s);
    m_sources = add({}, "", u"sources"_s);
    column->addSpacing(gap / 2);
    add(core::measure::dataGoverns(), "quiet", u"governs"_s);
    column->addStretch();
    setWidget(inside);
}

void CalculationAnswer::showText(QLabel *label, const QString &text)
{
    label->setText(text);
    label->setVisible(!text.isEmpty());
}

void CalculationAnswer::hideWorking()
{
    for (QWidget *part : std::initializer_list<QWidget *>{m_workingHead, m_steps, m_verdict, m_answer, m_recordHead, m_record, m_notesHead, m_notes, m_sourcesHead, m_sources})
        part->hide();
}

void CalculationAnswer::showMissing(const QStringList &labels)
{
    hideWorking();
    setLook(m_state, "quiet", false);
    showText(m_state, labels.isEmpty() ? tr("Fill in what is known, and the working stands here.")
                                       : tr("Nothing is filled in beforehand. The working stands here as soon as these are known:\n%1").arg(labels.join(u'\n')));
}

void CalculationAnswer::showFault(const QString &sentence)
{
    hideWorking();
    setLook(m_state, "refusal", false);
    showText(m_state, sentence);
}

void CalculationAnswer::showWorked(const core::Calculated &result)
{
    const core::measure::Working &working = result.working;
    const bool isRefused = result.verdict == core::Verdict::Refused;
    showText(m_state, {});
    const std::vector<Row> rows = rowsOf(working);
    m_steps->take(rows);
    for (int column = 0; column < m_steps->model().columnCount(); ++column)
        m_steps->view().setColumnHidden(column, std::all_of(rows.begin(), rows.end(), [column](const Row &row) { return row.cells[column].isEmpty(); }));
    m_workingHead->setVisible(!working.steps.empty());
    m_steps->setVisible(!working.steps.empty());
    showText(m_verdict, isRefused ? tr("No") : tr("Answer"));
    setLook(m_answer, "answer", isRefused);
    showText(m_answer, working.answer);
    showText(m_record, result.forRecord.join(u'\n'));
    showText(m_notes, working.notes.join(u'\n'));
    showText(m_sources, working.sources.join(u'\n'));
    m_recordHead->setVisible(m_record->isVisibleTo(this));
    m_notesHead->setVisible(m_notes->isVisibleTo(this));
    m_sourcesHead->setVisible(m_sources->isVisibleTo(this));
    fitSteps();
    // Rows know their height once they are laid out at this width.
    QTimer::singleShot(0, this, &CalculationAnswer::fitSteps);
}

/// As wide as what they say, no narrower than the longest word of it: a number is not broken in two.
void CalculationAnswer::fitColumns()
{
    const QTableView &view = m_steps->view();
    QHeaderView *header = view.horizontalHeader();
    const QFontMetrics metrics = view.fontMetrics();
    const int padding = metrics.averageCharWidth() * 4;
    struct Wish {
        int column;
        int least;
        int most;
    };
    std::vector<Wish> wishes;
    int least = 0;
    int most = 0;
    for (int column = 0; column < header->count(); ++column) {
        if (header->isSectionHidden(column))
            continue;
        QStringList texts{header->model()->headerData(column, Qt::Horizontal).toString()};
        for (const Row &row : m_steps->model().rows())
            texts << row.cells[static_cast<std::size_t>(column)];
        Wish wish{column, 0, 0};
        for (const QString &text : texts) {
            wish.most = std::max(wish.most, metrics.horizontalAdvance(text) + padding);
            for (const QString &word : text.split(u' '))
                wish.least = std::max(wish.least, metrics.horizontalAdvance(word) + padding);
        }
        least += wish.least;
        most += wish.most;
        wishes.push_back(wish);
    }
    const int room = view.viewport()->width();
    header->setSectionResizeMode(QHeaderView::Interactive);
    header->setStretchLastSection(true);
    const double share = most > least ? std::clamp(static_cast<double>(room - least) / (most - least), 0.0, 1.0) : 1.0;
    for (const Wish &wish : wishes)
        header->resizeSection(wish.column, wish.least + static_cast<int>((wish.most - wish.least) * share));
}

/// The steps stand whole, and the page scrolls: a table that scrolls inside it would hide the last of them.
void CalculationAnswer::fitSteps()
{
    fitColumns();
    const QTableView &view = m_steps->view();
    m_steps->setFixedHeight(view.horizontalHeader()->height() + view.verticalHeader()->length() + 2 * view.frameWidth() + 4);
}

void CalculationAnswer::resizeEvent(QResizeEvent *event)
{
    QScrollArea::resizeEvent(event);
    QTimer::singleShot(0, this, &CalculationAnswer::fitSteps);
}

} // namespace desktop
