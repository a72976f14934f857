// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/row_table.hpp"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/theme.hpp"
#include "core/measure/working.hpp"

namespace desktop {

namespace {

/// At least as high as a thumb; no box around single cells; what is loose in its colour, beside its words.
class RowDelegate : public QStyledItemDelegate {
public:
    explicit RowDelegate(const RowTable &table, QObject *parent) : QStyledItemDelegate(parent), m_table(table) {}
    void initStyleOption(QStyleOptionViewItem *option, const QModelIndex &index) const override
    {
        QStyledItemDelegate::initStyleOption(option, index);
        option->state &= ~QStyle::State_HasFocus;
        option->features |= QStyleOptionViewItem::WrapText;
        if (m_table.keepsFiguresWhole())
            option->text = core::measure::unbroken(option->text);
        if (index.column() == 0 && index.data(RowModel::AlarmRole).toBool())
            option->palette.setColor(QPalette::Text, alarmColour(shadeAround(option->widget)));
    }
    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override
    {
        QSize size = QStyledItemDelegate::sizeHint(option, index);
        size.setHeight(std::max(size.height() + option.fontMetrics.height() / 2, touchHeight(option.fontMetrics)));
        return size;
    }

private:
    const RowTable &m_table;
};

/// Return opens the row, wherever the style would have it do otherwise.
class RowView : public QTableView {
public:
    using QTableView::QTableView;

protected:
    void keyPressEvent(QKeyEvent *event) override
    {
        if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && currentIndex().isValid())
            emit activated(currentIndex());
        else
            QTableView::keyPressEvent(event);
    }
};

QStringList titlesOf(const std::vector<RowTable::Column> &columns)
{
    QStringList titles;
    for (const RowTable::Column &column : columns)
        titles << column.title;
    return titles;
}

} // namespace

RowTable::RowTable(const std::vector<Column> &columns, const QString &name, const QString &whenEmpty, QWidget *parent)
    : QStackedWidget(parent), m_model(new RowModel(titlesOf(columns), this)), m_view(new RowView(this))
{
    m_view->setModel(m_model);
    m_view->setAccessibleName(name);
    m_view->setItemDelegate(new RowDelegate(*this, m_view));
    m_view->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_view->setSelectionMode(QAbstractItemView::SingleSelection);
    m_view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_view->setTabKeyNavigation(false);
    m_view->setShowGrid(false);
    m_view->setAlternatingRowColors(true);
    m_view->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_view->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_view->verticalHeader()->hide();
    m_view->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    QHeaderView *header = m_view->horizontalHeader();
    header->setHighlightSections(false);
    header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    for (int column = 0; column < static_cast<int>(columns.size()); ++column) {
        const Column &wanted = columns[static_cast<std::size_t>(column)];
        const int forTitle = fontMetrics().horizontalAdvance(wanted.title) * 6 / 5 + fontMetrics().averageCharWidth() * 3;
        if (wanted.characters > 0)
            header->resizeSection(column, std::max(forTitle, wanted.characters * fontMetrics().averageCharWidth()));
        else
            header->setSectionResizeMode(column, QHeaderView::Stretch);
    }
    addWidget(m_view);
    QLabel *empty = makeLabel(whenEmpty, "quiet", this);
    empty->setAlignment(Qt::AlignCenter);
    addWidget(empty);
    setCurrentIndex(1);
    connect(m_view->selectionModel(), &QItemSelectionModel::selectionChanged, this, [this] { emit chosenChanged(chosen()); });
    connect(m_view, &QAbstractItemView::activated, this, [this](const QModelIndex &at) { emit opened(at.data(RowModel::KeyRole).toString()); });
}

void RowTable::keepFiguresWhole(bool isWhole)
{
    if (m_keepsFiguresWhole == isWhole)
        return;
    m_keepsFiguresWhole = isWhole;
    m_view->resizeRowsToContents();
}

void RowTable::take(const std::vector<Row> &rows)
{
    m_model->take(rows);
    setCurrentIndex(rows.empty() ? 1 : 0);
}

QString RowTable::chosen() const
{
    const QModelIndexList rows = m_view->selectionModel()->selectedRows();
    return rows.isEmpty() ? QString() : rows.front().data(RowModel::KeyRole).toString();
}

void RowTable::choose(const QString &key)
{
    if (const int row = m_model->rowOf(key); row >= 0)
        m_view->selectRow(row);
}

void RowTable::showAtLeast(int rows)
{
    m_atLeast = rows;
    // Rows are as high as their text, which wraps anew at each width; they have their heights when the layout has settled.
    m_settle = new QTimer(this);
    m_settle->setSingleShot(true);
    m_settle->setInterval(0);
    const auto settle = [this] { m_settle->start(); };
    connect(m_settle, &QTimer::timeout, this, &RowTable::keepInSight);
    connect(m_view->horizontalHeader(), &QHeaderView::sectionResized, m_settle, settle);
    connect(m_view->verticalHeader(), &QHeaderView::sectionResized, m_settle, settle);
    connect(m_view->verticalHeader(), &QHeaderView::sectionCountChanged, m_settle, settle);
    keepInSight();
}

void RowTable::keepInSight()
{
    m_view->resizeRowsToContents();
    int height = m_view->horizontalHeader()->sizeHint().height() + 2 * m_view->frameWidth();
    for (int row = 0; row < std::min(m_atLeast, m_model->rowCount()); ++row)
        height += m_view->rowHeight(row);
    if (height == m_view->minimumHeight())
        return;
    m_view->setMinimumHeight(height);
    emit heightChanged();
}

} // namespace desktop
