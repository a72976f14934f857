// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/calculator/calculation_form.hpp"

#include <QCoreApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/pages/calculator/worked_out.hpp"
#include "app/desktop/parts/field_editor.hpp"
#include "app/desktop/parts/field_form.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/words.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

QString titleOf(const core::Calculation &calculation) { return QCoreApplication::translate("Calculation", calculation.title); }
QString summaryOf(const core::Calculation &calculation) { return QCoreApplication::translate("Calculation", calculation.summary); }

namespace {

/// A calculation shows all of its fields at once: none of them waits under "More".
Seed seedOf(const core::Calculation &calculation)
{
    Seed seed;
    for (const core::Field &field : calculation.fields)
        seed.probe.set(QString(field.name), QString());
    return seed;
}

/// Tools and people are no part of a calculation.
const core::Register &nobody()
{
    static const core::Register none;
    return none;
}

} // namespace

CalculationForm::CalculationForm(const core::Calculation &calculation, QWidget *parent) : QWidget(parent), m_calculation(calculation)
{
    auto *outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto *scroll = m_scroll = new QScrollArea(this);
    scroll->setAccessibleName(tr("Fields"));
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto *inside = new QWidget(scroll);
    m_place = new QVBoxLayout(inside);
    m_place->setContentsMargins(0, 0, fontMetrics().averageCharWidth() * 2, 0);
    m_place->addStretch();
    scroll->setWidget(inside);
    inside->installEventFilter(this);
    outer->addWidget(scroll, 1);
    makeForm();
    fitWidth();
}

void CalculationForm::makeForm()
{
    delete m_form;
    m_form = new FieldForm({m_calculation.fields, {seedOf(m_calculation)}, {}, nobody(), nullptr, m_calculation.tables}, this);
    m_place->insertWidget(m_place->count() - 1, m_form);
    for (const core::Field &field : m_calculation.fields) {
        for (QLineEdit *line : m_form->findChild<FieldEditor *>(QString(field.name))->findChildren<QLineEdit *>()) {
            line->setMinimumWidth(fontMetrics().averageCharWidth() * 18);
            if (field.needed == core::Needed::IfKnown)
                line->setPlaceholderText(tr("May stay empty"));
        }
    }
    connect(m_form, &FieldForm::edited, this, &CalculationForm::edited);
    connect(m_form, &FieldForm::tablesWanted, this, &CalculationForm::tablesWanted);
}

/// What scrolls up and down does not scroll sideways. How wide its fields and buttons are is known once the style has been at them.
void CalculationForm::fitWidth()
{
    m_scroll->setMinimumWidth(m_scroll->widget()->minimumSizeHint().width() + m_scroll->verticalScrollBar()->sizeHint().width() + 2 * m_scroll->frameWidth());
}

bool CalculationForm::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::LayoutRequest)
        fitWidth();
    return QWidget::eventFilter(watched, event);
}

core::json::Object CalculationForm::body() const { return m_form->bodies().front(); }

void CalculationForm::fill(const QString &field, const QString &value) { m_form->fill(field, value); }

void CalculationForm::clear()
{
    makeForm();
    emit edited();
}

} // namespace desktop
