// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/list/interface_model.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <utility>

#include "app/desktop/parts/mid_sentence.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/job/loose_ends.hpp"
#include "core/requirements/catalogue.hpp"

namespace desktop {

QString missingInWords(const core::InterfaceState &item)
{
    QStringList words;
    if (item.rejection)
        words << InterfaceModel::tr("rejected");
    if (core::stageOf(item) == core::Stage::Reconnected) {
        for (const auto &[requirement, sentence] : core::stillToShow(item))
            words << midSentence(QCoreApplication::translate("Requirement", requirement->title));
    }
    for (const core::ConditionStated &stated : item.conditions)
        words << core::conditionWord(stated.condition).toLower();
    if (item.stopped)
        words << InterfaceModel::tr("stopped");
    if (const QString found = walkRoundInWords(item); !found.isEmpty())
        words << found;
    if (core::isWithoutDetails(item))
        words << InterfaceModel::tr("its details");
    if (item.toLookUp)
        words << InterfaceModel::tr("its row, by the new revision");
    if (item.notApplicable)
        words << (core::isNotApplicable(item) ? InterfaceModel::tr("not applicable") : InterfaceModel::tr("not applicable: to be agreed"));
    else if (core::isConfirmedUndisturbed(item))
        words << InterfaceModel::tr("undisturbed");
    return words.join(QStringLiteral(", "));
}

InterfaceModel::InterfaceModel(JobFeed &feed, const core::Kinds &kinds, QObject *parent)
    : QAbstractTableModel(parent), m_feed(feed), m_kinds(kinds)
{
    connect(&feed, &JobFeed::jobChanged, this, &InterfaceModel::reload);
    connect(&feed, &JobFeed::changed, this, &InterfaceModel::follow);
    reload();
}

void InterfaceModel::reload()
{
    beginResetModel();
    m_rows.clear();
    m_prepared.clear();
    (void)countLoose();
    if (m_feed.state()) {
        for (const core::InterfaceState &item : m_feed.state()->items)
            m_rows.push_back(item.listed.id);
    }
    m_prepared.resize(m_rows.size());
    endResetModel();
}

QSet<core::InterfaceId> InterfaceModel::countLoose()
{
    const std::set<core::InterfaceId> items = core::looseItems(m_feed.looseEnds());
    const QSet<core::InterfaceId> loose(items.begin(), items.end());
    const QSet<core::InterfaceId> before = std::exchange(m_loose, loose);
    return (loose - before) + (before - loose);
}

void InterfaceModel::removeGone()
{
    for (std::size_t row = m_rows.size(); row-- > 0;) {
        if (m_feed.state()->item(m_rows[row]))
            continue;
        beginRemoveRows({}, static_cast<int>(row), static_cast<int>(row));
        m_rows.erase(m_rows.begin() + static_cast<std::ptrdiff_t>(row));
        m_prepared.erase(m_prepared.begin() + static_cast<std::ptrdiff_t>(row));
        endRemoveRows();
    }
}

void InterfaceModel::appendNew()
{
    // What remains is in the list's order and new interfaces come last, so the tail is what is new.
    const auto &items = m_feed.state()->items;
    if (items.size() <= m_rows.size())
        return;
    beginInsertRows({}, static_cast<int>(m_rows.size()), static_cast<int>(items.size()) - 1);
    for (std::size_t row = m_rows.size(); row < items.size(); ++row)
        m_rows.push_back(items[row].listed.id);
    m_prepared.resize(m_rows.size());
    endInsertRows();
}

void InterfaceModel::follow(const Touched &touched)
{
    // A tool that comes into doubt makes a loose end of an interface that nobody touched.
    const QSet<core::InterfaceId> changed = touched.items + countLoose();
    if (touched.list) {
        removeGone();
        appendNew();
    }
    if (changed.isEmpty())
        return;
    // Neighbours in one go.
    for (std::size_t row = 0; row < m_rows.size(); ++row) {
        const std::size_t first = row;
        for (; row < m_rows.size() && changed.contains(m_rows[row]); ++row)
            m_prepared[row].reset();
        if (row > first)
            emit dataChanged(index(static_cast<int>(first), 0), index(static_cast<int>(row) - 1, ColumnCount - 1));
    }
}

std::optional<int> InterfaceModel::rowOf(const core::InterfaceId &item) const
{
    const auto at = std::find(m_rows.begin(), m_rows.end(), item);
    return at == m_rows.end() ? std::nullopt : std::optional(static_cast<int>(at - m_rows.begin()));
}

const core::InterfaceState *InterfaceModel::itemAt(int row) const
{
    if (!m_feed.state() || row < 0 || row >= static_cast<int>(m_rows.size()))
        return nullptr;
    const auto at = static_cast<std::size_t>(row);
    // Rows stand in the list's order, except while interfaces come or go.
    const auto &items = m_feed.state()->items;
    return at < items.size() && items[at].listed.id == m_rows[at] ? &items[at] : m_feed.state()->item(m_rows[at]);
}

int InterfaceModel::rowCount(const QModelIndex &parent) const { return parent.isValid() ? 0 : static_cast<int>(m_rows.size()); }
int InterfaceModel::columnCount(const QModelIndex &parent) const { return parent.isValid() ? 0 : ColumnCount; }

QString InterfaceModel::textOf(const core::InterfaceState &item, int column) const
{
    switch (column) {
    case Stage: return item.sent ? tr("Sent on") : core::stageWord(core::stageOf(item));
    case Id: return item.listed.id.text();
    case Name: return item.listed.critical ? tr("%1 · critical").arg(item.listed.name) : item.listed.name;
    case Kind: return m_kinds.nameOf(item.listed.kind);
    case Zone: return item.listed.zone;
    case Tag: return item.removal ? item.removal->tag : QString();
    case Missing: return missingInWords(item);
    default: return {};
    }
}

QByteArray InterfaceModel::haystackOf(const core::InterfaceState &item) const
{
    const core::Listing &listed = item.listed;
    QStringList straws{listed.reference, listed.note, listed.aircraftHalf, listed.unitHalf};
    for (int column = 0; column < ColumnCount; ++column)
        straws << textOf(item, column);
    return straws.join(u'\n').toLower().toUtf8();
}

const InterfaceModel::Prepared &InterfaceModel::preparedAt(int row) const
{
    std::optional<Prepared> &prepared = m_prepared[static_cast<std::size_t>(row)];
    if (!prepared) {
        const core::InterfaceState *item = itemAt(row);
        prepared = item ? Prepared{haystackOf(*item), core::stageOf(*item)} : Prepared{};
    }
    return *prepared;
}

const QByteArray &InterfaceModel::haystackAt(int row) const { return preparedAt(row).haystack; }
core::Stage InterfaceModel::stageAt(int row) const { return preparedAt(row).stage; }

bool InterfaceModel::isLooseAt(int row) const
{
    const core::InterfaceState *item = itemAt(row);
    return item && m_loose.contains(item->listed.id);
}

QVariant InterfaceModel::data(const QModelIndex &index, int role) const
{
    const core::InterfaceState *item = index.isValid() ? itemAt(index.row()) : nullptr;
    if (!item)
        return {};
    switch (role) {
    case Qt::DisplayRole: return textOf(*item, index.column());
    case Qt::ToolTipRole: return textOf(*item, index.column());
    case ItemRole: return item->listed.id.text();
    case StageRole: return static_cast<int>(stageAt(index.row()));
    case CriticalRole: return item->listed.critical;
    default: return {};
    }
}

QVariant InterfaceModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole || section < 0 || section >= ColumnCount)
        return {};
    const QString titles[] = {tr("Stage"), tr("Item"), tr("Name"), tr("Kind"), tr("Zone"), tr("Tag"), tr("How it stands")};
    return titles[section];
}

} // namespace desktop
