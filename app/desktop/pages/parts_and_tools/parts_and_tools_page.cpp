// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/parts_and_tools/parts_and_tools_page.hpp"

#include <QTabWidget>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/job/hardware_of.hpp"
#include "core/job/linked.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

/// A table with what can be done under it, as one leaf of the page.
QWidget *leaf(QTabWidget *book, RowTable *rows, ActionButtons *actions)
{
    auto *leaf = new QWidget(book);
    auto *column = new QVBoxLayout(leaf);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(rows, 1);
    if (actions)
        column->addWidget(actions);
    leaf->setFocusProxy(&rows->view());
    return leaf;
}

QString standingInWords(const core::InterfaceState &item, const core::HardwareBalance &part)
{
    switch (core::hardwareStanding(item, part)) {
    case core::HardwareStanding::NotUndone: return PartsAndToolsPage::tr("not undone yet");
    case core::HardwareStanding::Open: return PartsAndToolsPage::tr("%1 to account for").arg(part.removed);
    case core::HardwareStanding::Even: return PartsAndToolsPage::tr("even");
    case core::HardwareStanding::NotEven: return PartsAndToolsPage::tr("not even");
    }
    Q_UNREACHABLE();
}

bool isLoose(core::HardwareStanding standing) { return standing == core::HardwareStanding::Open || standing == core::HardwareStanding::NotEven; }

QString countText(qint64 count) { return count == 0 ? QString() : QString::number(count); }

} // namespace

qsizetype PartsAndToolsPage::waiting(const PageTools &tools)
{
    if (!tools.feed.state())
        return 0;
    const core::JobState &job = *tools.feed.state();
    const auto blocks = std::count_if(job.tags.blocks.begin(), job.tags.blocks.end(), [](const core::TagBlock &block) { return !block.returned; });
    return static_cast<qsizetype>(job.tools.out().size()) + blocks;
}

PartsAndToolsPage::PartsAndToolsPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    auto *column = new QVBoxLayout(this);
    column->addWidget(makeLabel(tr("Parts and tools"), "title", this));
    auto *book = m_book = new QTabWidget(this);
    book->setAccessibleName(tr("Parts and tools"));
    m_tools = new RowTable({{tr("Marking"), 14}, {tr("State"), 14}, {tr("Sort"), 18}, {tr("What it is"), 0}, {tr("Pieces"), 8}, {tr("Who has it"), 18}, {tr("Issued"), 42}, {tr("Returned"), 42}},
                           tr("Tools"), tr("No tool was issued to this job yet. What is issued is counted at the hold points that ask for it, and stays a loose end until it is returned."), book);
    m_tools->setObjectName(u"tools"_s);
    m_toolActions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"tool.returned"_L1, "tool.missing"_L1, "tool.counted"_L1, "tool.issued"_L1}, book);
    m_tags = new RowTable({{tr("Tags"), 16}, {tr("State"), 14}, {tr("Hung now"), 12}, {tr("Lost"), 0}, {tr("Issued"), 42}, {tr("Returned"), 42}}, tr("Tags"),
                          tr("No block of tags was issued to this job. Where one is, each tag that is hung is of a block that is out, and the block is returned whole."), book);
    m_tags->setObjectName(u"tags"_s);
    m_tagActions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"tags.returned"_L1, "tags.issued"_L1}, book);
    m_hardware = new RowTable({{tr("Interface"), 26}, {tr("Part number"), 0}, {tr("Required"), 12}, {tr("Came off"), 12}, {tr("Reused"), 10}, {tr("Renewed"), 10}, {tr("Scrapped"), 10}, {tr("Balance"), 26}},
                              tr("Hardware"), tr("The list names no hardware, and none was recorded."), book);
    m_hardware->setObjectName(u"hardware"_s);
    book->addTab(leaf(book, m_tools, m_toolActions), tr("Tools"));
    book->addTab(leaf(book, m_tags, m_tagActions), tr("Tags"));
    book->addTab(leaf(book, m_hardware, nullptr), tr("Hardware"));
    column->addWidget(book, 1);
    const auto giveKeyboard = [this] { setFocusProxy(m_book->currentWidget()->focusProxy()); };
    connect(book, &QTabWidget::currentChanged, this, giveKeyboard);
    giveKeyboard();
    connect(m_tools, &RowTable::chosenChanged, this, &PartsAndToolsPage::showToolActions);
    connect(m_tags, &RowTable::chosenChanged, this, &PartsAndToolsPage::showTagActions);
    follow(&PartsAndToolsPage::refresh);
    refresh();
}

void PartsAndToolsPage::chooseRow(const QString &key)
{
    for (RowTable *rows : {m_tools, m_tags}) {
        if (rows->model().rowOf(key) < 0)
            continue;
        m_book->setCurrentWidget(rows->parentWidget());
        rows->choose(key);
        return;
    }
}

void PartsAndToolsPage::refresh()
{
    showTools();
    showTags();
    showHardware();
    showToolActions();
    showTagActions();
}

void PartsAndToolsPage::showTools()
{
    std::vector<core::JobTool> issues = feed().state() ? feed().state()->tools.issues : std::vector<core::JobTool>();
    std::stable_partition(issues.begin(), issues.end(), [](const core::JobTool &tool) { return !tool.returned; });
    std::vector<Row> rows;
    for (const core::JobTool &tool : issues) {
        const bool isLost = tool.missing && !tool.returned;
        const core::Tool *registered = feed().reg().tool(tool.marking);
        // Issued again after its return, a tool has two rows; what can be done is done to the last.
        const bool isLast = feed().state()->tools.last(tool.marking)->issued == tool.issued;
        rows.push_back({isLast ? tool.marking.text() : tool.marking.text() + u" #"_s + QString::number(tool.issued.seq),
                        {tool.marking.text(), tool.returned ? tr("returned") : isLost ? tr("missing, %1").arg(tool.missing->finding.text()) : tr("out"), choiceInWords(QString(core::jobToolSortText(tool.sort))), tool.name.isEmpty() && registered ? registered->name : tool.name,
                         tool.sort == core::JobToolSort::Kit ? QString::number(tool.pieces) : QString(), tool.holder ? feed().reg().nameOf(*tool.holder) : QString(), markInWords(tool.issued, *feed().state(), feed().reg()),
                         tool.returned ? markInWords(*tool.returned, *feed().state(), feed().reg()) : QString()},
                        false, !tool.returned});
    }
    m_tools->take(rows);
}

void PartsAndToolsPage::showTags()
{
    std::vector<Row> rows;
    const core::JobState none;
    const core::JobState &job = feed().state() ? *feed().state() : none;
    for (const core::TagBlock &block : job.tags.blocks) {
        const auto isOf = [&](const QString &tag) { return core::blockOf(job.tags, tag) == &block; };
        const auto hung = std::count_if(job.items.begin(), job.items.end(), [&](const core::InterfaceState &one) {
            const core::InterfaceState &item = core::asItIsNow(job, one);
            return item.removal && !item.restoration && isOf(item.removal->tag) && (!one.sent || (one.removal && one.removal->tag == item.removal->tag));
        });
        QStringList lost;
        for (const core::LostTag &one : job.tags.lost) {
            if (isOf(one.tag))
                lost << tr("%1 on %2: %3").arg(one.tag, one.item.text(), one.why);
        }
        rows.push_back({core::blockText(block),
                        {core::blockText(block), block.returned ? tr("returned") : tr("out"), countText(hung), lost.join(u"; "_s), markInWords(block.issued, *feed().state(), feed().reg()),
                         block.returned ? markInWords(*block.returned, *feed().state(), feed().reg()) : QString()},
                        false, !block.returned});
    }
    m_tags->take(rows);
}

void PartsAndToolsPage::showHardware()
{
    std::vector<Row> rows;
    const core::JobState none;
    const core::JobState &job = feed().state() ? *feed().state() : none;
    for (const core::InterfaceState &item : job.items) {
        for (const core::HardwareBalance &one : core::hardwareOf(item)) {
            rows.push_back({item.listed.id.text() + u' ' + one.part,
                            {itemInWords(item), one.mustBeNew ? tr("%1, always new").arg(one.part) : one.part, countText(one.required), item.removal ? QString::number(one.removed) : QString(), countText(one.reused),
                             countText(one.renewed), countText(one.scrapped), standingInWords(item, one)},
                            false, isLoose(core::hardwareStanding(item, one))});
        }
    }
    m_hardware->take(rows);
}

void PartsAndToolsPage::showToolActions()
{
    m_toolActions->showSubject(m_tools->chosen());
}

void PartsAndToolsPage::showTagActions()
{
    m_tagActions->showSubject(m_tags->chosen());
}

} // namespace desktop
