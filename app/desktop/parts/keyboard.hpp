// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <Qt>

class QWidget;

namespace desktop {

/// Gives the keyboard to the control that takes it for this widget: itself, or its focus proxy. Not by QWidget::setFocus() on the
/// widget itself, after which Qt tells a screen reader that the keyboard is at the widget around the control, which has no name.
void giveKeyboard(QWidget &to, Qt::FocusReason reason = Qt::OtherFocusReason);

} // namespace desktop
