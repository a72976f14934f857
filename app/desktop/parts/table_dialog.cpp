// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/table_dialog.hpp"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/help_page.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

/// Broken between words, so that a narrow column of numbers stays narrow.
QString headOf(const core::LookUpColumn &column)
{
    constexpr qsizetype widest = 13;
    QStringList lines{QString()};
    for (const QString &word : column.title.split(u' ')) {
        if (!lines.back().isEmpty() && lines.back().size() + word.size() >= widest)
            lines << QString();
        lines.back() += lines.back().isEmpty() ? word : u' ' + word;
    }
    if (!column.unit.isEmpty())
        lines << column.unit;
    return lines.join(u'\n');
}

QString seenInWords(core::Seen seen)
{
    switch (seen) {
    case core::Seen::Read: return TableDialog::tr("read in the source");
    case core::Seen::FromMemory: return TableDialog::tr("from memory");
    }
    Q_UNREACHABLE();
}

std::vector<RowTable::Column> columnsOf(const core::LookUpTable &table)
{
    std::vector<RowTable::Column> columns;
    for (const core::LookUpColumn &column : table.columns)
        columns.push_back({headOf(column), 1});
    columns.push_back({TableDialog::tr("Source"), 1});
    columns.push_back({TableDialog::tr("Seen"), 0});
    return columns;
}

/// As wide as the heads are when broken, and as short words are; longer ones wrap.
void fitColumns(QTableView &view)
{
    const QFontMetrics metrics = view.fontMetrics();
    const int padding = metrics.averageCharWidth() * 3;
    QHeaderView *header = view.horizontalHeader();
    for (int column = 0; column + 1 < header->count(); ++column) {
        int width = metrics.size(0, header->model()->headerData(column, Qt::Horizontal).toString()).width() * 6 / 5;
        for (int row = 0; row < header->model()->rowCount(); ++row)
            width = std::max(width, std::min(metrics.horizontalAdvance(header->model()->index(row, column).data().toString()), metrics.averageCharWidth() * 26));
        header->resizeSection(column, width + padding);
    }
    view.setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    view.resizeRowsToContents();
}

std::vector<Row> rowsOf(const core::LookUpTable &table)
{
    std::vector<Row> rows;
    for (const core::LookUpRow &row : table.rows) {
        QStringList cells(row.cells.begin(), row.cells.end());
        cells << row.source << seenInWords(row.seen);
        rows.push_back({row.id, cells});
    }
    return rows;
}

} // namespace

TableDialog::TableDialog(core::LookUpTable table, const QStringList &columns, const QString &fieldLabel, QWidget *parent)
    : QDialog(parent), m_table(std::move(table))
{
    setWindowTitle(m_table.title);
    setAttribute(Qt::WA_DeleteOnClose);
    tellHelpPage(*this, QLatin1String("tables"));
    const int gap = fontMetrics().height();
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap, gap, gap, gap);
    column->setSpacing(gap * 2 / 3);
    column->addWidget(makeLabel(m_table.title, "title", this));
    column->addWidget(makeLabel(tr("Looked up for: %1").arg(fieldLabel), "", this));
    column->addWidget(makeLabel(m_table.about, "quiet", this));
    column->addWidget(makeLabel(m_table.caution, "caution", this));
    m_rows = new RowTable(columnsOf(m_table), m_table.title, tr("This table is empty."), this);
    m_rows->setObjectName(u"lookUp"_s);
    m_rows->take(rowsOf(m_table));
    fitColumns(m_rows->view());
    column->addWidget(m_rows, 1);
    m_detail = makeLabel({}, "", this);
    m_detail->setObjectName(u"detail"_s);
    column->addWidget(m_detail);

    auto *buttons = new QHBoxLayout;
    for (const QString &id : columns) {
        QPushButton *take = makeButton({}, "", this);
        take->setObjectName(u"take."_s + id);
        take->setMinimumHeight(touchHeight(fontMetrics()));
        buttons->addWidget(take);
        m_takes.push_back({id, take});
        connect(take, &QPushButton::clicked, this, [this, id] {
            emit taken(valueOf(m_rows->chosen(), id));
            accept();
        });
    }
    buttons->addStretch();
    QPushButton *close = makeButton(tr("&Close"), "main", this);
    close->setMinimumHeight(touchHeight(fontMetrics()));
    buttons->addWidget(close);
    column->addLayout(buttons);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_rows, &RowTable::chosenChanged, this, &TableDialog::offer);
    resize(std::max(parent->window()->width() * 19 / 20, fontMetrics().averageCharWidth() * 120), gap * 42);
    offer({});
}

QString TableDialog::valueOf(const QString &rowId, const QString &column) const
{
    const core::LookUpRow *row = m_table.row(u"id", rowId);
    const QString cell = row ? m_table.text(*row, column) : QString();
    const auto at = std::find_if(m_table.columns.begin(), m_table.columns.end(), [&](const core::LookUpColumn &one) { return one.id == column; });
    const bool hasUnit = at != m_table.columns.end() && core::findUnit(at->unit);
    return cell.isEmpty() || !hasUnit ? cell : cell + u' ' + at->unit;
}

void TableDialog::offer(const QString &rowId)
{
    const core::LookUpRow *row = m_table.row(u"id", rowId);
    const auto titleOfColumn = [this](const QString &id) {
        const auto at = std::find_if(m_table.columns.begin(), m_table.columns.end(), [&](const core::LookUpColumn &one) { return one.id == id; });
        return at == m_table.columns.end() ? id : at->title;
    };
    m_detail->setText(row ? tr("%1 – %2. %3").arg(row->source, seenInWords(row->seen), row->note).trimmed() : tr("Choose a row to read its source and note here."));
    for (const Take &take : m_takes) {
        const QString value = valueOf(rowId, take.column);
        take.button->setEnabled(!value.isEmpty());
        take.button->setText(value.isEmpty() ? tr("Take: %1").arg(titleOfColumn(take.column)) : tr("Take %1 (%2)").arg(value, titleOfColumn(take.column)));
    }
}

} // namespace desktop
