// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/notice_band.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/theme.hpp"

namespace desktop {

NoticeBand::NoticeBand(QWidget *parent) : QFrame(parent)
{
    setProperty("role", "band");
    setObjectName(QStringLiteral("notice"));
    auto *row = new QHBoxLayout(this);
    const int gap = fontMetrics().height();
    row->setContentsMargins(gap, gap / 2, gap, gap / 2);
    row->setSpacing(gap);
    m_sentence = makeLabel({}, "caution", this);
    m_sentence->setObjectName(QStringLiteral("noticeText"));
    m_backUp = makeButton(tr("Back up…"), "", this);
    m_backUp->setObjectName(QStringLiteral("noticeBackUp"));
    m_backUp->setMinimumHeight(touchHeight(fontMetrics()));
    row->addWidget(m_sentence, 1);
    row->addWidget(m_backUp);
    connect(m_backUp, &QPushButton::clicked, this, &NoticeBand::backupWanted);
    hide();
}

bool NoticeBand::show(const std::optional<session::Notice> &notice)
{
    if (notice == m_shown)
        return false;
    m_shown = notice;
    setVisible(notice.has_value());
    if (!notice)
        return true;
    m_sentence->setText(notice->sentence);
    m_backUp->setVisible(notice->sort == session::Notice::Sort::Backup);
    return true;
}

} // namespace desktop
