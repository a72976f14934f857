// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include "core/value/id.hpp"

/// The control of that name in a window or a page; the test ends where there is none.
template <class Widget>
Widget *named(const QWidget &in, const QString &name)
{
    auto *found = in.findChild<Widget *>(name);
    if (!found)
        qFatal("no widget %s", qPrintable(name));
    return found;
}

template <class Widget>
Widget *named(const QWidget &in, const char *name)
{
    return named<Widget>(in, QString::fromLatin1(name));
}

inline core::InterfaceId item(const char *id) { return *core::InterfaceId::parse(QString::fromLatin1(id)); }

/// Types into the line or text of that name, or into the one in the editor of that name; of a box with that name it chooses what has that value. The
/// test ends where there is no such field or no such choice.
void typeInto(const QWidget &sheet, const QString &field, const QString &text);

/// What stands there.
QString shownIn(const QWidget &sheet, const QString &field);

/// Everything that stands on labels, as somebody reads it.
QString readOn(const QWidget &widget);
