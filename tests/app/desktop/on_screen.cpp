// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/desktop/on_screen.hpp"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace {

QList<QWidget *> controlsOf(const QWidget &sheet, const QString &field)
{
    auto *control = named<QWidget>(sheet, field);
    return QList<QWidget *>{control} + control->findChildren<QWidget *>();
}

} // namespace

void typeInto(const QWidget &sheet, const QString &field, const QString &text)
{
    for (QWidget *one : controlsOf(sheet, field)) {
        if (auto *line = qobject_cast<QLineEdit *>(one)) {
            line->setText(text);
            return;
        }
        if (auto *edit = qobject_cast<QPlainTextEdit *>(one)) {
            edit->setPlainText(text);
            return;
        }
        auto *box = qobject_cast<QComboBox *>(one);
        if (!box)
            continue;
        if (box->isEditable()) {
            box->setEditText(text);
            return;
        }
        if (box->findData(text) < 0)
            qFatal("%s does not offer %s", qPrintable(field), qPrintable(text));
        box->setCurrentIndex(box->findData(text));
        return;
    }
    qFatal("nothing can be typed into %s", qPrintable(field));
}

QString shownIn(const QWidget &sheet, const QString &field)
{
    for (const QWidget *one : controlsOf(sheet, field)) {
        if (const auto *line = qobject_cast<const QLineEdit *>(one))
            return line->text();
        if (const auto *edit = qobject_cast<const QPlainTextEdit *>(one))
            return edit->toPlainText();
        if (const auto *box = qobject_cast<const QComboBox *>(one))
            return box->currentData().toString();
    }
    qFatal("nothing stands in %s", qPrintable(field));
}

QString readOn(const QWidget &widget)
{
    QStringList lines;
    for (const QLabel *label : widget.findChildren<QLabel *>())
        lines << label->text();
    return lines.join(u'\n');
}
