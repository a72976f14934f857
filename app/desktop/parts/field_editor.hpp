// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <optional>

#include "app/desktop/deeds.hpp"
#include "core/acts/act.hpp"
#include "core/job/state.hpp"
#include "core/register/register.hpp"

namespace desktop {

/// One member of a body, as a control that fits its type.
class FieldEditor : public QWidget {
    Q_OBJECT

public:
    /// The editor for a field; nullptr for what no person types (digests, keys, records without columns).
    /// The seed has the statements that a field of that type lets tick, and the jobs that one lets choose.
    static FieldEditor *make(const core::Field &field, const core::Register &reg, const core::JobState *job, const Seed &seed, QWidget *parent);

    /// What was typed, or nothing while it is empty. Half-typed values come out as text, so that the form's rule names them.
    virtual std::optional<core::json::Value> value() const = 0;
    virtual void setValue(const core::json::Value &value) = 0;
    /// The unit that a plain number is in from now on, until somebody chooses or types another; for quantities alone.
    virtual void offerUnit(const QString &) {}
    /// The control that takes the keyboard.
    virtual QWidget *control() = 0;

signals:
    void edited();
    /// Return was pressed: on to the next field.
    void finished();
    /// Lines came or went.
    void heightChanged();

protected:
    using QWidget::QWidget;
    /// Return in that control means finished(), where the control itself makes nothing of it.
    void finishAtReturn(QWidget *control) { control->installEventFilter(this); }
    bool eventFilter(QObject *watched, QEvent *event) override;
};

} // namespace desktop
