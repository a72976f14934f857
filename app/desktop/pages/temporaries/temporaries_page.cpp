// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/temporaries/temporaries_page.hpp"

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

qsizetype TemporariesPage::waiting(const PageTools &tools)
{
    if (!tools.feed.state())
        return 0;
    const auto &all = tools.feed.state()->temporaries;
    return std::count_if(all.begin(), all.end(), [](const core::TemporaryItem &item) { return !item.removed; });
}

TemporariesPage::TemporariesPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    auto *column = new QVBoxLayout(this);
    m_rows = new RowTable({{tr("Number"), 10}, {tr("State"), 12}, {tr("Sort"), 16}, {tr("What, and where"), 0}, {tr("Zone"), 12}, {tr("Whose"), 22}, {tr("Applied"), 40}, {tr("Removed"), 40}},
                          tr("Applied for the job"), tr("Nothing was applied in this job yet: isolations, warning tags, safety pins, blanks, hoist, sling, stand, platform. What is applied stays a loose end until it is removed."), this);
    m_rows->setObjectName(u"temporaries"_s);
    m_actions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"temporary.removed"_L1, "temporary.handed_over"_L1, "temporary.applied"_L1}, this);
    column->addWidget(makeLabel(tr("Applied for the job"), "title", this));
    column->addWidget(m_rows, 1);
    column->addWidget(m_actions);
    setFocusProxy(&m_rows->view());
    connect(m_rows, &RowTable::chosenChanged, this, &TemporariesPage::showActions);
    follow(&TemporariesPage::refresh);
    refresh();
}

void TemporariesPage::chooseRow(const QString &key) { m_rows->choose(key); }

void TemporariesPage::refresh()
{
    std::vector<core::TemporaryItem> items = feed().state() ? feed().state()->temporaries : std::vector<core::TemporaryItem>();
    std::stable_partition(items.begin(), items.end(), [](const core::TemporaryItem &item) { return !item.removed; });
    std::vector<Row> rows;
    for (const core::TemporaryItem &item : items) {
        const core::Kind *kind = tools().kinds.find(core::temporaryKindId(item.sort));
        const QString owner = core::isLockout(item.sort) && !item.removed ? feed().reg().nameOf(item.owner) : QString();
        rows.push_back({item.id.text(),
                        {item.id.text(), item.removed ? tr("removed") : tr("on"), kind ? core::wordOfKind(kind->name) : choiceInWords(core::temporarySortText(item.sort)), item.name, item.zone, owner,
                         markInWords(item.applied, *feed().state(), feed().reg()), item.removed ? markInWords(*item.removed, *feed().state(), feed().reg()) : QString()},
                        false, !item.removed});
    }
    m_rows->take(rows);
    showActions();
}

void TemporariesPage::showActions()
{
    m_actions->showSubject(m_rows->chosen());
}

} // namespace desktop
