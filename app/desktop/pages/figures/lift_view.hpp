// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <optional>

#include "app/picture/lift_layout.hpp"

namespace desktop {

/// The picture of a lift, in the window's colours and font. What it says is read out as its description.
class LiftView : public QWidget {
    Q_OBJECT

public:
    explicit LiftView(QWidget *parent = nullptr);
    void show(const std::optional<picture::Lift> &lift);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    picture::LiftLayout layOut() const;
    std::optional<picture::Lift> m_lift;
};

} // namespace desktop
