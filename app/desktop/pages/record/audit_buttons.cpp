// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/record/audit_buttons.hpp"

#include <QHBoxLayout>
#include <QPushButton>

#include "app/desktop/pages/record/compare_dialog.hpp"
#include "app/desktop/pages/record/progress_dialog.hpp"
#include "app/desktop/pages/record/sample_dialog.hpp"
#include "app/desktop/pages/record/signings_dialog.hpp"
#include "app/desktop/parts/labels.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

AuditButtons::AuditButtons(const PageTools &tools, QWidget *parent) : QWidget(parent), m_tools(tools)
{
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    m_progress = makeButton(tr("P&rogress …"), "", this);
    m_progress->setObjectName(u"progressAsked"_s);
    row->addWidget(m_progress);
    connect(m_progress, &QPushButton::clicked, this, &AuditButtons::showProgress);
    m_sample = makeButton(tr("Sa&mple …"), "", this);
    m_sample->setObjectName(u"sample"_s);
    row->addWidget(m_sample);
    m_compare = makeButton(tr("&Compare …"), "", this);
    m_compare->setObjectName(u"compare"_s);
    row->addWidget(m_compare);
    m_signings = makeButton(tr("&Who signed when …"), "", this);
    m_signings->setObjectName(u"whoSigned"_s);
    row->addWidget(m_signings);
    connect(m_signings, &QPushButton::clicked, this, &AuditButtons::showSignings);
    connect(m_compare, &QPushButton::clicked, this, &AuditButtons::showCompare);
    connect(m_sample, &QPushButton::clicked, this, &AuditButtons::showSample);
    connect(&tools.feed, &JobFeed::changed, this, &AuditButtons::offer);
    connect(&tools.feed, &JobFeed::jobChanged, this, &AuditButtons::offer);
    offer();
}

void AuditButtons::offer()
{
    const bool isListed = m_tools.feed.state() && !m_tools.feed.state()->items.empty();
    m_sample->setEnabled(isListed);
    m_sample->setToolTip(isListed ? tr("Draw interfaces at random, with every entry about them.") : tr("The job lists no interface to draw from."));
    m_progress->setEnabled(m_tools.feed.state() != nullptr);
    m_progress->setToolTip(m_progress->isEnabled() ? tr("How many interfaces were undone and not inspected over time, and what this job's own pace says about the rest.") : tr("Open a job first."));
    m_compare->setEnabled(m_tools.feed.state() != nullptr);
    m_signings->setEnabled(m_tools.feed.state() != nullptr);
    m_signings->setToolTip(m_signings->isEnabled() ? tr("A picture with a lane for each person, shift by shift.") : tr("Open a job first."));
    m_compare->setToolTip(m_compare->isEnabled() ? tr("Tell what came after an earlier print, or between two entries.") : tr("Open a job first."));
}

void AuditButtons::showProgress() { (new ProgressDialog(m_tools, this))->open(); }
void AuditButtons::showCompare() { (new CompareDialog(m_tools, this))->open(); }

void AuditButtons::showSignings()
{
    auto *dialog = new SigningsDialog(m_tools, this);
    connect(dialog, &SigningsDialog::entryWanted, this, &AuditButtons::entryWanted);
    dialog->open();
}

void AuditButtons::showSample()
{
    auto *dialog = new SampleDialog(m_tools, this);
    connect(dialog, &SampleDialog::entryWanted, this, &AuditButtons::entryWanted);
    dialog->open();
}

} // namespace desktop
