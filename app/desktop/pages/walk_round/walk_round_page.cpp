// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/walk_round/walk_round_page.hpp"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/job/linked.hpp"
#include "core/job/stage.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

constexpr QLatin1String confirming("walkround.free");

/// Everything that is off, zone by zone.
std::vector<const core::InterfaceState *> offItems(const core::JobState &job)
{
    std::vector<const core::InterfaceState *> items;
    for (const core::InterfaceState &item : job.items) {
        if (core::stageOf(item) == core::Stage::Disconnected && !core::isElsewhere(item))
            items.push_back(&item);
    }
    std::stable_sort(items.begin(), items.end(), [](const auto *a, const auto *b) { return a->listed.zone < b->listed.zone; });
    return items;
}

} // namespace

qsizetype WalkRoundPage::waiting(const PageTools &tools)
{
    if (!tools.feed.state())
        return 0;
    const auto items = offItems(*tools.feed.state());
    return std::count_if(items.begin(), items.end(), [](const core::InterfaceState *item) { return !item->walkedRound; });
}

WalkRoundPage::WalkRoundPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    auto *column = new QVBoxLayout(this);
    m_title = makeLabel({}, "title", this);
    m_rows = new RowTable({{tr("Looked at"), 16}, {tr("Zone"), 12}, {tr("Item"), 10}, {tr("Name"), 0}, {tr("Undone by"), 44}, {tr("Confirmed free"), 44}}, tr("Walk-round"),
                          tr("Nothing is off. Whatever is disconnected comes here, for a second person to look at before the mounts are released."), this);
    m_rows->setObjectName(u"round"_s);
    m_tick = makeButton(tr("Looked at it: free"), "main", this);
    m_tick->setObjectName(u"tick"_s);
    m_tick->setMinimumHeight(touchHeight(fontMetrics()));
    m_sign = makeButton({}, "", this);
    m_sign->setObjectName(u"signTicked"_s);
    m_sign->setMinimumHeight(touchHeight(fontMetrics()));
    m_why = makeLabel({}, "quiet", this);
    m_why->setWordWrap(true);
    m_actions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"walkround.attached"_L1, "interface.freed"_L1}, this);
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(m_tick);
    buttons->addWidget(m_sign);
    buttons->addStretch();
    column->addWidget(m_title);
    column->addWidget(m_rows, 1);
    column->addLayout(buttons);
    column->addWidget(m_why);
    column->addWidget(m_actions);
    setFocusProxy(&m_rows->view());
    m_rows->view().installEventFilter(this);
    connect(m_tick, &QPushButton::clicked, this, &WalkRoundPage::tick);
    connect(m_sign, &QPushButton::clicked, this, &WalkRoundPage::sign);
    connect(m_rows, &RowTable::chosenChanged, this, &WalkRoundPage::showChosen);
    connect(&feed(), &JobFeed::changed, this, &WalkRoundPage::refresh);
    connect(&feed(), &JobFeed::jobChanged, this, [this] {
        m_ticked.clear(); // of another job, whose items may have the same ids
        refresh();
    });
    refresh();
}

void WalkRoundPage::chooseRow(const QString &key) { m_rows->choose(key); }

void WalkRoundPage::refresh()
{
    // Ticks are one person's look: whoever signs next looks for themselves.
    if (m_tickedBy != deeds().person()) {
        m_ticked.clear();
        m_tickedBy = deeds().person();
    }
    std::vector<Row> rows;
    QSet<core::InterfaceId> still;
    for (const core::InterfaceState *item : feed().state() ? offItems(*feed().state()) : std::vector<const core::InterfaceState *>()) {
        const core::InterfaceId &id = item->listed.id;
        // What was found about it since takes the tick away; who may sign is asked when it is ticked, and by the sheet.
        if (m_ticked.contains(id) && !item->walkedRound && !item->stillAttached && !core::isHeldInPlace(*item))
            still.insert(id);
        const QString state = item->stillAttached ? tr("still attached") : item->walkedRound ? tr("free") : still.contains(id) ? tr("ticked") : tr("not yet");
        rows.push_back({id.text(),
                        {state, item->listed.zone, id.text(), item->stillAttached ? tr("%1\n%2").arg(item->listed.name, walkRoundInWords(*item)) : item->listed.name,
                         markInWords(item->removal->mark, *feed().state(), feed().reg()), item->walkedRound ? markInWords(*item->walkedRound, *feed().state(), feed().reg()) : QString()},
                        false, item->stillAttached.has_value()});
    }
    m_ticked = still;
    m_rows->take(rows);
    if (m_rows->chosen().isEmpty() && !rows.empty()) {
        const auto next = std::find_if(rows.begin(), rows.end(), [this](const Row &row) { return !feed().state()->item(*core::InterfaceId::parse(row.key))->walkedRound; });
        m_rows->choose(next == rows.end() ? rows.front().key : next->key);
    }
    const auto left = waiting(tools());
    m_title->setText(left == 0 ? tr("Walk-round") : tr("Walk-round: %n to look at", nullptr, static_cast<int>(left)));
    showChosen();
}

void WalkRoundPage::showChosen()
{
    const auto id = core::InterfaceId::parse(m_rows->chosen());
    const core::InterfaceState *item = id && feed().state() ? feed().state()->item(*id) : nullptr;
    const bool isTicked = id && m_ticked.contains(*id);
    QString why;
    if (item && item->walkedRound)
        why = tr("%1 is confirmed free.").arg(itemInWords(*item));
    else if (item && !isTicked)
        why = refusalsInWords(deeds().whyNot(actionFor(confirming), {*id}));
    m_tick->setText(isTicked ? tr("Take the tick back   Space") : tr("Looked at it: free   Space"));
    m_tick->setEnabled(item && (isTicked || why.isEmpty()));
    m_tick->setToolTip(!item ? tr("Choose a row first.") : m_tick->isEnabled() ? tr("Space, while the list has the keyboard. One at a time.") : why);
    m_why->setText(why);
    m_why->setVisible(!why.isEmpty());
    m_sign->setText(tr("Sign %n ticked", nullptr, static_cast<int>(m_ticked.size())));
    m_sign->setEnabled(!m_ticked.isEmpty());
    m_sign->setToolTip(m_ticked.isEmpty() ? tr("Tick what you looked at first, one by one.") : QString());
    m_actions->show(id ? std::vector{*id} : std::vector<core::InterfaceId>());
    if (isVisible() && id)
        selection().choose({*id});
}

void WalkRoundPage::tick()
{
    const auto id = core::InterfaceId::parse(m_rows->chosen());
    if (!id || !m_tick->isEnabled())
        return;
    if (!m_ticked.remove(*id)) {
        m_ticked.insert(*id);
        // On to the next that nobody has looked at.
        const auto &rows = m_rows->model().rows();
        const auto next = std::find_if(rows.begin() + m_rows->model().rowOf(id->text()) + 1, rows.end(), [&](const Row &row) {
            const auto other = core::InterfaceId::parse(row.key);
            return other && !m_ticked.contains(*other) && !feed().state()->item(*other)->walkedRound;
        });
        const QString onTo = next == rows.end() ? QString() : next->key;
        refresh();
        if (!onTo.isEmpty())
            m_rows->choose(onTo);
        return;
    }
    refresh();
}

void WalkRoundPage::sign()
{
    std::vector<core::InterfaceId> ticked;
    for (const Row &row : m_rows->model().rows()) {
        const auto id = core::InterfaceId::parse(row.key);
        if (id && m_ticked.contains(*id))
            ticked.push_back(*id);
    }
    deeds().begin(actionFor(confirming), ticked);
}

bool WalkRoundPage::eventFilter(QObject *watched, QEvent *event)
{
    const auto *key = event->type() == QEvent::KeyPress ? static_cast<QKeyEvent *>(event) : nullptr;
    if (key && key->key() == Qt::Key_Space && key->modifiers() == Qt::NoModifier) {
        // A key that is held down would run through the list and tick what nobody looked at.
        if (!key->isAutoRepeat())
            tick();
        return true;
    }
    return Page::eventFilter(watched, event);
}

} // namespace desktop
