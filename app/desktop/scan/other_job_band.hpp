// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFrame>
#include <QPointer>

#include "app/desktop/scan/scanned.hpp"

class QLabel;
class QPushButton;

namespace desktop {

/// A band above the pages once the label of another job was scanned, with the button that opens that job. It takes the keyboard, so that Space is enough;
/// not Return, which some scanners type twice: nothing is opened unasked. Work goes on below it.
class OtherJobBand : public QFrame {
    Q_OBJECT

public:
    explicit OtherJobBand(QWidget *parent);
    void offer(const OtherJob &other);
    /// What was offered is done or not wanted. The keyboard goes back to where it was.
    void dismiss();

signals:
    void openWanted(const desktop::OtherJob &other);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    std::optional<OtherJob> m_offered;
    QPointer<QWidget> m_hadKeyboard;
    QLabel *m_words;
    QPushButton *m_open;
};

} // namespace desktop
