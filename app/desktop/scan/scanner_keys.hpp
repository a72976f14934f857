// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QElapsedTimer>
#include <QKeyEvent>
#include <QObject>
#include <QPointer>
#include <QTimer>

#include <functional>
#include <memory>
#include <vector>

namespace desktop {

/// Tells what a hand scanner types from what a hand types, anywhere in one window: characters faster than a hand, ended by Return.
///
/// Each character is held back until the next one or until it is too late for one, so that the first letter of a scan never begins an action.
/// What turns out to be typed by a hand is then delivered as it came, where it was meant for. Fields for secrets, other windows (sheets,
/// questions) and menus are left alone: they get what is typed at once.
class ScannerKeys : public QObject {
    Q_OBJECT

public:
    enum class Focus { OnText, Elsewhere };

    /// Told what was scanned; answers whether it is done with. If not, a field of text gets it as if it had been typed, and Return behind it.
    using Take = std::function<bool(const QString &text, Focus focus)>;

    /// The window must outlive it.
    ScannerKeys(QWidget &window, Take take, QObject *parent);

    /// In milliseconds from one key to the next. An assumption: scanners that type send a character every 1 to 20 ms, and nobody types four
    /// characters and Return at 35 ms each, which would be more than 300 words a minute.
    static constexpr int longestGap = 35;
    /// In characters. Shorter ones are struck together by a hand that slips.
    static constexpr qsizetype shortestScan = 4;

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    struct Held {
        std::unique_ptr<QKeyEvent> event;
        QPointer<QWidget> receiver;
    };
    bool filterPress(QWidget &receiver, const QKeyEvent &key);
    bool filterRelease(QWidget &receiver, const QKeyEvent &key);
    bool isInTime(const QKeyEvent &key) const;
    bool endsScan(const QKeyEvent &key) const;
    void hold(QWidget &receiver, const QKeyEvent &key);
    void tooLate();
    void deliver();
    void forget();

    QWidget &m_window;
    Take m_take;
    std::vector<Held> m_held;
    QString m_text; ///< that the held keys type
    QTimer m_timer;
    bool m_isLastCall = false;  ///< the gap is over; only keys that are on their way still count
    bool m_isDelivering = false;
    quint64 m_lastStamp = 0;    ///< of the last press, by the window system's clock
    QElapsedTimer m_sinceLast;
};

} // namespace desktop
