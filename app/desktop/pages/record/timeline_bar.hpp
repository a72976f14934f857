// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include "core/register/register.hpp"
#include "core/reports/timeline_filter.hpp"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace desktop {

/// What of the timeline is looked for: words, a person, a kind of entry, a zone, what was struck; all of it together. What was chosen stays while
/// the job does. Ctrl+F leads to the words, Escape shows every entry again.
class TimelineBar : public QWidget {
    Q_OBJECT

public:
    explicit TimelineBar(QWidget *parent = nullptr);

    /// Offers what the job has to choose from; what is chosen stays where it is still offered.
    void offer(const core::JobState &job, const core::Register &reg);
    core::TimelineFilter filter() const;
    void clear();
    /// So many entries fit, of so many.
    void showCount(std::size_t fitting, std::size_t all);

signals:
    void changed();

private:
    QComboBox *makeChoice(const char *name, const QString &accessible);

    QLineEdit *m_words;
    QComboBox *m_person;
    QComboBox *m_kind;
    QComboBox *m_zone;
    QCheckBox *m_struck;
    QLabel *m_count;
    QPushButton *m_clear;
    std::optional<core::TimelineChoices> m_offered;
};

} // namespace desktop
