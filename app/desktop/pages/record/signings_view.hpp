// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <optional>

#include "app/picture/signings_layout.hpp"

namespace desktop {

/// Who signed what when, in the window's colours and font. A mark is chosen by a click or with the arrow keys; Return opens its entry.
class SigningsView : public QWidget {
    Q_OBJECT

public:
    explicit SigningsView(QWidget *parent = nullptr);
    void show(core::Signings signings);
    /// The entry whose mark is chosen.
    std::optional<qint64> chosen() const { return m_chosen; }

signals:
    void chosenChanged();
    void opened(qint64 seq);

protected:
    void paintEvent(QPaintEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    picture::SigningLayout layOut() const;
    void choose(std::optional<qint64> seq);
    void step(int by);
    core::Signings m_signings;
    std::optional<qint64> m_chosen;
};

} // namespace desktop
