// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/field_form.hpp"

#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/field_editor.hpp"
#include "app/desktop/parts/keyboard.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/mid_sentence.hpp"
#include "app/desktop/parts/words.hpp"

namespace desktop {

namespace {

bool isIn(const std::vector<QLatin1String> &names, QLatin1String name) { return std::find(names.begin(), names.end(), name) != names.end(); }

bool isExpected(const Seed &seed, const QString &name) { return seed.body.contains(name) || seed.probe.contains(name); }

QFormLayout *formIn(QVBoxLayout *column)
{
    auto *form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->setRowWrapPolicy(QFormLayout::DontWrapRows);
    form->setLabelAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    column->addLayout(form);
    return form;
}

/// Empty text for nothing. Digits as they were typed: there may be more of them than an entry takes.
core::json::Value typedIn(const FieldEditor &editor)
{
    const core::json::Value value = editor.value().value_or(QString());
    return value.integer() ? core::json::Value(QString::number(*value.integer())) : value;
}

/// A table of lines takes the whole width, under its label; everything else stands beside it.
void addFieldRow(QFormLayout *form, const core::Field &field, const QString &label, FieldEditor *editor)
{
    if (field.type != core::FieldType::Records)
        return addRow(form, label, editor);
    auto *words = new QLabel(label, editor->parentWidget());
    words->setBuddy(editor);
    form->addRow(words);
    form->addRow(editor);
}

} // namespace

FieldForm::FieldForm(const Plan &plan, QWidget *parent) : QWidget(parent), m_seeds(plan.seeds)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto *usual = formIn(column);
    auto *more = m_more = new QPushButton(tr("&More details"), this);
    more->setProperty("role", "link");
    more->setCheckable(true);
    more->setAutoDefault(false);
    auto *seldomArea = new QWidget(this);
    auto *seldomColumn = new QVBoxLayout(seldomArea);
    seldomColumn->setContentsMargins(0, 0, 0, 0);
    auto *seldom = formIn(seldomColumn);

    const bool isSingle = m_seeds.size() == 1;
    if (!isSingle) {
        for (std::size_t i = 0; i < m_seeds.size(); ++i) {
            for (const core::Field &field : plan.fields) {
                if (isIn(plan.each, field.name) && isExpected(m_seeds[i], field.name))
                    addEach(plan, field, i, usual);
            }
        }
    }
    for (const core::Field &field : plan.fields) {
        if (isSingle || !isIn(plan.each, field.name))
            addShared(plan, field, usual, seldom);
    }
    column->addWidget(more, 0, Qt::AlignLeft);
    column->addWidget(seldomArea);
    column->addStretch();
    seldomArea->hide();
    more->setVisible(seldom->rowCount() > 0);
    connect(more, &QPushButton::toggled, seldomArea, &QWidget::setVisible);
    shareUnits();
}

void FieldForm::addShared(const Plan &plan, const core::Field &field, QFormLayout *usual, QFormLayout *seldom)
{
    const QString name(field.name);
    const auto expects = [&](const Seed &seed) { return isExpected(seed, name); };
    if (!m_seeds.empty() && !m_seeds.front().asked.empty() && !isIn(m_seeds.front().asked, field.name))
        return; // what it is filled with stands
    const bool isUsual = field.needed == core::Needed::Always || std::any_of(m_seeds.begin(), m_seeds.end(), expects);
    FieldEditor *editor = FieldEditor::make(field, plan.reg, plan.job, m_seeds.empty() ? Seed() : m_seeds.front(), this);
    if (!editor)
        return;
    if (!m_seeds.empty()) {
        if (const core::json::Value *value = m_seeds.front().body.find(name))
            editor->setValue(*value);
    }
    editor->setObjectName(name);
    if (std::any_of(plan.tables.begin(), plan.tables.end(), [&](const core::FromTable &from) { return from.field == field.name; }))
        addTableButton(*editor, name, labelOf(field));
    addFieldRow(isUsual ? usual : seldom, field, labelOf(field), editor);
    bind(editor, {editor, name, labelOf(field), std::nullopt, isUsual, field.type == core::FieldType::Statements});
}

void FieldForm::addTableButton(FieldEditor &editor, const QString &name, const QString &label)
{
    QPushButton *button = makeButton(tr("Table …"), "link", &editor);
    button->setObjectName(QStringLiteral("table.") + name);
    button->setAccessibleName(tr("Look up: %1").arg(label));
    button->setToolTip(tr("Published figures, each with its source. Nothing is filled in unasked."));
    editor.layout()->addWidget(button);
    connect(button, &QPushButton::clicked, this, [this, name] { emit tablesWanted(name); });
}

/// The style's least width for any button stands before what the text of this one takes, so a layout would cut it.
void FieldForm::showEvent(QShowEvent *event)
{
    for (QPushButton *button : findChildren<QPushButton *>()) {
        if (button->objectName().startsWith(QStringLiteral("table.")))
            button->setMinimumWidth(button->sizeHint().width());
    }
    QWidget::showEvent(event);
}

void FieldForm::addEach(const Plan &plan, const core::Field &field, std::size_t seed, QFormLayout *into)
{
    const Seed &one = m_seeds[seed];
    const QString name(field.name);
    FieldEditor *editor = FieldEditor::make(field, plan.reg, plan.job, one, this);
    if (!editor)
        return;
    if (!one.part.isEmpty() && one.body.contains(name)) { // the part itself, fixed: "fastener 3"
        delete editor;
        return;
    }
    if (const core::json::Value *value = one.body.find(name))
        editor->setValue(*value);
    editor->setObjectName(QStringLiteral("%1.%2").arg(name).arg(seed));
    const QString of = one.part.isEmpty() ? one.subject.value_or(QString()) : tr("%1 %2").arg(one.subject.value_or(QString()), one.part);
    const QString label = tr("%1, %2").arg(of, midSentence(labelOf(field)));
    tellName(*editor->control(), label);
    addFieldRow(into, field, label, editor);
    bind(editor, {editor, name, label, seed, true, field.type == core::FieldType::Statements});
}

void FieldForm::bind(FieldEditor *editor, Bound bound)
{
    m_bound.push_back(std::move(bound));
    connect(editor, &FieldEditor::edited, this, &FieldForm::edited);
    connect(editor, &FieldEditor::finished, this, [this, editor] { goOn(editor); });
    connect(editor, &FieldEditor::heightChanged, this, &FieldForm::heightChanged);
}

/// A zero of the leads is in the unit of the reading beside it, unless somebody says otherwise.
void FieldForm::shareUnits()
{
    const auto chosen = std::find_if(m_bound.begin(), m_bound.end(), [](const Bound &bound) { return bound.name == QLatin1String("unit"); });
    for (const Bound &bound : m_bound) {
        const bool isShared = !m_seeds.empty() && std::any_of(m_seeds.front().inUnitOfReading.begin(), m_seeds.front().inUnitOfReading.end(), [&](QLatin1String name) { return name == bound.name; });
        if (!isShared || chosen == m_bound.end())
            continue;
        const auto offer = [unit = chosen->editor, quantity = bound.editor] {
            const auto value = unit->value();
            quantity->offerUnit(value && value->string() ? *value->string() : QString());
        };
        connect(chosen->editor, &FieldEditor::edited, bound.editor, offer);
        offer();
    }
}

void FieldForm::goOn(FieldEditor *from)
{
    bool isPast = false;
    for (const Bound &bound : m_bound) {
        if (isPast && bound.editor->isVisible()) {
            giveKeyboard(*bound.editor, Qt::TabFocusReason);
            return;
        }
        isPast = isPast || bound.editor == from;
    }
    emit finished();
}

std::vector<core::json::Object> FieldForm::bodies() const
{
    std::vector<core::json::Object> all;
    for (std::size_t i = 0; i < m_seeds.size(); ++i) {
        core::json::Object body = m_seeds[i].body;
        for (const Bound &bound : m_bound) {
            if (bound.seed && *bound.seed != i)
                continue;
            const auto value = bound.editor->value();
            if (value)
                body.set(bound.name, *value);
            else
                body.remove(bound.name);
        }
        all.push_back(std::move(body));
    }
    return all;
}

void FieldForm::fill(const QString &name, const core::json::Value &value)
{
    for (const Bound &bound : m_bound) {
        if (bound.name == name)
            bound.editor->setValue(value);
    }
}

void FieldForm::addTyped(core::json::Object &typed) const
{
    for (const Bound &bound : m_bound) {
        if (bound.isStated)
            continue;
        typed.set(bound.editor->objectName(), typedIn(*bound.editor));
    }
}

void FieldForm::typeAgain(const core::json::Object &typed)
{
    for (const Bound &bound : m_bound) {
        const core::json::Value *value = bound.isStated ? nullptr : typed.find(bound.editor->objectName());
        if (!value || *value == typedIn(*bound.editor))
            continue;
        bound.editor->setValue(*value);
        if (!bound.isNeeded)
            m_more->setChecked(true);
    }
}

QWidget *FieldForm::firstGap() const
{
    for (const Bound &bound : m_bound) {
        if (bound.isNeeded && !bound.editor->value())
            return bound.editor->control();
    }
    return nullptr;
}

QStringList FieldForm::gaps() const
{
    QStringList labels;
    for (const Bound &bound : m_bound) {
        if (bound.isNeeded && !bound.editor->value())
            labels << bound.label;
    }
    return labels;
}

} // namespace desktop
