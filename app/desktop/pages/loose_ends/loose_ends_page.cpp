// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/loose_ends/loose_ends_page.hpp"

#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/closure_words.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

/// Where a loose end is cleared that is not cleared at its item in the list.
struct Way {
    QLatin1String rule;
    QLatin1String page;
};
constexpr Way ways[] = {
    {"loose.attached"_L1, "walk-round"_L1}, {"loose.temporary"_L1, "temporaries"_L1}, {"loose.tags"_L1, "parts-and-tools"_L1},
    {"loose.tool"_L1, "parts-and-tools"_L1}, {"loose.hold"_L1, "holds"_L1}, {"loose.accessory"_L1, "unit"_L1},
    {"loose.test"_L1, "unit"_L1}, {"loose.finding"_L1, "findings"_L1}, {"loose.handover"_L1, "handover"_L1},
    {"loose.link"_L1, "linked"_L1}, {"loose.linked"_L1, "linked"_L1}, {"loose.sent"_L1, "linked"_L1},
};

} // namespace

LooseEndsPage::LooseEndsPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    auto *column = new QVBoxLayout(this);
    m_title = makeLabel({}, "title", this);
    m_rows = new RowTable({{tr("Item"), 14}, {tr("What is loose"), 0}, {tr("Who can clear it"), 40}}, tr("Loose ends"),
                          tr("Nothing is loose."), this);
    m_rows->setObjectName(u"looseEnds"_s);
    m_close = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"job.closed"_L1}, this);
    column->addWidget(m_title);
    column->addWidget(makeLabel(tr("The job closes when this list is empty. Return or a double click leads to where a loose end is cleared."), "quiet", this));
    column->addWidget(m_rows, 1);
    column->addWidget(m_close);
    setFocusProxy(&m_rows->view());
    connect(m_rows, &RowTable::opened, this, &LooseEndsPage::lead);
    follow(&LooseEndsPage::refresh);
    refresh();
}

void LooseEndsPage::refresh()
{
    std::vector<Row> rows;
    for (const core::LooseEnd &end : feed().looseEnds())
        rows.push_back({end.rule + u'\n' + end.subject, {end.subject, end.sentence, end.clearedBy}, false, true});
    m_rows->take(rows);
    m_title->setText(closureInWords(feed()));
    m_close->show({});
}

void LooseEndsPage::lead(const QString &key)
{
    const QString rule = key.section(u'\n', 0, 0);
    const QString subject = key.section(u'\n', 1);
    const auto *way = std::find_if(std::begin(ways), std::end(ways), [&](const Way &one) { return one.rule == rule; });
    const auto id = core::InterfaceId::parse(subject);
    if (way != std::end(ways)) {
        emit pageWanted(QString(way->page), subject);
    } else if (id && feed().state()->item(*id)) {
        selection().choose({*id});
        emit pageWanted(u"list"_s);
    }
}

} // namespace desktop
