// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include "core/calculations/calculation.hpp"

class QScrollArea;
class QVBoxLayout;

namespace desktop {

class FieldForm;

/// The fields of one calculation, with nothing filled in beforehand.
class CalculationForm : public QWidget {
    Q_OBJECT

public:
    CalculationForm(const core::Calculation &calculation, QWidget *parent);

    const core::Calculation &calculation() const { return m_calculation; }
    core::json::Object body() const;
    /// Puts a value into a field as if it had been typed.
    void fill(const QString &field, const QString &value);
    void clear();

signals:
    void edited();
    /// The tables of a field are wanted.
    void tablesWanted(const QString &field);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void makeForm();
    void fitWidth();

    const core::Calculation &m_calculation;
    QScrollArea *m_scroll;
    QVBoxLayout *m_place;
    FieldForm *m_form = nullptr;
};

} // namespace desktop
