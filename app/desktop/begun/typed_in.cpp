// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/begun/typed_in.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>

#include <algorithm>

#include "app/desktop/parts/field_form.hpp"

namespace desktop {

namespace {

using core::json::Object;
using core::json::Value;

/// Those controls of that sort which have a name and are no part of a form of fields.
template <class Control>
std::vector<Control *> besides(const QWidget &whole)
{
    std::vector<Control *> found;
    for (Control *control : whole.findChildren<Control *>()) {
        bool isOfFields = control->objectName().isEmpty() || control->objectName().startsWith(QLatin1String("qt_"));
        for (const QWidget *around = control->parentWidget(); around && !isOfFields; around = around->parentWidget()) {
            isOfFields = qobject_cast<const FieldForm *>(around) != nullptr;
            if (around == &whole)
                break;
        }
        if (!isOfFields)
            found.push_back(control);
    }
    return found;
}

std::vector<QCheckBox *> boxesBeside(const QWidget &whole)
{
    std::vector<QCheckBox *> boxes = besides<QCheckBox>(whole);
    boxes.erase(std::remove_if(boxes.begin(), boxes.end(), [](const QCheckBox *box) { return box->property(confirms).toBool(); }), boxes.end());
    return boxes;
}

bool isSecret(const QLineEdit &line) { return line.echoMode() != QLineEdit::Normal || (line.inputMethodHints() & Qt::ImhSensitiveData) != 0; }

} // namespace

Object typedIn(const QWidget &whole)
{
    Object typed;
    for (const QComboBox *box : besides<QComboBox>(whole))
        typed.set(box->objectName(), box->currentText());
    for (const QCheckBox *box : boxesBeside(whole))
        typed.set(box->objectName(), box->isChecked());
    for (const QLineEdit *line : besides<QLineEdit>(whole)) {
        if (!isSecret(*line))
            typed.set(line->objectName(), line->text());
    }
    for (const QPlainTextEdit *text : besides<QPlainTextEdit>(whole))
        typed.set(text->objectName(), text->toPlainText());
    if (const auto *fields = qobject_cast<const FieldForm *>(&whole))
        fields->addTyped(typed);
    for (const FieldForm *fields : whole.findChildren<FieldForm *>())
        fields->addTyped(typed);
    return typed;
}

void typeInto(QWidget &whole, const Object &typed)
{
    const auto textOf = [&](const QWidget &control) {
        const Value *value = typed.find(control.objectName());
        return value ? value->string() : nullptr;
    };
    // What is chosen may fill in the rest, so it comes first.
    for (QComboBox *box : besides<QComboBox>(whole)) {
        if (const QString *text = textOf(*box))
            box->setCurrentText(*text);
    }
    for (QCheckBox *box : boxesBeside(whole)) {
        const Value *value = typed.find(box->objectName());
        if (value && value->boolean())
            box->setChecked(*value->boolean());
    }
    for (QLineEdit *line : besides<QLineEdit>(whole)) {
        if (const QString *text = isSecret(*line) ? nullptr : textOf(*line))
            line->setText(*text);
    }
    for (QPlainTextEdit *edit : besides<QPlainTextEdit>(whole)) {
        if (const QString *text = textOf(*edit))
            edit->setPlainText(*text);
    }
    if (auto *fields = qobject_cast<FieldForm *>(&whole))
        fields->typeAgain(typed);
    for (FieldForm *fields : whole.findChildren<FieldForm *>())
        fields->typeAgain(typed);
}

bool isAnythingTyped(const QWidget &page)
{
    const auto isOfPage = [&](const QWidget *field) { return field->window() == page.window() && !field->property(losesNothing).toBool(); };
    const QList<QLineEdit *> lines = page.findChildren<QLineEdit *>();
    const QList<QPlainTextEdit *> texts = page.findChildren<QPlainTextEdit *>();
    return std::any_of(lines.begin(), lines.end(), [&](const QLineEdit *line) { return isOfPage(line) && line->isModified() && !line->text().isEmpty(); })
           || std::any_of(texts.begin(), texts.end(), [&](const QPlainTextEdit *text) { return isOfPage(text) && text->document()->isModified() && !text->document()->isEmpty(); });
}

} // namespace desktop
