// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>

class QFormLayout;
class QLabel;
class QLayout;
class QPushButton;
class QWidget;

namespace desktop {

/// A label whose look the style sheet gives by role: title, heading, quiet, label, alarm, caution, refusal, count.
/// Text is plain, wraps, and can be copied.
QLabel *makeLabel(const QString &text, const char *role, QWidget *parent);

/// Gives a label the colour of how something came out: good, partly, bad. The colour says again what the text says already.
void colourAs(QLabel *label, const char *outcome);

/// Cautions as one text, a point each where there are several.
QString cautionsText(const QStringList &cautions);

/// A push button that Return never presses by itself. Role: main, link, page, or nothing.
/// A text that somebody typed, on a control that takes & for the letter of a key.
QString asWritten(QString text);
QPushButton *makeButton(const QString &text, const char *role, QWidget *parent);

/// Adds a labelled row whose label stands level with its control. `&` marks the mnemonic.
void addRow(QFormLayout *form, const QString &label, QWidget *control);

/// What a screen reader calls a control. A box to choose from is told twice, since Qt gives what is chosen for its name on Linux.
void tellName(QWidget &control, const QString &name);

/// Removes all widgets of a layout's children and the children themselves, now or when it is safe.
void clearLayout(QLayout *layout);

} // namespace desktop
