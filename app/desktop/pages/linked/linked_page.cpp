// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/linked/linked_page.hpp"

#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/job/linked.hpp"
#include "core/job/loose_ends.hpp"
#include "core/reports/left_in_words.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

qsizetype LinkedPage::waiting(const PageTools &tools) { return tools.feed.state() ? static_cast<qsizetype>(core::sentHere(*tools.feed.state()).size()) : 0; }

LinkedPage::LinkedPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    auto *column = new QVBoxLayout(this);
    m_jobs = new RowTable({{tr("Work order"), 16}, {tr("Job"), 36}, {tr("How it stands"), 0}, {tr("Linked"), 44}}, tr("Linked jobs"),
                          tr("This job is linked with no other. Link it where one piece of work is kept in several jobs: they share the people who had a hand in an item, and close together."), this);
    m_jobs->setObjectName(u"linkedJobs"_s);
    m_items = new RowTable({{tr("Item"), 10}, {tr("Name"), 0}, {tr("Which way"), 40}, {tr("How it stands"), 40}}, tr("Items handed on"),
                           tr("Nothing was handed on. An item is sent from the list, and taken on here."), this);
    m_items->setObjectName(u"handedOn"_s);
    m_actions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"interface.taken_on"_L1, "job.linked"_L1}, this);
    column->addWidget(makeLabel(tr("Linked jobs"), "title", this));
    column->addWidget(m_jobs, 2);
    column->addWidget(makeLabel(tr("Items handed on"), "heading", this));
    column->addWidget(m_items, 2);
    column->addWidget(m_actions);
    setFocusProxy(&m_items->view());
    connect(m_items, &RowTable::chosenChanged, this, &LinkedPage::showActions);
    follow(&LinkedPage::refresh);
    refresh();
}

void LinkedPage::refresh()
{
    showJobs();
    showItems();
    showActions();
}

void LinkedPage::showJobs()
{
    std::vector<Row> rows;
    const auto &job = feed().state();
    for (const core::Link &link : job ? job->links : std::vector<core::Link>()) {
        const core::JobState *other = core::seenJob(*job, link.ledger);
        const core::LooseEnds ends = other ? core::ownLooseEnds(core::asItSees(*job, *other), feed().reg()) : core::LooseEnds();
        const bool isAnswered = other && core::isLinkedWith(*other, *job->ledger);
        const QString state = !other          ? tr("cannot be seen from here")
                              : !isAnswered   ? tr("does not name this job yet")
                              : other->closed ? tr("closed on %1").arg(momentInWords(other->closed->at))
                              : ends.empty()  ? tr("ready to close")
                                              : tr("%1. The first: %2").arg(core::looseEndsInWords(std::ssize(ends)), ends.front().sentence);
        rows.push_back({link.ledger.text(), {link.workOrder, other ? other->facts.title : QString(), state, markInWords(link.mark, *feed().state(), feed().reg())}, false, !isAnswered});
    }
    m_jobs->take(rows);
}

void LinkedPage::showItems()
{
    std::vector<Row> rows;
    const auto &job = feed().state();
    if (job) {
        for (const core::Placed &one : core::sentHere(*job)) {
            const core::Listing &listed = one.item->listed;
            rows.push_back({listed.id.text(), {listed.id.text(), listed.name, tr("from %1").arg(core::jobInWords(*one.job)), tr("waits to be taken on here")}, false, true});
        }
        for (const core::InterfaceState &item : job->items) {
            if (item.takenOn)
                rows.push_back({u"in "_s + item.listed.id.text(), {item.listed.id.text(), item.listed.name, tr("from %1").arg(core::jobInWords(*job, item.takenOn->from)), tr("taken on: %1").arg(markInWords(item.takenOn->mark, *feed().state(), feed().reg()))}});
            if (item.sent)
                rows.push_back({u"out "_s + item.listed.id.text(), {item.listed.id.text(), item.listed.name, tr("to %1").arg(core::jobInWords(*job, item.sent->to)), core::whereTakenOn(*job, item) ? tr("taken on there") : tr("not taken on there yet")}, false, !core::whereTakenOn(*job, item)});
        }
    }
    m_items->take(rows);
}

void LinkedPage::showActions()
{
    const QString chosen = m_items->chosen();
    const auto &job = feed().state();
    const std::vector<core::Placed> waiting = job ? core::sentHere(*job) : std::vector<core::Placed>();
    const bool waits = std::any_of(waiting.begin(), waiting.end(), [&](const core::Placed &one) { return one.item->listed.id.text() == chosen; });
    m_actions->showSubject(waits ? chosen : QString());
}

/// The loose ends lead here with an item that was sent, or with a work order.
void LinkedPage::chooseRow(const QString &key) { m_items->choose(u"out "_s + key); }

} // namespace desktop
