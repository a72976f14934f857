// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/list/list_page.hpp"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/actions.hpp"
#include "app/desktop/begun/typed_in.hpp"
#include "app/desktop/pages/list/interface_delegate.hpp"
#include "app/desktop/pages/list/interface_filter.hpp"
#include "app/desktop/pages/list/interface_model.hpp"
#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/item_card.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/theme.hpp"
#include "core/labels/scanned.hpp"

namespace desktop {

namespace {

using namespace Qt::StringLiterals;

const std::vector<QLatin1String> &offered()
{
    static const std::vector<QLatin1String> kinds = {"interface.disconnected"_L1, "interface.reconnected"_L1, "torque.applied"_L1,
                                                     "bonding.measured"_L1,       "safetying.applied"_L1,     "leak.checked"_L1, "torque.taken_over"_L1,
                                                     "inspection.accepted"_L1,    "inspection.rejected"_L1,   "interface.disturbed"_L1,
                                                     "interface.found_open"_L1,   "interface.unlisted"_L1,    "interface.detailed"_L1,    "work.stopped"_L1,
                                                     "work.resumed"_L1,           "condition.stated"_L1,      "condition.cleared"_L1,     "interface.undisturbed"_L1,
                                                     "interface.not_applicable"_L1, "interface.not_applicable_agreed"_L1, "twins.verified"_L1, "inspection.repeated"_L1,
                                                     "photo.attached"_L1,         "finding.raised"_L1,        "blank.missing"_L1,         "interface.sent"_L1,         "tag.lost"_L1,
                                                     "tag.exchanged"_L1,          "interface.relisted"_L1};
    return kinds;
}

} // namespace

ListPage::ListPage(const PageTools &tools, QWidget *parent)
    : Page(tools, parent), m_model(new InterfaceModel(tools.feed, tools.kinds, this)), m_filter(new InterfaceFilter(*m_model, this))
{
    m_card = new ItemCard(tools, offered(), this);
    auto *left = new QWidget(this);
    auto *column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(makeFilterRow());
    m_stack = new QStackedWidget(left);
    m_stack->addWidget(makeTable());
    m_stack->addWidget(makeEmpty());
    column->addWidget(m_stack, 1);

    auto *splitter = new QSplitter(Qt::Horizontal, this);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(left);
    splitter->addWidget(m_card);
    connect(m_card, &ItemCard::photosWanted, this, [this](const QString &id) { emit pageWanted(u"photos"_s, id); });
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 2);
    auto *layout = new QHBoxLayout(this);
    layout->addWidget(splitter);

    setFocusProxy(m_table);
    addShortcuts();
    connect(m_table->selectionModel(), &QItemSelectionModel::selectionChanged, this, &ListPage::followView);
    connect(&selection(), &Selection::changed, this, &ListPage::followSelection);
    connect(m_filter, &QAbstractItemModel::modelReset, this, &ListPage::count);
    connect(m_filter, &QAbstractItemModel::layoutChanged, this, [this] {
        count();
        // What is filtered away is not chosen any more; a change of layout does not say so.
        if (!m_isFollowing && m_table->selectionModel()->selectedRows().size() != static_cast<qsizetype>(selection().items().size()))
            followView();
    });
    count();
}

QWidget *ListPage::makeFilterRow()
{
    auto *row = new QWidget(this);
    auto *layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    m_words = new QLineEdit(row);
    m_words->setObjectName(u"filter"_s);
    m_words->setPlaceholderText(tr("Filter: item, name, zone, tag, stage …"));
    m_words->setAccessibleName(tr("Filter the list"));
    m_words->setClearButtonEnabled(true);
    m_words->setProperty(losesNothing, true);
    m_looseOnly = new QCheckBox(tr("&Only with loose ends"), row);
    m_count = makeLabel({}, "quiet", row);
    m_count->setWordWrap(false);
    layout->addWidget(m_words, 1);
    layout->addWidget(m_looseOnly);
    layout->addWidget(m_count);
    connect(m_words, &QLineEdit::textChanged, m_filter, &InterfaceFilter::setWords);
    connect(m_words, &QLineEdit::textChanged, this, &ListPage::count);
    connect(m_words, &QLineEdit::returnPressed, this, &ListPage::jumpToScanned);
    connect(m_looseOnly, &QCheckBox::toggled, m_filter, &InterfaceFilter::setLooseOnly);
    connect(m_looseOnly, &QCheckBox::toggled, this, &ListPage::count);
    return row;
}

QWidget *ListPage::makeTable()
{
    m_table = new QTableView(this);
    m_table->setObjectName(u"interfaces"_s);
    m_table->setAccessibleName(tr("Interfaces"));
    m_table->setModel(m_filter);
    m_table->setItemDelegate(new InterfaceDelegate(m_table));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setTabKeyNavigation(false);
    m_table->setWordWrap(false);
    m_table->setShowGrid(false);
    m_table->setAlternatingRowColors(true);
    m_table->setSortingEnabled(true);
    m_table->sortByColumn(-1, Qt::AscendingOrder); // the list's own order until somebody sorts
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(touchHeight(fontMetrics()));
    QHeaderView *header = m_table->horizontalHeader();
    header->setHighlightSections(false);
    header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    const int width = fontMetrics().averageCharWidth();
    const std::pair<int, int> widths[] = {{InterfaceModel::Stage, 21}, {InterfaceModel::Id, 9}, {InterfaceModel::Kind, 19}, {InterfaceModel::Zone, 10}, {InterfaceModel::Tag, 8}, {InterfaceModel::Missing, 20}};
    for (const auto &[column, characters] : widths)
        header->resizeSection(column, std::max(width * characters, header->sectionSizeHint(column)));
    header->setSectionResizeMode(InterfaceModel::Name, QHeaderView::Stretch);
    header->setMinimumSectionSize(width * 7);
    m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return m_table;
}

QWidget *ListPage::makeEmpty()
{
    auto *empty = new QWidget(this);
    auto *column = new QVBoxLayout(empty);
    column->addStretch();
    column->addWidget(makeLabel(tr("The list is empty"), "title", empty), 0, Qt::AlignHCenter);
    QLabel *words = makeLabel(tr("Import the list of interfaces of this unit as a CSV file, or drop the file onto the window. You see every row before anything is taken."), "", empty);
    words->setMaximumWidth(fontMetrics().averageCharWidth() * 60);
    words->setAlignment(Qt::AlignHCenter);
    column->addWidget(words, 0, Qt::AlignHCenter);
    QPushButton *import = makeButton(tr("&Import the list …"), "main", empty);
    import->setObjectName(u"import"_s);
    import->setMinimumHeight(touchHeight(fontMetrics()));
    column->addWidget(import, 0, Qt::AlignHCenter);
    column->addStretch();
    connect(import, &QPushButton::clicked, this, &Page::importWanted);
    return empty;
}

void ListPage::addShortcuts()
{
    m_card->buttons().listenTo(m_table);
    auto *find = new QShortcut(QKeySequence::Find, this, nullptr, nullptr, Qt::WidgetWithChildrenShortcut);
    connect(find, &QShortcut::activated, m_words, [this] {
        m_words->setFocus(Qt::ShortcutFocusReason);
        m_words->selectAll();
    });
}

void ListPage::resizeEvent(QResizeEvent *event)
{
    Page::resizeEvent(event);
    // On a small screen the name is worth more than the kind, which stands on the card as well.
    m_table->setColumnHidden(InterfaceModel::Kind, width() < fontMetrics().averageCharWidth() * 230);
}

void ListPage::count()
{
    const bool isEmpty = m_model->rowCount() == 0;
    m_stack->setCurrentIndex(isEmpty ? 1 : 0);
    m_words->setEnabled(!isEmpty);
    m_looseOnly->setEnabled(!isEmpty);
    m_count->setText(isEmpty ? QString() : tr("%1 of %2 interfaces").arg(m_filter->rowCount()).arg(m_model->rowCount()));
}

void ListPage::jumpToScanned()
{
    // A label, a tag or an id, typed or scanned, means its interface alone, though others hold the same letters. Else the row on top is meant.
    const auto scanned = feed().state() ? core::meantBy(*feed().state(), m_words->text()) : core::Scanned();
    if (scanned.item)
        selection().choose({*scanned.item});
    else if (m_filter->rowCount() > 0)
        m_table->selectRow(0);
    else
        return;
    m_table->setFocus(Qt::OtherFocusReason);
}

void ListPage::followView()
{
    std::vector<core::InterfaceId> items;
    QModelIndexList rows = m_table->selectionModel()->selectedRows();
    std::sort(rows.begin(), rows.end()); // top to bottom, so that tags count in the order of the screen
    for (const QModelIndex &row : rows) {
        if (const auto id = core::InterfaceId::parse(row.data(InterfaceModel::ItemRole).toString()))
            items.push_back(*id);
    }
    const QScopedValueRollback following(m_isFollowing, true);
    m_card->show(items);
    selection().choose(items);
}

void ListPage::followSelection()
{
    if (m_isFollowing)
        return;
    const QScopedValueRollback following(m_isFollowing, true);
    m_words->clear();
    m_looseOnly->setChecked(false);
    QItemSelection rows;
    for (const core::InterfaceId &id : selection().items()) {
        if (const auto row = m_model->rowOf(id)) {
            const QModelIndex at = m_filter->mapFromSource(m_model->index(*row, 0));
            rows.select(at, at);
        }
    }
    m_table->selectionModel()->select(rows, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    if (!rows.isEmpty()) {
        m_table->selectionModel()->setCurrentIndex(rows.indexes().front(), QItemSelectionModel::NoUpdate);
        m_table->scrollTo(rows.indexes().front());
    }
    m_card->show(selection().items());
}

} // namespace desktop
