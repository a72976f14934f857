// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/keyboard.hpp"

#include <QWidget>

namespace desktop {

void giveKeyboard(QWidget &to, Qt::FocusReason reason)
{
    QWidget *takes = &to;
    while (QWidget *proxy = takes->focusProxy())
        takes = proxy;
    takes->setFocus(reason);
}

} // namespace desktop
