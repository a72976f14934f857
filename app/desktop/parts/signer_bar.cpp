// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/signer_bar.hpp"

#include <QHBoxLayout>
#include <QIcon>
#include <QLabel>
#include <QPushButton>

#include "app/desktop/parts/labels.hpp"

namespace desktop {

SignerBar::SignerBar(QWidget *parent) : QWidget(parent)
{
    auto *row = new QHBoxLayout(this);
    const int gap = fontMetrics().averageCharWidth();
    row->setContentsMargins(gap, gap / 2, gap * 2, gap / 2);
    QPushButton *jobs = makeButton(tr("&Jobs"), "link", this);
    QPushButton *people = makeButton(tr("&People and tools"), "link", this);
    people->setObjectName(QStringLiteral("peopleAndTools"));
    m_who = makeLabel({}, "", this);
    m_who->setObjectName(QStringLiteral("who"));
    m_who->setWordWrap(false);
    m_who->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_lock = makeButton(tr("Loc&k"), "", this);
    m_lock->setObjectName(QStringLiteral("lock"));
    m_lock->setIcon(QIcon(QStringLiteral(":/icons/actions/lock.svg")));
    for (QWidget *widget : std::initializer_list<QWidget *>{jobs, people, m_who, m_lock})
        row->addWidget(widget);
    connect(jobs, &QPushButton::clicked, this, &SignerBar::jobsWanted);
    connect(people, &QPushButton::clicked, this, &SignerBar::peopleWanted);
    connect(m_lock, &QPushButton::clicked, this, &SignerBar::lockWanted);
}

void SignerBar::show(const std::optional<QString> &signer)
{
    m_who->setText(signer ? tr("%1 signs with the PIN alone").arg(*signer) : tr("Nobody is signed in"));
    m_lock->setEnabled(signer.has_value());
}

} // namespace desktop
