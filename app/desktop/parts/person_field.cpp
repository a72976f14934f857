// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/person_field.hpp"

#include <QComboBox>
#include <QCompleter>
#include <QHBoxLayout>
#include <QLineEdit>

#include "app/desktop/parts/labels.hpp"

namespace desktop {

namespace {

QString entryOf(const core::Person &person) { return person.name + QStringLiteral(" (") + person.id.text() + u')'; }

bool begins(const core::Person &person, const QString &text)
{
    if (person.id.text().startsWith(text, Qt::CaseInsensitive))
        return true;
    for (const QString &part : person.name.split(u' ')) {
        if (part.startsWith(text, Qt::CaseInsensitive))
            return true;
    }
    return person.name.startsWith(text, Qt::CaseInsensitive);
}

} // namespace

std::optional<core::PersonId> personMeant(const QString &typed, const std::vector<core::Person> &people)
{
    const QString text = typed.trimmed();
    if (text.isEmpty())
        return std::nullopt;
    std::optional<core::PersonId> found;
    for (const core::Person &person : people) {
        if (person.id.text().compare(text, Qt::CaseInsensitive) == 0 || entryOf(person) == text)
            return person.id;
    }
    for (const core::Person &person : people) {
        if (!begins(person, text))
            continue;
        if (found)
            return std::nullopt;
        found = person.id;
    }
    return found;
}

PersonField::PersonField(const core::Register &reg, const QString &label, QWidget *parent) : QWidget(parent), m_box(new QComboBox(this))
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_box);
    setFocusProxy(m_box);
    m_box->setEditable(true);
    m_box->setInsertPolicy(QComboBox::NoInsert);
    tellName(*m_box, label);
    for (const auto &[id, person] : reg.people) {
        m_people.push_back(person);
        m_box->addItem(entryOf(person));
    }
    m_box->setCurrentIndex(-1);
    m_box->clearEditText();
    m_box->lineEdit()->setAccessibleName(label); // the box does not pass its own on
    m_box->lineEdit()->setPlaceholderText(tr("Name, id or badge"));
    m_box->completer()->setFilterMode(Qt::MatchContains);
    m_box->completer()->setCompletionMode(QCompleter::PopupCompletion);
    connect(m_box, &QComboBox::editTextChanged, this, &PersonField::edited);
    connect(m_box->lineEdit(), &QLineEdit::returnPressed, this, [this] {
        if (person())
            emit finished();
    });
}

std::optional<core::PersonId> PersonField::person() const { return personMeant(m_box->currentText(), m_people); }

} // namespace desktop
