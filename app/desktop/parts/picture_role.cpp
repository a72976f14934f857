// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/picture_role.hpp"

#include <QAccessibleWidget>
#include <QVariant>
#include <QWidget>

namespace desktop {

namespace {

constexpr const char *isPicture = "isPicture";

QAccessibleInterface *asPicture(const QString &, QObject *object)
{
    auto *widget = qobject_cast<QWidget *>(object);
    return widget && widget->property(isPicture).toBool() ? new QAccessibleWidget(widget, QAccessible::Graphic) : nullptr;
}

} // namespace

void tellPicture(QWidget &widget)
{
    QAccessible::installFactory(&asPicture); // a second time does nothing
    widget.setProperty(isPicture, true);
}

} // namespace desktop
