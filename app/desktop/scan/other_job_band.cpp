// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/scan/other_job_band.hpp"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

#include "app/desktop/parts/keyboard.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/theme.hpp"

namespace desktop {

OtherJobBand::OtherJobBand(QWidget *parent) : QFrame(parent)
{
    setProperty("role", "band");
    setObjectName(QStringLiteral("otherJob"));
    auto *row = new QHBoxLayout(this);
    const int gap = fontMetrics().height();
    row->setContentsMargins(gap, gap / 2, gap, gap / 2);
    row->setSpacing(gap);
    m_words = makeLabel({}, "caution", this);
    m_words->setObjectName(QStringLiteral("otherJobText"));
    m_open = makeButton({}, "main", this);
    m_open->setObjectName(QStringLiteral("openOtherJob"));
    QPushButton *stay = makeButton(tr("Stay here"), "", this); // over any screen, so without a letter of its own
    stay->setObjectName(QStringLiteral("stayHere"));
    row->addWidget(m_words, 1);
    m_open->installEventFilter(this);
    for (QPushButton *button : {m_open, stay}) {
        button->setMinimumHeight(touchHeight(fontMetrics()));
        row->addWidget(button);
    }
    connect(m_open, &QPushButton::clicked, this, [this] {
        const OtherJob other = *m_offered;
        dismiss();
        emit openWanted(other);
    });
    connect(stay, &QPushButton::clicked, this, &OtherJobBand::dismiss);
    hide();
}

/// Some desktops let Return press a button as Space does, and some scanners type it twice: the second would open the job.
bool OtherJobBand::eventFilter(QObject *watched, QEvent *event)
{
    const bool isKey = event->type() == QEvent::KeyPress || event->type() == QEvent::KeyRelease;
    const int key = isKey ? static_cast<QKeyEvent *>(event)->key() : 0;
    return key == Qt::Key_Return || key == Qt::Key_Enter || QFrame::eventFilter(watched, event);
}

void OtherJobBand::offer(const OtherJob &other)
{
    if (!m_offered)
        m_hadKeyboard = window()->focusWidget();
    m_offered = other;
    m_words->setText(other.words);
    m_open->setText(asWritten(other.button));
    m_open->setToolTip(tr("Space opens it."));
    m_open->setAccessibleDescription(other.words);
    show();
    giveKeyboard(*m_open);
}

void OtherJobBand::dismiss()
{
    if (!m_offered)
        return;
    m_offered.reset();
    const bool hasKeyboard = isAncestorOf(window()->focusWidget());
    hide();
    if (hasKeyboard && m_hadKeyboard && m_hadKeyboard->isVisible())
        giveKeyboard(*m_hadKeyboard);
}

} // namespace desktop
