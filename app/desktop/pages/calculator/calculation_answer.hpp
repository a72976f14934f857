// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QScrollArea>

#include "core/calculations/calculation.hpp"

class QLabel;

namespace desktop {

class RowTable;

/// The working of a calculation as somebody checks it with a pencil, or in words what is still to be filled in.
class CalculationAnswer : public QScrollArea {
    Q_OBJECT

public:
    explicit CalculationAnswer(QWidget *parent);

    /// Nothing can be worked out yet: these fields are empty.
    void showMissing(const QStringList &labels);
    /// What was typed cannot be read, or does not go together.
    void showFault(const QString &sentence);
    void showWorked(const core::Calculated &result);

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    void showText(QLabel *label, const QString &text);
    void hideWorking();
    /// Of a column: as wide as it has to be, and as it would like to be.
    struct Wish {
        int column;
        int least;
        int most;
    };
    int padding() const;
    std::vector<Wish> wishes() const;
    void fitColumns();
    void fitSteps();

    QLabel *m_state;  ///< empty, or a fault
    QLabel *m_workingHead;
    RowTable *m_steps;
    QLabel *m_verdict; ///< the word over the answer
    QLabel *m_answer;
    QLabel *m_recordHead;
    QLabel *m_record;
    QLabel *m_notesHead;
    QLabel *m_notes;
    QLabel *m_sourcesHead;
    QLabel *m_sources;
};

} // namespace desktop
