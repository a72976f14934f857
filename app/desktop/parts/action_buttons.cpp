// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/action_buttons.hpp"

#include <QGridLayout>
#include <QIcon>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"

namespace desktop {

namespace {

/// The icons' own colours are made for paper; on a filled button they would drown.
QIcon inOneColour(const QIcon &icon, QSize size, const QColor &colour)
{
    QPixmap picture = icon.pixmap(size, 2.0);
    QPainter painter(&picture);
    painter.setCompositionMode(QPainter::CompositionMode_SourceIn);
    painter.fillRect(QRectF(QPointF(), picture.deviceIndependentSize()), colour);
    return picture;
}

} // namespace

ActionButtons::ActionButtons(Deeds &deeds, JobFeed &feed, const core::Kinds &kinds, const std::vector<QLatin1String> &kindsOfEntry, QWidget *parent)
    : QWidget(parent), m_deeds(deeds), m_feed(feed), m_kinds(kinds)
{
    setMaximumWidth(fontMetrics().averageCharWidth() * 130);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    m_now = new QGridLayout;
    column->addLayout(m_now);
    m_notNowTitle = makeLabel(tr("Not now"), "label", this);
    column->addWidget(m_notNowTitle);
    m_notNow = new QGridLayout;
    m_notNow->setColumnStretch(1, 1);
    m_notNow->setHorizontalSpacing(fontMetrics().averageCharWidth() * 2);
    column->addLayout(m_notNow);
    const int side = fontMetrics().height() * 3 / 2;
    for (const QLatin1String kind : kindsOfEntry) {
        const ActionLine &action = actionFor(kind);
        QPushButton *button = makeButton({}, "", this);
        button->setObjectName(QString(kind));
        button->setIconSize({side, side});
        button->setMinimumHeight(touchHeight(fontMetrics()));
        QLabel *reason = makeLabel({}, "quiet", this);
        reason->setObjectName(QString(kind) + QStringLiteral(".reason"));
        connect(button, &QPushButton::clicked, this, [this, &action] { m_deeds.begin(action, m_items, m_subject); });
        m_rows.push_back({&action, button, reason});
    }
}

/// The act that leads a single item on; several items, or the whole job, have no one next act.
QString ActionButtons::leadingAct() const
{
    const core::InterfaceState *item = m_items.size() == 1 && m_feed.state() ? m_feed.state()->item(m_items.front()) : nullptr;
    return item ? nextAct(*item).value_or(QString()) : QString();
}

void ActionButtons::dress(const Row &row, const QString &reason, bool isLeading)
{
    const QString key = QString::fromLatin1(row.action->shortcut);
    const QString text = actionText(*row.action, m_kinds, *m_feed.state(), m_items, m_subject);
    row.button->setText(key.isEmpty() ? text : tr("%1   %2").arg(text, key));
    const bool isMain = isLeading && reason.isEmpty();
    const QIcon icon(iconPath(*row.action));
    row.button->setIcon(isMain ? inOneColour(icon, row.button->iconSize(), palette().color(QPalette::HighlightedText)) : icon);
    row.button->setProperty("role", isMain ? QStringLiteral("main") : QString());
    row.button->style()->unpolish(row.button);
    row.button->style()->polish(row.button);
}

void ActionButtons::show(const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject)
{
    m_items = items;
    m_subject = subject;
    m_leading = leadingAct();
    bool isAnyRefused = false;
    for (const Row &row : m_rows) {
        const bool isAsked = m_feed.state() && comesIntoQuestion(*row.action, *m_feed.state(), items, subject.has_value());
        const QString reason = isAsked ? refusalsInWords(m_deeds.whyNot(*row.action, items, subject)) : QString();
        row.reason->setText(reason);
        row.button->setEnabled(isAsked && reason.isEmpty());
        row.button->setToolTip(reason);
        if (isAsked)
            dress(row, reason, row.action->kind == m_leading);
        isAnyRefused = isAnyRefused || !reason.isEmpty();
        row.button->setVisible(isAsked);
        row.reason->setVisible(!reason.isEmpty());
    }
    const auto person = m_deeds.person();
    m_notNowTitle->setText(person ? tr("Not now, for %1. Lock (Ctrl+L) to let somebody else sign.").arg(m_feed.reg().nameOf(*person)) : tr("Not now"));
    m_notNowTitle->setVisible(isAnyRefused);
    m_isNarrow = width() < twoColumns();
    place();
    updateGeometry();
}

void ActionButtons::place()
{
    const int columns = m_isNarrow ? 1 : 2;
    int allowed = m_leading.isEmpty() ? 0 : columns; // the leading one has the first line for itself
    int refused = 0;
    for (const Row &row : m_rows) {
        m_now->removeWidget(row.button);
        m_notNow->removeWidget(row.button);
        m_notNow->removeWidget(row.reason);
        if (row.button->isHidden())
            continue;
        if (!row.reason->text().isEmpty() && m_isNarrow) {
            m_notNow->addWidget(row.button, refused++, 0, 1, 2, Qt::AlignTop | Qt::AlignLeft);
            m_notNow->addWidget(row.reason, refused++, 0, 1, 2);
        } else if (!row.reason->text().isEmpty()) {
            m_notNow->addWidget(row.button, refused, 0, Qt::AlignTop);
            m_notNow->addWidget(row.reason, refused++, 1, Qt::AlignVCenter);
        } else if (row.action->kind == m_leading) {
            m_now->addWidget(row.button, 0, 0, 1, 2);
        } else {
            m_now->addWidget(row.button, allowed / columns, allowed % columns, 1, m_isNarrow ? 2 : 1);
            ++allowed;
        }
    }
}

int ActionButtons::oneColumn() const
{
    int widest = 0;
    for (const Row &row : m_rows)
        widest = std::max(widest, row.button->isHidden() ? 0 : row.button->sizeHint().width());
    return widest;
}

int ActionButtons::twoColumns() const
{
    const int least = fontMetrics().averageCharWidth() * 16; // of a reason: a column of single words is not read
    int widest[2] = {0, 0};
    std::size_t column = 0;
    int asked = 0;
    int beside = 0;
    for (const Row &row : m_rows) {
        const int width = row.button->sizeHint().width();
        if (row.button->isHidden() || row.action->kind == m_leading)
            continue;
        if (!row.reason->text().isEmpty()) {
            beside = std::max(beside, width + m_notNow->horizontalSpacing() + least);
        } else {
            widest[column] = std::max(widest[column], width);
            column = 1 - column;
            ++asked;
        }
    }
    return std::max({oneColumn(), beside, widest[0] + widest[1] + (asked > 1 ? m_now->horizontalSpacing() : 0)});
}

QSize ActionButtons::sizeHint() const { return {std::min(twoColumns(), maximumWidth()), QWidget::sizeHint().height()}; }
QSize ActionButtons::minimumSizeHint() const { return {oneColumn(), QWidget::minimumSizeHint().height()}; }

void ActionButtons::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    const bool isNarrow = width() < twoColumns();
    if (isNarrow == m_isNarrow)
        return;
    m_isNarrow = isNarrow;
    place();
    updateGeometry();
}

void ActionButtons::listenTo(QWidget *view) { view->installEventFilter(this); }

bool ActionButtons::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const auto *key = static_cast<QKeyEvent *>(event);
    const QString text = key->text().toUpper();
    if (text.isEmpty() || (key->modifiers() & ~Qt::ShiftModifier) != 0)
        return QWidget::eventFilter(watched, event);
    for (const Row &row : m_rows) {
        if (text != QString::fromLatin1(row.action->shortcut))
            continue;
        if (row.button->isEnabled() && !row.button->isHidden())
            row.button->click();
        return true; // refused or not: a letter that means an action never jumps to a row of that letter
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace desktop
