// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/import_dialog.hpp"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "app/desktop/parts/help_page.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/words.hpp"
#include "app/desktop/parts/theme.hpp"

namespace desktop {

ImportDialog::ImportDialog(const QString &fileName, const core::InterfaceList &list, const core::Kinds &kinds, QWidget *parent) : QDialog(parent)
{
    setWindowTitle(tr("Import the interface list"));
    setAttribute(Qt::WA_DeleteOnClose);
    tellHelpPage(*this, QLatin1String("interface_list"));
    auto *column = new QVBoxLayout(this);
    const int gap = fontMetrics().height();
    column->setContentsMargins(gap, gap, gap, gap);
    column->addWidget(makeLabel(list ? tr("Take this list?") : tr("This list cannot be taken"), "title", this));
    column->addWidget(makeLabel(fileName, "quiet", this));
    auto *buttons = new QHBoxLayout;
    QPushButton *no = makeButton(list ? tr("Cancel") : tr("Close"), "", this);
    no->setMinimumHeight(touchHeight(fontMetrics()));
    buttons->addWidget(no);
    buttons->addStretch();
    connect(no, &QPushButton::clicked, this, &QDialog::reject);
    if (list) {
        const core::ListPreview preview = core::previewOf(*list, kinds);
        column->addWidget(makeLabel(preview.summary, "heading", this));
        column->addWidget(rowsOf(preview), 1);
        QPushButton *take = makeButton(tr("&Take it and sign …"), "main", this);
        take->setObjectName(QStringLiteral("take"));
        take->setMinimumHeight(touchHeight(fontMetrics()));
        buttons->addWidget(take);
        connect(take, &QPushButton::clicked, this, &QDialog::accept);
    } else {
        column->addWidget(makeLabel(tr("Faults: %1. Mend them in the file and import it again; nothing was taken.").arg(list.error().size()), "alarm", this));
        column->addWidget(faultsOf(list.error()), 1);
    }
    column->addLayout(buttons);
    resize(fontMetrics().averageCharWidth() * 130, fontMetrics().height() * 36);
}

QWidget *ImportDialog::faultsOf(const std::vector<core::Error> &faults)
{
    auto *table = new RowTable({{tr("Row"), 8}, {tr("Column"), 10}, {tr("What is wrong, and what was expected"), 0}}, tr("Faults"), {}, this);
    table->setObjectName(QStringLiteral("faults"));
    std::vector<Row> rows;
    const auto number = [](const std::optional<qint64> &n) { return n ? QString::number(*n) : QString(); };
    for (const core::Error &fault : faults)
        rows.push_back({QString::number(rows.size()), {number(fault.where.row), fault.where.column ? spreadsheetColumn(*fault.where.column) : QString(), fault.message}, false, true});
    table->take(rows);
    return table;
}

QWidget *ImportDialog::rowsOf(const core::ListPreview &preview)
{
    std::vector<RowTable::Column> columns;
    for (const QString &title : preview.columns)
        columns.push_back({title, 16});
    auto *table = new RowTable(columns, tr("Rows of the list"), {}, this);
    table->setObjectName(QStringLiteral("preview"));
    std::vector<Row> rows;
    for (const auto &cells : preview.rows)
        rows.push_back({QString::number(rows.size()), QStringList(cells.begin(), cells.end())});
    table->take(rows);
    table->view().setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    table->view().setWordWrap(false);
    table->view().verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table->view().resizeColumnsToContents();
    return table;
}

} // namespace desktop
