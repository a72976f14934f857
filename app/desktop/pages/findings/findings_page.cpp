// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/findings/findings_page.hpp"

#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/words.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

qsizetype FindingsPage::waiting(const PageTools &tools)
{
    if (!tools.feed.state())
        return 0;
    const auto &all = tools.feed.state()->findings;
    return std::count_if(all.begin(), all.end(), [](const core::Finding &finding) { return !finding.closed; });
}

FindingsPage::FindingsPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    auto *column = new QVBoxLayout(this);
    m_rows = new RowTable({{tr("Number"), 10}, {tr("State"), 16}, {tr("Item"), 28}, {tr("What was found"), 0}, {tr("Disposition"), 26}, {tr("Raised"), 42}},
                          tr("Findings"), tr("No finding was raised in this job. Raise one for damage or a discrepancy; it stays open until an inspector disposes of it."), this);
    m_rows->setObjectName(u"findings"_s);
    m_actions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"finding.closed"_L1, "finding.raised"_L1}, this);
    m_followUps = new RowTable({{tr("Entry"), 10}, {tr("State"), 16}, {tr("Item"), 28}, {tr("What is due"), 0}, {tr("Due on, at most"), 18}, {tr("Set"), 42}, {tr("Done"), 42}},
                               tr("Follow-ups"), tr("No follow-up was set: what is due after closure, such as a torque to be checked again after some hours."), this);
    m_followUps->setObjectName(u"followUps"_s);
    m_followUpActions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"followup.done"_L1, "followup.set"_L1}, this);
    column->addWidget(makeLabel(tr("Findings"), "title", this));
    column->addWidget(m_rows, 3);
    column->addWidget(m_actions);
    column->addWidget(makeLabel(tr("Follow-ups"), "heading", this));
    column->addWidget(m_followUps, 2);
    column->addWidget(m_followUpActions);
    setFocusProxy(&m_rows->view());
    connect(m_rows, &RowTable::chosenChanged, this, &FindingsPage::showActions);
    connect(m_followUps, &RowTable::chosenChanged, this, &FindingsPage::showActions);
    follow(&FindingsPage::refresh);
    refresh();
}

void FindingsPage::chooseRow(const QString &key) { m_rows->choose(key); }

void FindingsPage::refresh()
{
    std::vector<Row> rows, due;
    if (const auto &job = feed().state()) {
        const auto nameOf = [&](const std::optional<core::InterfaceId> &id) {
            const core::InterfaceState *item = id ? job->item(*id) : nullptr;
            return item ? itemInWords(*item) : id ? id->text() : QString();
        };
        for (const core::Finding &finding : job->findings) {
            const QString disposition = finding.closed ? tr("%1, %2").arg(choiceInWords(finding.disposition), finding.authority) : QString();
            rows.push_back({finding.id.text(), {finding.id.text(), finding.closed ? tr("closed") : tr("open"), nameOf(finding.item), finding.description, disposition, markInWords(finding.raised, *feed().state(), feed().reg())}, false, !finding.closed});
        }
        for (const core::FollowUp &one : job->followUps) {
            const QString seq = QString::number(one.mark.seq);
            due.push_back({seq, {seq, one.done ? tr("done") : tr("due"), nameOf(one.item), one.text, one.due.toString(Qt::ISODate), markInWords(one.mark, *feed().state(), feed().reg()), one.done ? markInWords(*one.done, *feed().state(), feed().reg()) : QString()}});
        }
    }
    m_rows->take(rows);
    m_followUps->take(due);
    showActions();
}

void FindingsPage::showActions()
{
    m_actions->showSubject(m_rows->chosen());
    m_followUpActions->showSubject(m_followUps->chosen());
}

} // namespace desktop
