// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/start/start_page.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/pages/start/job_cards.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/theme.hpp"

namespace desktop {

StartPage::StartPage(QWidget *parent) : QWidget(parent)
{
    auto *column = new QVBoxLayout(this);
    const int gap = fontMetrics().height();
    column->setContentsMargins(gap * 2, gap, gap * 2, gap);
    column->setSpacing(gap / 2);
    auto *head = new QHBoxLayout;
    head->addWidget(makeLabel(tr("Jobs"), "title", this));
    head->addStretch();
    QPushButton *newJob = makeButton(tr("&New job …"), "main", this);
    newJob->setObjectName(QStringLiteral("newJob"));
    newJob->setMinimumHeight(touchHeight(fontMetrics()));
    head->addWidget(newJob);
    column->addLayout(head);
    m_organisation = makeLabel({}, "quiet", this);
    column->addWidget(m_organisation);

    // One column, whatever a card shows: a screen reader counts each cell of a list as a card.
    m_model = new RowModel({tr("Job")}, this);
    m_list = new QListView(this);
    m_list->setObjectName(QStringLiteral("jobs"));
    m_list->setAccessibleName(tr("Jobs"));
    m_list->setModel(m_model);
    m_list->setItemDelegate(new JobCardDelegate(m_list));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setProperty("role", "cards");
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setResizeMode(QListView::Adjust);
    setFocusProxy(m_list);
    m_stack = new QStackedWidget(this);
    m_stack->addWidget(m_list);
    m_stack->addWidget(makeEmpty());
    column->addWidget(m_stack, 1);
    connect(m_list, &QListView::clicked, this, &StartPage::open);
    auto *enter = new QShortcut(QKeySequence(Qt::Key_Return), m_list, nullptr, nullptr, Qt::WidgetShortcut);
    connect(enter, &QShortcut::activated, this, [this] { open(m_list->currentIndex()); });
    connect(newJob, &QPushButton::clicked, this, &StartPage::newJobWanted);
}

QWidget *StartPage::makeEmpty()
{
    auto *empty = new QWidget(this);
    auto *column = new QVBoxLayout(empty);
    column->addStretch();
    column->addWidget(makeLabel(tr("No job yet"), "heading", empty), 0, Qt::AlignHCenter);
    m_next = makeLabel({}, "", empty);
    m_next->setAlignment(Qt::AlignHCenter);
    m_next->setMinimumWidth(fontMetrics().averageCharWidth() * 60);
    column->addWidget(m_next, 0, Qt::AlignHCenter);
    m_people = makeButton(tr("&People and tools"), "main", empty);
    m_people->setMinimumHeight(touchHeight(fontMetrics()));
    column->addWidget(m_people, 0, Qt::AlignHCenter);
    column->addStretch();
    connect(m_people, &QPushButton::clicked, this, &StartPage::peopleWanted);
    return empty;
}

void StartPage::show(const std::vector<session::JobRow> &jobs, const core::Register &reg)
{
    m_organisation->setText(reg.organisation);
    m_model->take(jobCards(jobs));
    m_stack->setCurrentIndex(jobs.empty() ? 1 : 0);
    if (!m_list->currentIndex().isValid() && !jobs.empty())
        m_list->setCurrentIndex(m_model->index(0, 0));
    const bool hasLead = std::any_of(reg.authorisations.begin(), reg.authorisations.end(), [](const auto &at) { return at.second.authority == core::Authority::Lead; });
    m_next->setText(hasLead ? tr("Open a new job with its work order, aircraft, maintenance data, unit and crew. Then import the list of interfaces.")
                            : tr("First enrol the people who work, inspect and release, grant them their authorisations, and register the tools that measure. A job needs somebody who may lead."));
    m_people->setVisible(!hasLead);
}

void StartPage::open(const QModelIndex &at)
{
    if (const auto job = core::LedgerId::parse(at.data(RowModel::KeyRole).toString()))
        emit jobChosen(*job);
}

} // namespace desktop
