// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/labels.hpp"

#include <QLabel>
#include <QLayout>
#include <QPushButton>

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

QPushButton *makeButton(const QString &text, const char *role, QWidget *parent)
{
    auto *button = new QPushButton(text, parent);
    button->setProperty("role", QString::fromLatin1(role));
    button->setAutoDefault(false);
    button->setDefault(false);
    return button;
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
