// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/scan/scanner_keys.hpp"

#include <QApplication>
#include <QLineEdit>
#include <QScopedValueRollback>

#include <utility>

namespace desktop {

namespace {

bool isSecret(const QWidget &widget)
{
    const auto *line = qobject_cast<const QLineEdit *>(&widget);
    return line && line->echoMode() != QLineEdit::Normal;
}

bool takesText(const QWidget *widget) { return widget && widget->isEnabled() && widget->testAttribute(Qt::WA_InputMethodEnabled); }

/// A character as a scanner types it: one that is seen, and no key of a shortcut.
bool isCharacter(const QKeyEvent &key)
{
    const Qt::KeyboardModifiers others = key.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier);
    return others == Qt::NoModifier && !key.isAutoRepeat() && key.text().size() == 1 && key.text().front().isPrint();
}

bool isReturn(const QKeyEvent &key) { return (key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter) && !key.isAutoRepeat(); }

/// Pressed for the sake of another key, which follows.
bool isShift(const QKeyEvent &key) { return key.key() == Qt::Key_Shift || key.key() == Qt::Key_CapsLock; }

} // namespace

ScannerKeys::ScannerKeys(QWidget &window, Take take, QObject *parent) : QObject(parent), m_window(window), m_take(std::move(take))
{
    m_timer.setSingleShot(true);
    m_timer.setTimerType(Qt::PreciseTimer);
    connect(&m_timer, &QTimer::timeout, this, &ScannerKeys::tooLate);
    QCoreApplication::instance()->installEventFilter(this);
}

bool ScannerKeys::eventFilter(QObject *watched, QEvent *event)
{
    // Whoever points elsewhere has typed to the end.
    if (!m_held.empty() && (event->type() == QEvent::MouseButtonPress || event->type() == QEvent::TouchBegin))
        deliver();
    const bool isKey = event->type() == QEvent::KeyPress || event->type() == QEvent::KeyRelease || event->type() == QEvent::ShortcutOverride;
    if (m_isDelivering || !isKey || !watched->isWidgetType())
        return false;
    auto &receiver = *static_cast<QWidget *>(watched);
    const auto &key = *static_cast<QKeyEvent *>(event);
    if (receiver.window() != &m_window || QApplication::activePopupWidget() || isSecret(receiver))
        return false;
    switch (event->type()) {
    case QEvent::KeyPress: return filterPress(receiver, key);
    case QEvent::KeyRelease: return filterRelease(receiver, key);
    default: break;
    }
    // The Return of a scan is no shortcut. Accepted, it comes as a key press.
    if (endsScan(key)) {
        event->accept();
        return true;
    }
    if (!isCharacter(key) && !isShift(key))
        deliver(); // before whatever the shortcut does
    return false;
}

bool ScannerKeys::filterPress(QWidget &receiver, const QKeyEvent &key)
{
    if (isShift(key))
        return false;
    if (endsScan(key)) {
        const Focus focus = takesText(&receiver) ? Focus::OnText : Focus::Elsewhere;
        const QString text = m_text;
        hold(receiver, key);
        auto held = std::exchange(m_held, {});
        forget();
        if (!m_take(text, focus) && focus == Focus::OnText) {
            m_held = std::move(held);
            deliver();
        }
        return true;
    }
    if (!isInTime(key))
        deliver();
    if (isCharacter(key)) {
        hold(receiver, key);
        return true;
    }
    deliver();
    return false;
}

/// What was pressed and is held has to be released behind it.
bool ScannerKeys::filterRelease(QWidget &receiver, const QKeyEvent &key)
{
    if (m_held.empty() || isShift(key))
        return false;
    m_held.push_back({std::unique_ptr<QKeyEvent>(key.clone()), &receiver});
    return true;
}

/// By the window system's clock where it has one: keys that waited while the program was busy would all seem to come at once.
bool ScannerKeys::isInTime(const QKeyEvent &key) const
{
    if (m_held.empty())
        return true;
    if (key.timestamp() != 0 && m_lastStamp != 0)
        return key.timestamp() - m_lastStamp <= longestGap;
    return m_sinceLast.elapsed() <= longestGap;
}

bool ScannerKeys::endsScan(const QKeyEvent &key) const { return isReturn(key) && m_text.size() >= shortestScan && isInTime(key); }

void ScannerKeys::hold(QWidget &receiver, const QKeyEvent &key)
{
    m_held.push_back({std::unique_ptr<QKeyEvent>(key.clone()), &receiver});
    if (isCharacter(key))
        m_text += key.text();
    m_lastStamp = key.timestamp();
    m_sinceLast.start();
    m_isLastCall = false;
    m_timer.start(longestGap);
}

/// One more turn of the event loop: the program may have been busy, and the next key may be waiting behind this timer.
void ScannerKeys::tooLate()
{
    if (std::exchange(m_isLastCall, true))
        deliver();
    else
        m_timer.start(0);
}

void ScannerKeys::deliver()
{
    auto held = std::exchange(m_held, {});
    forget();
    const QScopedValueRollback delivering(m_isDelivering, true);
    for (const Held &one : held) {
        // An action that the first key began may have opened a sheet or taken a page away.
        QWidget *meant = one.receiver && one.receiver->isVisible() && one.receiver->isEnabled() ? one.receiver.data() : nullptr;
        if (QWidget *modal = QApplication::activeModalWidget(); modal && meant && meant->window() != modal)
            meant = nullptr;
        if (QWidget *to = meant ? meant : QApplication::focusWidget())
            QCoreApplication::sendEvent(to, one.event.get());
    }
}

void ScannerKeys::forget()
{
    m_held.clear();
    m_text.clear();
    m_timer.stop();
    m_isLastCall = false;
}

} // namespace desktop
