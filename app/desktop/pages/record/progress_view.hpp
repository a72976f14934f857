// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <optional>

#include "app/picture/progress_layout.hpp"

namespace desktop {

/// How many interfaces were loose over time: the whole job in bold, and beside it a zone or a person as a thin dashed line.
/// The accessible description says the same in words.
class ProgressView : public QWidget {
    Q_OBJECT

public:
    explicit ProgressView(QWidget *parent = nullptr);
    void show(core::Progress progress);
    /// Puts a line beside the whole job, or none.
    void showBeside(const std::optional<core::ProgressLine> &line);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    void describe();
    std::optional<core::Progress> m_progress;
    std::optional<core::ProgressLine> m_beside;
};

} // namespace desktop
