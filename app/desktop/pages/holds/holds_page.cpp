// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/holds/holds_page.hpp"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/hold_words.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/holds/standing.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(HoldsPage)
};

QString stateInWords(const core::HoldStanding &standing)
{
    switch (standing.state) {
    case core::HoldState::Open: return standing.areConditionsMet() ? Words::tr("ready to pass") : Words::tr("waits");
    case core::HoldState::Passed: return Words::tr("passed");
    case core::HoldState::Void: return Words::tr("void, pass again");
    }
    Q_UNREACHABLE();
}

QString signerInWords(const core::HoldPoint &hold)
{
    const QString authority = Words::tr("authority to %1").arg(choiceMidSentence(hold.authority));
    return hold.isIndependent ? Words::tr("%1, no hand in it").arg(authority) : authority;
}

const core::HoldPoint *holdOf(const JobFeed &feed, const QString &key)
{
    const auto id = core::HoldId::parse(key);
    return id && feed.state() ? feed.state()->hold(*id) : nullptr;
}

} // namespace

qsizetype HoldsPage::waiting(const PageTools &tools)
{
    if (!tools.feed.state())
        return 0;
    const core::JobState &job = *tools.feed.state();
    return std::count_if(job.holds.begin(), job.holds.end(), [&](const core::HoldPoint &hold) {
        const core::HoldStanding standing = core::standingOf(job, hold);
        return standing.state == core::HoldState::Void || (standing.state == core::HoldState::Open && standing.areConditionsMet());
    });
}

HoldsPage::HoldsPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    auto *left = new QWidget(this);
    auto *leftColumn = new QVBoxLayout(left);
    leftColumn->setContentsMargins(0, 0, 0, 0);
    m_rows = new RowTable({{tr("Hold point"), 0}, {tr("State"), 20}, {tr("Passed by"), 26}}, tr("Hold points"),
                          tr("This job has no hold points. The lead may set them: one of the standard set, or one of its own."), left);
    m_rows->setObjectName(u"holds"_s);
    leftColumn->addWidget(makeLabel(tr("Hold points"), "title", left));
    leftColumn->addWidget(m_rows, 1);
    m_set = makeButton(tr("&Set a hold point …"), "", left);
    m_set->setObjectName(u"setHold"_s);
    m_set->setMinimumHeight(touchHeight(fontMetrics()));
    leftColumn->addWidget(m_set, 0, Qt::AlignLeft);
    connect(m_set, &QPushButton::clicked, this, &Page::holdWanted);

    auto *right = new QWidget(this);
    auto *column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    m_title = makeLabel({}, "heading", right);
    m_behind = makeLabel({}, "quiet", right);
    for (QLabel *label : {m_title, m_behind})
        label->setWordWrap(true);
    m_conditions = new RowTable({{tr("It is so"), 12}, {tr("What has to be so"), 0}, {tr("Missing"), 34}}, tr("Conditions"), tr("Choose a hold point to see what it asks for."), right);
    m_conditions->setObjectName(u"conditions"_s);
    m_actions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"hold.passed"_L1}, right);
    column->addWidget(m_title);
    column->addWidget(m_behind);
    column->addWidget(m_conditions, 1);
    column->addWidget(m_actions);

    auto *splitter = new QSplitter(Qt::Horizontal, this);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(left);
    splitter->addWidget(right);
    splitter->setStretchFactor(0, 4);
    splitter->setStretchFactor(1, 5);
    auto *layout = new QHBoxLayout(this);
    layout->addWidget(splitter);
    setFocusProxy(&m_rows->view());
    connect(m_rows, &RowTable::chosenChanged, this, &HoldsPage::showChosen);
    follow(&HoldsPage::refresh);
    refresh();
}

void HoldsPage::chooseRow(const QString &key) { m_rows->choose(key); }

void HoldsPage::refresh()
{
    std::vector<Row> rows;
    QString next;
    for (const core::HoldPoint &hold : feed().state() ? feed().state()->holds : std::vector<core::HoldPoint>()) {
        const core::HoldStanding standing = core::standingOf(*feed().state(), hold);
        const bool isVoid = standing.state == core::HoldState::Void;
        rows.push_back({hold.id.text(), {hold.title, stateInWords(standing), hold.passed ? markInWords(*hold.passed, *feed().state(), feed().reg()) : QString()}, false, isVoid});
        if (next.isEmpty() && standing.state != core::HoldState::Passed)
            next = hold.id.text();
    }
    m_rows->take(rows);
    const bool isOpen = feed().state() && !feed().state()->closed;
    // Nobody at the computer yet: whoever comes may be the lead.
    const auto person = deeds().person();
    const bool isLead = isOpen && (!person || feed().state()->lead == person);
    m_set->setEnabled(isLead);
    const QString lead = isOpen && feed().state()->lead ? feed().reg().nameOf(*feed().state()->lead) : QString();
    m_set->setToolTip(isLead ? tr("The lead signs it, before anything is done that it would hold back.") : isOpen ? tr("Only the lead of this job sets hold points; that is %1.").arg(lead) : tr("The job is closed."));
    if (m_rows->chosen().isEmpty() && !next.isEmpty())
        m_rows->choose(next);
    showChosen();
}

void HoldsPage::showChosen()
{
    const QString chosen = m_rows->chosen();
    std::vector<Row> rows;
    if (const core::HoldPoint *hold = holdOf(feed(), chosen)) {
        const core::HoldStanding standing = core::standingOf(*feed().state(), *hold);
        m_title->setText(standing.undermined.isEmpty() ? hold->title : tr("%1: to be passed again. %2").arg(hold->title, standing.undermined));
        m_behind->setText(tr("%1. Passed with %2.").arg(heldBackInWords(*hold), signerInWords(*hold)));
        for (const core::ConditionShown &one : standing.conditions) {
            QStringList missing = one.missing.mid(0, 3);
            if (one.missing.size() > 3)
                missing << tr("and %n more", nullptr, static_cast<int>(one.missing.size()) - 3);
            const QString met = one.isOver ? tr("over") : one.isMet() ? tr("yes") : tr("no");
            rows.push_back({QString::number(rows.size()), {met, one.said, missing.join(u'\n')}, false, !one.isMet()});
        }
        for (const QString &statement : hold->statements)
            rows.push_back({QString::number(rows.size()), {tr("to be seen"), statement, {}}, false, false});
    } else {
        m_title->clear();
        m_behind->clear();
    }
    m_title->setVisible(!m_title->text().isEmpty());
    m_behind->setVisible(!m_behind->text().isEmpty());
    m_conditions->take(rows);
    m_actions->showSubject(chosen);
}

} // namespace desktop
