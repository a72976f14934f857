// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QScrollArea>

#include "app/desktop/job_feed.hpp"
#include "core/measure/working.hpp"

class QLabel;
class QVBoxLayout;

namespace desktop {

class LiftView;

/// One lift, servicing or weight change with all that stands behind it: the picture of a lift, the cautions, each step of the working,
/// the lines for the weight record, the sources.
class FigureCard : public QScrollArea {
    Q_OBJECT

public:
    explicit FigureCard(JobFeed &feed, QWidget *parent = nullptr);
    /// The figure of that entry, or nothing.
    void show(const core::JobFigure *figure);

private:
    void addWorking(const core::measure::Working &working);
    void addStep(const core::measure::WorkingStep &step);
    void addWeightRecord(const core::JobFigure &figure);
    QLabel *add(const QString &text, const char *role);

    JobFeed &m_feed;
    QLabel *m_title;
    QLabel *m_about;
    QLabel *m_answer;
    LiftView *m_lift;
    QLabel *m_cautions;
    QVBoxLayout *m_below;
    QLabel *m_governs;
};

} // namespace desktop
