// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/calculator/calculation_answer.hpp"

#include <QHeaderView>
#include <QLabel>
#include <QScrollBar>
#include <QStyle>
#include <QStyleOptionViewItem>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <numeric>

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
    m_steps->view().setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    m_steps->view().setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
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

/// What a cell has beside its text: the frame of the style within the padding of the style sheet.
int CalculationAnswer::padding() const
{
    const QTableView &view = m_steps->view();
    QStyleOptionViewItem cell;
    cell.initFrom(&view);
    cell.widget = &view;
    cell.rect = QRect(0, 0, view.fontMetrics().averageCharWidth() * 100, view.fontMetrics().height() * 2);
    cell.features = QStyleOptionViewItem::HasDisplay;
    cell.showDecorationSelected = true; // the room for the text, not the text in it
    const int margin = view.style()->pixelMetric(QStyle::PM_FocusFrameHMargin, nullptr, &view) + 1;
    return cell.rect.width() - view.style()->subElementRect(QStyle::SE_ItemViewItemText, &cell, &view).width() + 2 * margin;
}

/// No narrower than the longest word of a column, and as wide as its longest text.
std::vector<CalculationAnswer::Wish> CalculationAnswer::wishes() const
{
    const QHeaderView *header = m_steps->view().horizontalHeader();
    const QFontMetrics metrics = m_steps->view().fontMetrics();
    const int beside = padding();
    std::vector<Wish> wishes;
    for (int column = 0; column < header->count(); ++column) {
        if (header->isSectionHidden(column))
            continue;
        const int title = header->sectionSizeHint(column);
        Wish wish{column, title, title};
        for (const Row &row : m_steps->model().rows()) {
            const QString &said = row.cells[static_cast<std::size_t>(column)];
            const QString text = m_steps->keepsFiguresWhole() ? core::measure::unbroken(said) : said;
            wish.most = std::max(wish.most, metrics.horizontalAdvance(text) + beside);
            for (const QString &word : text.split(u' '))
                wish.least = std::max(wish.least, metrics.horizontalAdvance(word) + beside);
        }
        wishes.push_back(wish);
    }
    return wishes;
}

/// As wide as what they say. Nothing is cut: where a figure and its unit do not fit into one line they take two, and where a figure alone does not fit
/// the table scrolls sideways.
void CalculationAnswer::fitColumns()
{
    QHeaderView *header = m_steps->view().horizontalHeader();
    const int room = m_steps->view().viewport()->width();
    const auto sum = [](const std::vector<Wish> &all, int Wish::*width) {
        return std::accumulate(all.begin(), all.end(), 0, [width](int before, const Wish &one) { return before + one.*width; });
    };
    m_steps->keepFiguresWhole(true);
    std::vector<Wish> all = wishes();
    if (sum(all, &Wish::least) > room) {
        m_steps->keepFiguresWhole(false);
        all = wishes();
    }
    const int least = sum(all, &Wish::least);
    const int most = sum(all, &Wish::most);
    header->setSectionResizeMode(QHeaderView::Interactive);
    header->setStretchLastSection(least <= room); // it would be squeezed as well
    const double share = most > least ? std::clamp(static_cast<double>(room - least) / (most - least), 0.0, 1.0) : 1.0;
    for (const Wish &wish : all)
        header->resizeSection(wish.column, wish.least + static_cast<int>((wish.most - wish.least) * share));
}

/// The steps stand whole, and the page scrolls: a table that scrolls inside it would hide the last of them.
void CalculationAnswer::fitSteps()
{
    fitColumns();
    const QTableView &view = m_steps->view();
    const int bar = view.horizontalHeader()->length() > view.viewport()->width() ? view.horizontalScrollBar()->sizeHint().height() : 0;
    m_steps->setFixedHeight(view.horizontalHeader()->height() + view.verticalHeader()->length() + bar + 2 * view.frameWidth() + 4);
}

void CalculationAnswer::resizeEvent(QResizeEvent *event)
{
    QScrollArea::resizeEvent(event);
    QTimer::singleShot(0, this, &CalculationAnswer::fitSteps);
}

} // namespace desktop
