// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QColor>
#include <QPalette>
#include <QString>

#include "core/job/stage.hpp"

class QApplication;
class QWidget;

namespace desktop {

/// The stark ones are for eyes or screens that need more contrast: black and white, edges as strong as text.
enum class Shade { Light, Dark, StarkLight, StarkDark };

bool isDark(Shade shade);

/// What the person chose; System follows the desktop's own palette.
enum class Appearance { System, Light, Dark, StarkLight, StarkDark };

/// A palette is dark when its window is darker than its text, and stark when no two colours could stand further apart.
Shade shadeOf(const QPalette &palette);

/// The shade of the window that a widget stands in: a style sheet may give single widgets transparent roles.
Shade shadeAround(const QWidget *widget);

/// Every role set, so that nothing of the style's own weak contrasts is left. Text, selected text, placeholders, links and
/// buttons stand at 4.5:1 or better against what they lie on, disabled text at 3:1; edges of controls at 3:1 (WCAG 2.2,
/// 1.4.3 and 1.4.11). In the stark shades all text stands at 7:1 (1.4.6), disabled text and edges too.
QPalette paletteFor(Shade shade);

/// The colour of a stage, for text and glyphs, at 4.5:1 or better on Base and Window.
QColor stageColour(core::Stage stage, Shade shade);

/// For what is refused, rejected or loose; and for cautions.
QColor alarmColour(Shade shade);
QColor cautionColour(Shade shade);
/// Secondary text that must still be read: 4.5:1.
QColor quietColour(Shade shade);

/// Contrast of two opaque colours, 1 to 21. Source: WCAG 2.2, "contrast ratio" and "relative luminance".
double contrast(const QColor &a, const QColor &b);

/// Shapes and sizes in terms of the font, colours in terms of the palette.
QString styleSheetFor(Shade shade);

/// Gives the whole program its look. For System, asks the platform's palette which shade it is.
void applyAppearance(QApplication &app, Appearance appearance);

/// How many device-independent pixels a target needs to be hit with a thumb: at least 44 (WCAG 2.2, 2.5.5), more when the
/// font is large.
int touchHeight(const QFontMetrics &metrics);

} // namespace desktop
