// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/field_editor.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>

#include <algorithm>

#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/lines_editor.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"

namespace desktop {

namespace {

using core::FieldType;
using core::json::Value;

void fill(QWidget *editor, QWidget *control)
{
    auto *layout = new QHBoxLayout(editor);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(control);
    editor->setFocusProxy(control);
}

class LineEditor : public FieldEditor {
public:
    LineEditor(const core::Field &field, QWidget *parent) : FieldEditor(parent), m_type(field.type), m_line(new QLineEdit(this))
    {
        fill(this, m_line);
        m_line->setPlaceholderText(hint());
        m_line->setAccessibleName(labelOf(field));
        connect(m_line, &QLineEdit::textChanged, this, &FieldEditor::edited);
        connect(m_line, &QLineEdit::returnPressed, this, &FieldEditor::finished);
    }

    std::optional<Value> value() const override
    {
        const QString text = m_line->text().trimmed();
        if (text.isEmpty())
            return std::nullopt;
        if (m_type == FieldType::Integer) {
            bool isNumber = false;
            const qint64 number = text.toLongLong(&isNumber);
            return isNumber ? Value(number) : Value(text);
        }
        if (m_type == FieldType::Texts || m_type == FieldType::Interfaces) {
            std::vector<QString> parts;
            for (const QString &part : text.split(u',', Qt::SkipEmptyParts))
                parts.push_back(part.trimmed());
            return core::json::arrayOf(parts);
        }
        if (m_type == FieldType::Moment) {
            const auto at = core::Instant::parse(text);
            return at ? Value(at->text()) : Value(text);
        }
        return text;
    }

    void setValue(const Value &value) override
    {
        if (const qint64 *number = value.integer())
            m_line->setText(QString::number(*number));
        else if (value.string())
            m_line->setText(*value.string());
        else if (const auto *array = value.array()) {
            QStringList parts;
            for (const Value &part : *array)
                parts << (part.string() ? *part.string() : QString());
            m_line->setText(parts.join(QStringLiteral(", ")));
        }
    }

    QWidget *control() override { return m_line; }

private:
    QString hint() const
    {
        switch (m_type) {
        case FieldType::Integer: return tr("A whole number");
        case FieldType::Decimal: return tr("Such as 24.5");
        case FieldType::Date: return tr("Such as 2026-03-02");
        case FieldType::Moment: return tr("Such as 2026-03-02T08:14:00Z");
        case FieldType::Texts:
        case FieldType::Interfaces: return tr("Separated by commas");
        default: return {};
        }
    }
    FieldType m_type;
    QLineEdit *m_line;
};

/// A number, and its unit from those that measure the same; none is chosen beforehand.
class QuantityEditor : public FieldEditor {
public:
    QuantityEditor(const core::Field &field, QWidget *parent)
        : FieldEditor(parent), m_dimension(*field.dimension), m_number(new QLineEdit(this)), m_unit(new QComboBox(this))
    {
        fill(this, m_number);
        layout()->addWidget(m_unit);
        m_number->setPlaceholderText(tr("Such as 24.5"));
        m_number->setAccessibleName(labelOf(field));
        tellName(*m_unit, tr("%1, unit").arg(labelOf(field)));
        m_unit->addItem(tr("Unit …", "of measurement"), QString());
        for (const core::Unit *unit : core::unitsOf(m_dimension))
            m_unit->addItem(unit->symbol, unit->symbol);
        connect(m_number, &QLineEdit::textChanged, this, &QuantityEditor::takeUnit);
        connect(m_unit, &QComboBox::currentIndexChanged, this, &FieldEditor::edited);
        connect(m_number, &QLineEdit::returnPressed, this, &FieldEditor::finished);
    }
    std::optional<Value> value() const override
    {
        const QString number = m_number->text().trimmed();
        if (number.isEmpty())
            return std::nullopt;
        // A unit that was typed and is not known here is told as it was typed, without the one in the box behind it.
        const bool hasUnit = std::any_of(number.begin(), number.end(), [](QChar one) { return one.isLetter(); });
        const QString unit = hasUnit ? QString() : m_unit->currentData().toString();
        const auto read = core::Quantity::read(number + u' ' + unit, m_dimension);
        return read ? read->text() : number + (unit.isEmpty() ? unit : u' ' + unit);
    }
    void setValue(const Value &value) override
    {
        if (value.string())
            m_number->setText(*value.string());
    }
    void offerUnit(const QString &unit) override
    {
        if (m_unit->currentData().toString() != m_offered)
            return;
        m_unit->setCurrentIndex(std::max(0, m_unit->findData(unit)));
        m_offered = m_unit->currentData().toString();
    }
    QWidget *control() override { return m_number; }

private:
    /// "12.5 lb" typed in one go: the unit moves to its box.
    void takeUnit(const QString &text)
    {
        if (const auto read = core::Quantity::read(text, m_dimension)) {
            const QSignalBlocker quiet(m_number);
            m_number->setText(read->value().text());
            m_unit->setCurrentIndex(m_unit->findData(read->unit()));
        }
        emit edited();
    }
    core::Dimension m_dimension;
    QLineEdit *m_number;
    QComboBox *m_unit;
    QString m_offered; ///< what the unit is while nobody chose one; empty before any was offered
};

class FlagEditor : public FieldEditor {
public:
    FlagEditor(const core::Field &field, QWidget *parent) : FieldEditor(parent), m_box(new QCheckBox(labelOf(field), this))
    {
        fill(this, m_box);
        finishAtReturn(m_box);
        connect(m_box, &QCheckBox::toggled, this, &FieldEditor::edited);
    }
    std::optional<Value> value() const override { return m_box->isChecked() ? std::optional<Value>(true) : std::nullopt; }
    void setValue(const Value &value) override { m_box->setChecked(value.boolean() && *value.boolean()); }
    QWidget *control() override { return m_box; }

private:
    QCheckBox *m_box;
};

/// Choices, people, tools, units, interfaces: words on the screen, the stable text in the entry.
class ChoiceEditor : public FieldEditor {
public:
    ChoiceEditor(const core::Field &field, const core::Register &reg, const core::JobState *job, const Seed &seed, QWidget *parent)
        : FieldEditor(parent), m_box(new QComboBox(this))
    {
        fill(this, m_box);
        tellName(*m_box, labelOf(field));
        m_box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        m_box->setMinimumContentsLength(16);
        m_box->addItem(field.needed == core::Needed::Always ? tr("Choose …") : tr("None"), QString());
        addAll(field, reg, job, seed);
        finishAtReturn(m_box);
        connect(m_box, &QComboBox::currentIndexChanged, this, &FieldEditor::edited);
    }
    std::optional<Value> value() const override
    {
        const QString text = m_box->currentData().toString();
        return text.isEmpty() ? std::nullopt : std::optional<Value>(text);
    }
    void setValue(const Value &value) override
    {
        const int at = value.string() ? m_box->findData(*value.string()) : -1;
        if (at >= 0)
            m_box->setCurrentIndex(at);
    }
    QWidget *control() override { return m_box; }

private:
    void addAll(const core::Field &field, const core::Register &reg, const core::JobState *job, const Seed &seed)
    {
        switch (field.type) {
        case FieldType::Person:
            for (const auto &[id, person] : reg.people)
                m_box->addItem(tr("%1 (%2)").arg(person.name, id.text()), id.text());
            break;
        case FieldType::Tool:
            for (const auto &[id, tool] : reg.tools) {
                if (!tool.withdrawn)
                    m_box->addItem(id.text() + u' ' + tool.name, id.text());
            }
            break;
        case FieldType::Unit:
            for (const core::Unit *unit : core::unitsFor(field))
                m_box->addItem(unit->symbol, unit->symbol);
            break;
        case FieldType::Interface:
            for (const core::InterfaceState &item : job ? job->items : core::Series<core::InterfaceState>())
                m_box->addItem(itemInWords(item), item.listed.id.text());
            break;
        case FieldType::Job:
            for (const JobChoice &choice : seed.jobs)
                m_box->addItem(choice.words, choice.ledger);
            break;
        default:
            for (const QLatin1String choice : field.choices)
                m_box->addItem(choiceInWords(QString(choice)), QString(choice));
        }
    }
    QComboBox *m_box;
};

class PeopleEditor : public FieldEditor {
public:
    PeopleEditor(const core::Field &field, const core::Register &reg, QWidget *parent) : FieldEditor(parent), m_list(new QListWidget(this))
    {
        fill(this, m_list);
        m_list->setAccessibleName(labelOf(field));
        for (const auto &[id, person] : reg.people) {
            auto *row = new QListWidgetItem(tr("%1 (%2)").arg(person.name, id.text()), m_list);
            row->setData(Qt::UserRole, id.text());
            row->setFlags(Qt::ItemIsEnabled | Qt::ItemIsUserCheckable | Qt::ItemIsSelectable);
            row->setCheckState(Qt::Unchecked);
        }
        m_list->setMaximumHeight(fontMetrics().height() * 8);
        finishAtReturn(m_list);
        connect(m_list, &QListWidget::itemChanged, this, &FieldEditor::edited);
    }
    std::optional<Value> value() const override
    {
        std::vector<QString> ids;
        for (int row = 0; row < m_list->count(); ++row) {
            if (m_list->item(row)->checkState() == Qt::Checked)
                ids.push_back(m_list->item(row)->data(Qt::UserRole).toString());
        }
        return ids.empty() ? std::nullopt : std::optional<Value>(core::json::arrayOf(ids));
    }
    void setValue(const Value &value) override
    {
        for (int row = 0; row < m_list->count(); ++row) {
            const Value id = m_list->item(row)->data(Qt::UserRole).toString();
            const auto *array = value.array();
            const bool isIn = array && std::find(array->begin(), array->end(), id) != array->end();
            m_list->item(row)->setCheckState(isIn ? Qt::Checked : Qt::Unchecked);
        }
    }
    QWidget *control() override { return m_list; }

private:
    QListWidget *m_list;
};

/// Each statement with a box of its own, as large as a finger; none is ticked beforehand, and none ticks them all.
class StatementsEditor : public FieldEditor {
public:
    StatementsEditor(const std::vector<QString> &statements, QWidget *parent) : FieldEditor(parent), m_statements(statements)
    {
        auto *rows = new QGridLayout(this);
        rows->setContentsMargins(0, 0, 0, 0);
        rows->setColumnStretch(1, 1);
        for (int row = 0; row < static_cast<int>(statements.size()); ++row) {
            const QString &statement = statements[static_cast<std::size_t>(row)];
            auto *box = new QCheckBox(this);
            box->setObjectName(QStringLiteral("statement.%1").arg(row));
            box->setAccessibleName(statement);
            box->setMinimumSize(touchHeight(fontMetrics()), touchHeight(fontMetrics()));
            auto *words = new QLabel(statement, this);
            words->setWordWrap(true);
            words->setBuddy(box);
            rows->addWidget(box, row, 0, Qt::AlignTop);
            rows->addWidget(words, row, 1, Qt::AlignVCenter);
            finishAtReturn(box);
            connect(box, &QCheckBox::toggled, this, &FieldEditor::edited);
            m_boxes.push_back(box);
        }
        if (!m_boxes.empty())
            setFocusProxy(m_boxes.front());
    }
    std::optional<Value> value() const override
    {
        std::vector<QString> ticked;
        for (std::size_t i = 0; i < m_boxes.size(); ++i) {
            if (m_boxes[i]->isChecked())
                ticked.push_back(m_statements[i]);
        }
        return ticked.empty() ? std::nullopt : std::optional<Value>(core::json::arrayOf(ticked));
    }
    void setValue(const Value &value) override
    {
        const auto *array = value.array();
        for (std::size_t i = 0; i < m_boxes.size(); ++i)
            m_boxes[i]->setChecked(array && std::find(array->begin(), array->end(), Value(m_statements[i])) != array->end());
    }
    QWidget *control() override { return m_boxes.empty() ? static_cast<QWidget *>(this) : m_boxes.front(); }

private:
    std::vector<QString> m_statements;
    std::vector<QCheckBox *> m_boxes;
};

} // namespace

bool FieldEditor::eventFilter(QObject *watched, QEvent *event)
{
    const auto *key = event->type() == QEvent::KeyPress ? static_cast<QKeyEvent *>(event) : nullptr;
    if (!key || (key->key() != Qt::Key_Return && key->key() != Qt::Key_Enter) || key->isAutoRepeat())
        return QWidget::eventFilter(watched, event);
    emit finished();
    return true;
}

FieldEditor *FieldEditor::make(const core::Field &field, const core::Register &reg, const core::JobState *job, const Seed &seed, QWidget *parent)
{
    switch (field.type) {
    case FieldType::Text:
    case FieldType::Integer:
    case FieldType::Date:
    case FieldType::Moment:
    case FieldType::Decimal:
    case FieldType::Texts:
    case FieldType::Interfaces: return new LineEditor(field, parent);
    case FieldType::Flag: return new FlagEditor(field, parent);
    case FieldType::Unit:
    case FieldType::Choice:
    case FieldType::Person:
    case FieldType::Interface:
    case FieldType::Tool:
    case FieldType::Job: return new ChoiceEditor(field, reg, job, seed, parent);
    case FieldType::Quantity: return new QuantityEditor(field, parent);
    case FieldType::Statements: return seed.statements.empty() ? nullptr : new StatementsEditor(seed.statements, parent);
    case FieldType::People: return new PeopleEditor(field, reg, parent);
    case FieldType::Digest:
    case FieldType::DigestElsewhere:
    case FieldType::PublicKey: return nullptr;
    case FieldType::Records: return field.columns.empty() ? nullptr : new LinesEditor(field, parent);
    }
    Q_UNREACHABLE();
}

} // namespace desktop
