// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFrame>

#include <vector>

#include "core/job/state.hpp"

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace desktop {

/// A row of the list: the words of a signed mark, or a draft.
struct MarkRow {
    core::PhotoMark mark;
    QString signedBy; ///< empty for a draft
};

/// The marks of one photo with their words: those that are signed, and drafts that can be worded, taken away, and signed together.
class MarkPanel : public QFrame {
    Q_OBJECT

public:
    explicit MarkPanel(QWidget *parent = nullptr);

    /// `whyNot` is why marks cannot be signed on it now; empty when they can.
    void show(const QString &photo, const std::vector<MarkRow> &rows, const QString &whyNot);
    bool isMarking() const;
    void stopMarking();
    /// Asks for the words of the draft of that number.
    void askWords(qint64 number);

signals:
    void markingToggled(bool isMarking);
    void worded(qint64 number, const QString &what);
    /// Return was pressed in the words.
    void wordsDone();
    void removeWanted(qint64 number);
    void signWanted();

private:
    const MarkRow *current() const;
    void chooseNumber(qint64 number);
    void judge();

    std::vector<MarkRow> m_rows;
    QString m_whyNot;
    QListWidget *m_list;
    QLineEdit *m_words;
    QPushButton *m_place;
    QPushButton *m_remove;
    QPushButton *m_sign;
    QLabel *m_reason;
};

} // namespace desktop
