// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <optional>

#include "core/register/register.hpp"

class QComboBox;

namespace desktop {

/// Names a person by id or name, typed, scanned from a badge or picked from the list. Nobody is ever guessed: a text that
/// fits two people fits nobody.
class PersonField : public QWidget {
    Q_OBJECT

public:
    /// The label is what a screen reader says of it.
    PersonField(const core::Register &reg, const QString &label, QWidget *parent = nullptr);

    std::optional<core::PersonId> person() const;

signals:
    void edited();
    /// Return was pressed and a person is named.
    void finished();

private:
    QComboBox *m_box;
    std::vector<core::Person> m_people;
};

/// Who is meant by a text: the id or the whole name, else the only one whose id or a part of whose name begins with it.
std::optional<core::PersonId> personMeant(const QString &text, const std::vector<core::Person> &people);

} // namespace desktop
