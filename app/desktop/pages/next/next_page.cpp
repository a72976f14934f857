// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/next/next_page.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QTableView>
#include <QVBoxLayout>

#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/job/next_to_restore.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

NextPage::NextPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    auto *column = new QVBoxLayout(this);
    m_title = makeLabel({}, "title", this);
    m_zone = new QComboBox(this);
    m_zone->setObjectName(u"zone"_s);
    tellName(*m_zone, tr("Zone"));
    m_zone->setMinimumHeight(touchHeight(fontMetrics()));
    m_rows = new RowTable({{tr("Item"), 10}, {tr("Name"), 34}, {tr("Zone"), 12}, {tr("Looked after by"), 22}, {tr("What stands in the way"), 0}}, tr("Next to restore"),
                          tr("Nothing is off. Whatever is disconnected comes here, what came off last first."), this);
    m_rows->setObjectName(u"next"_s);
    m_actions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"interface.reconnected"_L1}, this);
    auto *head = new QHBoxLayout;
    head->addWidget(m_title, 1);
    head->addWidget(m_zone);
    column->addLayout(head);
    column->addWidget(m_rows, 1);
    column->addWidget(m_actions);
    setFocusProxy(&m_rows->view());
    m_actions->listenTo(&m_rows->view());
    connect(m_zone, &QComboBox::currentIndexChanged, this, &NextPage::refresh);
    connect(m_rows, &RowTable::chosenChanged, this, &NextPage::showActions);
    connect(&feed(), &JobFeed::changed, this, &NextPage::refresh);
    connect(&feed(), &JobFeed::jobChanged, this, &NextPage::fillZones);
    fillZones();
}

void NextPage::fillZones()
{
    {
        const QSignalBlocker quiet(m_zone);
        m_zone->clear();
        m_zone->addItem(tr("Every zone"), QString());
        for (const core::Zone &zone : feed().state() ? feed().state()->facts.zones : std::vector<core::Zone>())
            m_zone->addItem(zone.technician ? tr("%1: %2").arg(zone.name, feed().reg().nameOf(*zone.technician)) : zone.name, zone.name);
    }
    refresh();
}

void NextPage::refresh()
{
    const QString zone = m_zone->currentData().toString();
    std::vector<Row> rows;
    int ready = 0;
    for (const core::NextToRestore &step : feed().state() ? core::nextToRestore(*feed().state(), feed().reg()) : std::vector<core::NextToRestore>()) {
        if (!zone.isEmpty() && step.zone != zone)
            continue;
        const core::InterfaceState *item = feed().state()->item(step.item);
        ready += step.inTheWay.empty();
        rows.push_back({step.item.text(), {step.item.text(), item->listed.name, step.zone, step.technician ? feed().reg().nameOf(*step.technician) : QString(), QStringList(step.inTheWay.begin(), step.inTheWay.end()).join(u'\n')}});
    }
    m_title->setText(rows.empty() ? tr("Next to restore") : tr("Next to restore: %1 of %2 may go on now").arg(ready).arg(rows.size()));
    m_rows->take(rows);
    if (m_rows->chosen().isEmpty() && !rows.empty())
        m_rows->choose(rows.front().key);
    showActions();
}

void NextPage::showActions()
{
    const auto id = core::InterfaceId::parse(m_rows->chosen());
    m_actions->show(id ? std::vector{*id} : std::vector<core::InterfaceId>());
    if (isVisible() && id)
        selection().choose({*id});
}

} // namespace desktop
