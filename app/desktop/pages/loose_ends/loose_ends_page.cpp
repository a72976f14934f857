// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/loose_ends/loose_ends_page.hpp"

#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

LooseEndsPage::LooseEndsPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    auto *column = new QVBoxLayout(this);
    m_title = makeLabel({}, "title", this);
    m_rows = new RowTable({{tr("Item"), 14}, {tr("What is loose"), 0}, {tr("Who can clear it"), 40}}, tr("Loose ends"),
                          tr("Nothing is loose."), this);
    m_rows->setObjectName(u"looseEnds"_s);
    m_close = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"job.closed"_L1}, this);
    column->addWidget(m_title);
    column->addWidget(makeLabel(tr("The job closes when this list is empty. Return or a double click leads to the item."), "quiet", this));
    column->addWidget(m_rows, 1);
    m_close->setMaximumWidth(fontMetrics().averageCharWidth() * 130);
    column->addWidget(m_close);
    setFocusProxy(&m_rows->view());
    connect(m_rows, &RowTable::opened, this, &LooseEndsPage::lead);
    connect(&feed(), &JobFeed::changed, this, &LooseEndsPage::refresh);
    connect(&feed(), &JobFeed::jobChanged, this, &LooseEndsPage::refresh);
    refresh();
}

void LooseEndsPage::refresh()
{
    std::vector<Row> rows;
    for (const core::LooseEnd &end : feed().looseEnds())
        rows.push_back({end.rule + u'\n' + end.subject, {end.subject, end.sentence, end.clearedBy}, false, true});
    m_rows->take(rows);
    const bool isClosed = feed().state() && feed().state()->closed;
    m_title->setText(isClosed ? tr("The job is closed") : rows.empty() ? tr("Nothing is loose") : tr("Loose ends: %1").arg(rows.size()));
    m_close->show({});
}

void LooseEndsPage::lead(const QString &key)
{
    const QString subject = key.section(u'\n', 1);
    const QString rule = key.section(u'\n', 0, 0);
    if (rule == u"loose.finding"_s)
        emit pageWanted(u"findings"_s);
    else if (rule == u"loose.handover"_s)
        emit pageWanted(u"handover"_s);
    else if (const auto id = core::InterfaceId::parse(subject); id && feed().state()->item(*id)) {
        selection().choose({*id});
        emit pageWanted(u"list"_s);
    }
}

} // namespace desktop
