// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/inspect/inspect_page.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/actions.hpp"
#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/item_card.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "core/job/stage.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

const std::vector<QLatin1String> offered = {"inspection.accepted"_L1, "inspection.rejected"_L1, "photo.attached"_L1, "finding.raised"_L1,
                                            "interface.disturbed"_L1, "twins.verified"_L1, "condition.stated"_L1, "inspection.repeated"_L1};

} // namespace

qsizetype InspectPage::waiting(const PageTools &tools)
{
    return tools.feed.state() ? core::stageCounts(*tools.feed.state())[static_cast<std::size_t>(core::Stage::Secured)] : 0;
}

InspectPage::InspectPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    auto *left = new QWidget(this);
    auto *column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    m_title = makeLabel({}, "title", left);
    m_queue = new RowTable({{tr("Item"), 10}, {tr("Name"), 0}, {tr("Zone"), 14}, {tr("For you"), 12}}, tr("To inspect"),
                           tr("Nothing waits for inspection. Items come here when everything that restoring them must show has been shown."), left);
    m_queue->setObjectName(u"queue"_s);
    column->addWidget(m_title);
    column->addWidget(m_queue, 1);
    m_card = new ItemCard(tools, offered, this);
    auto *splitter = new QSplitter(Qt::Horizontal, this);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(left);
    splitter->addWidget(m_card);
    auto *layout = new QHBoxLayout(this);
    layout->addWidget(splitter);

    setFocusProxy(&m_queue->view());
    m_card->buttons().listenTo(&m_queue->view());
    connect(m_queue, &RowTable::chosenChanged, this, &InspectPage::choose);
    connect(m_card, &ItemCard::photosWanted, this, [this](const QString &item) { emit pageWanted(u"photos"_s, item); });
    follow(&InspectPage::refresh);
    refresh();
}

void InspectPage::refresh()
{
    std::vector<Row> rows;
    for (const core::InterfaceState &item : feed().state() ? feed().state()->items : core::Series<core::InterfaceState>()) {
        if (core::stageOf(item) != core::Stage::Secured)
            continue;
        const bool isTheirs = deeds().whyNot(actionFor("inspection.accepted"_L1), {item.listed.id}).empty();
        rows.push_back({item.listed.id.text(), {item.listed.id.text(), item.listed.name, item.listed.zone, isTheirs ? tr("yes") : tr("no")}});
    }
    m_title->setText(rows.empty() ? tr("To inspect") : tr("%n to inspect", nullptr, static_cast<int>(rows.size())));
    m_queue->take(rows);
    if (m_queue->chosen().isEmpty() && !rows.empty())
        m_queue->choose(rows[static_cast<std::size_t>(std::min(m_at, static_cast<int>(rows.size()) - 1))].key);
    if (rows.empty())
        m_card->show({});
}

void InspectPage::choose(const QString &key)
{
    const auto id = core::InterfaceId::parse(key);
    if (!id)
        return;
    m_at = m_queue->model().rowOf(key);
    m_card->show({*id});
    // In the background the queue moves on by itself, and must not take what another page has chosen.
    if (isVisible())
        selection().choose({*id});
}

} // namespace desktop
