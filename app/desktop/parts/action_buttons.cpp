// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/action_buttons.hpp"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"

namespace desktop {

ActionButtons::ActionButtons(Deeds &deeds, JobFeed &feed, const core::Kinds &kinds, const std::vector<QLatin1String> &kindsOfEntry, QWidget *parent)
    : QWidget(parent), m_deeds(deeds), m_feed(feed), m_kinds(kinds)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    m_now = new QVBoxLayout;
    column->addLayout(m_now);
    m_notNowTitle = makeLabel(tr("Not now"), "label", this);
    column->addWidget(m_notNowTitle);
    m_notNow = new QGridLayout;
    m_notNow->setColumnStretch(1, 1);
    column->addLayout(m_notNow);
    for (const QLatin1String kind : kindsOfEntry) {
        const ActionLine &action = actionFor(kind);
        QPushButton *button = makeButton({}, "", this);
        button->setObjectName(QString(kind));
        button->setMinimumHeight(touchHeight(fontMetrics()));
        button->setMinimumWidth(fontMetrics().averageCharWidth() * 20);
        QLabel *reason = makeLabel({}, "quiet", this);
        reason->setObjectName(QString(kind) + QStringLiteral(".reason"));
        connect(button, &QPushButton::clicked, this, [this, &action] { m_deeds.begin(action, m_items, m_subject); });
        m_rows.push_back({&action, button, reason});
    }
}

bool ActionButtons::comesIntoQuestion(const ActionLine &action) const
{
    switch (action.over) {
    case Over::Items: return !m_items.empty();
    case Over::Item: return m_items.size() == 1;
    case Over::Subject: return m_subject.has_value();
    case Over::Job: return true;
    }
    Q_UNREACHABLE();
}

void ActionButtons::show(const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject)
{
    m_items = items;
    m_subject = subject;
    int refused = 0;
    for (const Row &row : m_rows) {
        m_now->removeWidget(row.button);
        m_notNow->removeWidget(row.button);
        m_notNow->removeWidget(row.reason);
        const bool isAsked = m_feed.state() && comesIntoQuestion(*row.action);
        const QString reason = isAsked ? refusalsInWords(m_deeds.whyNot(*row.action, items, subject)) : QString();
        row.button->setVisible(isAsked);
        row.reason->setVisible(!reason.isEmpty());
        row.reason->setText(reason);
        row.button->setEnabled(isAsked && reason.isEmpty());
        row.button->setToolTip(reason);
        if (!isAsked)
            continue;
        const QString key = QString::fromLatin1(row.action->shortcut);
        const QString text = actionText(*row.action, m_kinds, *m_feed.state(), items);
        row.button->setText(key.isEmpty() ? text : tr("%1   %2").arg(text, key));
        if (reason.isEmpty()) {
            m_now->addWidget(row.button);
        } else {
            m_notNow->addWidget(row.button, refused, 0, Qt::AlignTop);
            m_notNow->addWidget(row.reason, refused, 1, Qt::AlignVCenter);
            ++refused;
        }
    }
    m_notNowTitle->setVisible(refused > 0);
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
