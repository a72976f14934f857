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
    m_rows = new RowTable({{tr("Number"), 10}, {tr("State"), 16}, {tr("Item"), 28}, {tr("What was found"), 0}, {tr("Disposition"), 30}, {tr("Raised"), 30}},
                          tr("Findings"), tr("No finding was raised in this job. Raise one for damage or a discrepancy; it stays open until an inspector disposes of it."), this);
    m_rows->setObjectName(u"findings"_s);
    m_actions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"finding.closed"_L1, "finding.raised"_L1, "followup.set"_L1}, this);
    column->addWidget(makeLabel(tr("Findings"), "title", this));
    column->addWidget(m_rows, 1);
    m_actions->setMaximumWidth(fontMetrics().averageCharWidth() * 130);
    column->addWidget(m_actions);
    setFocusProxy(&m_rows->view());
    connect(m_rows, &RowTable::chosenChanged, this, &FindingsPage::showActions);
    connect(&feed(), &JobFeed::changed, this, &FindingsPage::refresh);
    connect(&feed(), &JobFeed::jobChanged, this, &FindingsPage::refresh);
    refresh();
}

void FindingsPage::refresh()
{
    std::vector<Row> rows;
    for (const core::Finding &finding : feed().state() ? feed().state()->findings : std::vector<core::Finding>()) {
        const QString item = finding.item ? subjectInWords(finding.item->text(), *feed().state()) : QString();
        const QString disposition = finding.closed ? tr("%1, %2").arg(choiceInWords(finding.disposition), finding.authority) : QString();
        rows.push_back({finding.id.text(), {finding.id.text(), finding.closed ? tr("closed") : tr("open"), item, finding.description, disposition, markInWords(finding.raised, feed().reg())}, false, !finding.closed});
    }
    m_rows->take(rows);
    showActions();
}

void FindingsPage::showActions()
{
    const QString chosen = m_rows->chosen();
    m_actions->show({}, chosen.isEmpty() ? std::nullopt : std::optional(chosen));
}

} // namespace desktop
