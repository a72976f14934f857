// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/labels.hpp"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLayout>
#include <QPushButton>
#include <QStyle>

#include <algorithm>

namespace desktop {

QLabel *makeLabel(const QString &text, const char *role, QWidget *parent)
{
    auto *label = new QLabel(text, parent);
    label->setProperty("role", QString::fromLatin1(role));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

void colourAs(QLabel *label, const char *outcome)
{
    label->setProperty("outcome", QString::fromLatin1(outcome));
    label->style()->unpolish(label); // a style sheet asks for properties only then
    label->style()->polish(label);
}

QString cautionsText(const QStringList &cautions)
{
    const QString point = QStringLiteral("• ");
    return cautions.size() < 2 ? cautions.join(QString()) : point + cautions.join(u'\n' + point);
}

QString asWritten(QString text) { return text.replace(QLatin1Char('&'), QLatin1String("&&")); }

QPushButton *makeButton(const QString &text, const char *role, QWidget *parent)
{
    auto *button = new QPushButton(text, parent);
    button->setProperty("role", QString::fromLatin1(role));
    button->setAutoDefault(false);
    button->setDefault(false);
    return button;
}

void addRow(QFormLayout *form, const QString &text, QWidget *control)
{
    auto *label = new QLabel(text, control->parentWidget());
    label->setBuddy(control);
    control->ensurePolished();
    const int line = control->fontMetrics().height() * 3;
    label->setMinimumHeight(std::min(control->sizeHint().height(), line));
    form->addRow(label, control);
}

void tellName(QWidget &control, const QString &name)
{
    control.setAccessibleName(name);
    if (qobject_cast<QComboBox *>(&control))
        control.setAccessibleDescription(name);
}

void clearLayout(QLayout *layout)
{
    while (QLayoutItem *item = layout->takeAt(0)) {
        if (QWidget *widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        } else if (QLayout *inner = item->layout()) {
            clearLayout(inner);
        }
        delete item;
    }
}

} // namespace desktop
