// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/lines_editor.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPushButton>
#include <QStyledItemDelegate>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/lines_table.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"

namespace desktop {

using core::FieldType;
using core::json::Object;
using core::json::Value;

namespace {

constexpr int stableText = Qt::UserRole; ///< of a choice, whose words stand in the cell

/// An act by its verb; anything else as choices are told everywhere, in one go.
QString cellWords(const QString &choice)
{
    const core::Act *act = core::findAct(choice);
    return act ? verbOf(*act) : choiceInWords(choice).replace(u'_', u' ');
}

/// A cell of a choice is a list to choose from; all others are typed into.
class ChoiceDelegate : public QStyledItemDelegate {
public:
    ChoiceDelegate(std::vector<QLatin1String> choices, QObject *parent) : QStyledItemDelegate(parent), m_choices(std::move(choices)) {}

    QWidget *createEditor(QWidget *parent, const QStyleOptionViewItem &, const QModelIndex &) const override
    {
        auto *box = new QComboBox(parent);
        box->addItem(QString(), QString());
        for (const QLatin1String choice : m_choices)
            box->addItem(cellWords(QString(choice)), QString(choice));
        return box;
    }
    void setEditorData(QWidget *editor, const QModelIndex &index) const override
    {
        auto *box = static_cast<QComboBox *>(editor);
        box->setCurrentIndex(std::max(0, box->findData(index.data(stableText))));
    }
    void setModelData(QWidget *editor, QAbstractItemModel *model, const QModelIndex &index) const override
    {
        const auto *box = static_cast<QComboBox *>(editor);
        model->setData(index, box->currentData(), stableText);
        model->setData(index, box->currentText(), Qt::EditRole);
    }

private:
    std::vector<QLatin1String> m_choices;
};

} // namespace

LinesEditor::LinesEditor(const core::Field &field, QWidget *parent)
    : FieldEditor(parent), m_field(field), m_table(new LinesTable(0, static_cast<int>(field.columns.size()), this))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    QStringList titles;
    for (const core::Field &one : field.columns)
        titles << labelOf(one);
    m_table->setHorizontalHeaderLabels(titles);
    m_table->setAccessibleName(labelOf(field));
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    m_table->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::SelectedClicked | QAbstractItemView::EditKeyPressed | QAbstractItemView::AnyKeyPressed);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    for (int at = 0; at < m_table->columnCount(); ++at) {
        const core::Field &one = m_field.columns[static_cast<std::size_t>(at)];
        if (one.type == FieldType::Choice)
            m_table->setItemDelegateForColumn(at, new ChoiceDelegate(one.choices, m_table));
    }
    column->addWidget(m_table);
    auto *buttons = new QHBoxLayout;
    QPushButton *add = makeButton(tr("Add row"), "", this);
    add->setObjectName(QStringLiteral("addRow"));
    m_remove = makeButton(tr("Remove row"), "", this);
    m_remove->setObjectName(QStringLiteral("removeRow"));
    buttons->addWidget(add);
    buttons->addWidget(m_remove);
    buttons->addStretch();
    column->addLayout(buttons);
    setFocusProxy(m_table);
    connect(add, &QPushButton::clicked, this, [this] {
        addLine({});
        m_table->setCurrentCell(m_table->rowCount() - 1, 0);
        m_table->setFocus(Qt::OtherFocusReason);
    });
    connect(m_remove, &QPushButton::clicked, this, &LinesEditor::removeLine);
    connect(m_table, &QTableWidget::itemChanged, this, &FieldEditor::edited);
    connect(m_table, &QTableWidget::currentCellChanged, this, &LinesEditor::showRemove);
    connect(m_table, &LinesTable::passed, this, &FieldEditor::finished);
    fitHeight();
}

std::optional<Value> LinesEditor::cell(int row, int column) const
{
    const QTableWidgetItem *item = m_table->item(row, column);
    const FieldType type = m_field.columns[static_cast<std::size_t>(column)].type;
    if (type == FieldType::Flag)
        return item->checkState() == Qt::Checked ? std::optional<Value>(true) : std::nullopt;
    const QString text = type == FieldType::Choice ? item->data(stableText).toString() : item->text().trimmed();
    if (text.isEmpty())
        return std::nullopt;
    bool isNumber = false;
    const qint64 number = text.toLongLong(&isNumber);
    return type == FieldType::Integer && isNumber ? Value(number) : Value(text);
}

std::optional<Value> LinesEditor::value() const
{
    core::json::Array lines;
    for (int row = 0; row < m_table->rowCount(); ++row) {
        Object line;
        for (int column = 0; column < m_table->columnCount(); ++column) {
            if (const auto one = cell(row, column))
                line.set(QString(m_field.columns[static_cast<std::size_t>(column)].name), *one);
        }
        if (!line.isEmpty())
            lines.emplace_back(std::move(line));
    }
    return lines.empty() ? std::nullopt : std::optional<Value>(std::move(lines));
}

void LinesEditor::setValue(const Value &value)
{
    const QSignalBlocker quiet(m_table);
    m_table->setRowCount(0);
    const core::json::Array *lines = value.array();
    for (std::size_t i = 0; lines && i < lines->size(); ++i) {
        if (const Object *line = (*lines)[i].object())
            addLine(*line);
    }
    emit edited();
}

QWidget *LinesEditor::control() { return m_table; }

void LinesEditor::addLine(const Object &line)
{
    const QSignalBlocker quiet(m_table);
    const int row = m_table->rowCount();
    m_table->insertRow(row);
    for (int column = 0; column < m_table->columnCount(); ++column) {
        const core::Field &field = m_field.columns[static_cast<std::size_t>(column)];
        const Value *value = line.find(QString(field.name));
        auto *item = new QTableWidgetItem;
        if (field.type == FieldType::Flag) {
            item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
            item->setCheckState(value && value->boolean() && *value->boolean() ? Qt::Checked : Qt::Unchecked);
        } else if (value && value->string() && field.type == FieldType::Choice) {
            item->setData(stableText, *value->string());
            item->setText(cellWords(*value->string()));
        } else if (value) {
            item->setText(value->integer() ? QString::number(*value->integer()) : value->string() ? *value->string() : QString());
        }
        m_table->setItem(row, column, item);
    }
    fitHeight();
    // The cell to be typed into first is the first that is empty.
    for (int column = m_table->columnCount() - 1; column >= 0 && row == 0; --column) {
        if (m_table->item(row, column)->text().isEmpty())
            m_table->setCurrentCell(row, column);
    }
}

void LinesEditor::removeLine()
{
    if (m_table->currentRow() < 0)
        return;
    m_table->removeRow(m_table->currentRow());
    fitHeight();
    emit edited();
}

/// As tall as its lines, up to six.
void LinesEditor::fitHeight()
{
    const int height = touchHeight(fontMetrics());
    m_table->verticalHeader()->setDefaultSectionSize(height);
    const int lines = std::clamp(m_table->rowCount(), 1, 6);
    m_table->setFixedHeight(m_table->horizontalHeader()->sizeHint().height() + lines * height + 2 * m_table->frameWidth() + 2);
    showRemove();
    emit heightChanged();
}

void LinesEditor::showRemove()
{
    const bool isEmpty = m_table->rowCount() == 0;
    m_remove->setEnabled(!isEmpty && m_table->currentRow() >= 0);
    m_remove->setToolTip(isEmpty ? tr("There is no row to remove.") : m_remove->isEnabled() ? tr("Removes the row that is chosen.") : tr("Choose the row to remove first."));
}

} // namespace desktop
