// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/list/interface_filter.hpp"

#include <QCollator>

#include <algorithm>
#include <cstring>
#include <numeric>

#include "app/desktop/pages/list/interface_model.hpp"

namespace desktop {

namespace {

/// Columns stay as they are.
constexpr auto rowsAlone = QAbstractItemModel::VerticalSortHint;

QCollator numericCollator()
{
    QCollator collator;
    collator.setNumericMode(true);
    collator.setCaseSensitivity(Qt::CaseInsensitive);
    return collator;
}

/// Thousands of rows are searched at every keystroke; the system's search is several times as quick as Qt's.
bool holds(const QByteArray &text, const QByteArray &word)
{
    return memmem(text.constData(), static_cast<std::size_t>(text.size()), word.constData(), static_cast<std::size_t>(word.size())) != nullptr;
}

/// Sorts rows by a key that is made once for each: comparing texts by the rules of a language is slow.
template <class KeyOf>
void sortBy(std::vector<int> &rows, Qt::SortOrder order, KeyOf keyOf)
{
    using Keyed = std::pair<decltype(keyOf(0)), int>;
    std::vector<Keyed> keyed;
    keyed.reserve(rows.size());
    for (const int row : rows)
        keyed.emplace_back(keyOf(row), row);
    std::stable_sort(keyed.begin(), keyed.end(), [order](const Keyed &a, const Keyed &b) {
        return order == Qt::AscendingOrder ? a.first < b.first : b.first < a.first;
    });
    std::transform(keyed.begin(), keyed.end(), rows.begin(), [](const Keyed &one) { return one.second; });
}

} // namespace

InterfaceFilter::InterfaceFilter(InterfaceModel &model, QObject *parent) : QAbstractProxyModel(parent), m_model(model)
{
    setSourceModel(&model);
    const auto end = [this] {
        m_order = sorted();
        endLayout(filtered(m_order));
    };
    connect(&model, &QAbstractItemModel::dataChanged, this, &InterfaceFilter::followData);
    connect(&model, &QAbstractItemModel::rowsAboutToBeInserted, this, &InterfaceFilter::beginLayout);
    connect(&model, &QAbstractItemModel::rowsAboutToBeRemoved, this, &InterfaceFilter::beginLayout);
    connect(&model, &QAbstractItemModel::rowsInserted, this, end);
    connect(&model, &QAbstractItemModel::rowsRemoved, this, end);
    connect(&model, &QAbstractItemModel::modelAboutToBeReset, this, &InterfaceFilter::beginResetModel);
    connect(&model, &QAbstractItemModel::modelReset, this, [this] {
        m_order = sorted();
        place(filtered(m_order));
        endResetModel();
    });
    m_order = sorted();
    place(filtered(m_order));
}

int InterfaceFilter::rowCount(const QModelIndex &parent) const { return parent.isValid() ? 0 : static_cast<int>(m_shown.size()); }
int InterfaceFilter::columnCount(const QModelIndex &parent) const { return parent.isValid() ? 0 : m_model.columnCount(); }

QVariant InterfaceFilter::headerData(int section, Qt::Orientation orientation, int role) const
{
    // Also when no row is shown.
    return m_model.headerData(section, orientation, role);
}

QModelIndex InterfaceFilter::index(int row, int column, const QModelIndex &parent) const
{
    return hasIndex(row, column, parent) ? createIndex(row, column) : QModelIndex();
}

QModelIndex InterfaceFilter::mapToSource(const QModelIndex &shown) const
{
    if (!shown.isValid() || shown.row() >= rowCount())
        return {};
    return m_model.index(m_shown[static_cast<std::size_t>(shown.row())], shown.column());
}

QModelIndex InterfaceFilter::mapFromSource(const QModelIndex &source) const
{
    if (!source.isValid() || source.row() >= static_cast<int>(m_rowOf.size()))
        return {};
    return index(m_rowOf[static_cast<std::size_t>(source.row())], source.column());
}

void InterfaceFilter::setWords(const QString &text)
{
    QByteArrayList words;
    for (const QString &word : text.toLower().split(u' ', Qt::SkipEmptyParts))
        words << word.toUtf8();
    if (words == m_words)
        return;
    // Who types on looks for less of the same: what is hidden already stays hidden.
    const bool isNarrower = std::all_of(m_words.begin(), m_words.end(), [&](const QByteArray &before) {
        return std::any_of(words.begin(), words.end(), [&](const QByteArray &word) { return word.contains(before); });
    });
    m_words = words;
    arrange(filtered(isNarrower ? m_shown : m_order));
}

void InterfaceFilter::setLooseOnly(bool isOn)
{
    if (isOn == m_looseOnly)
        return;
    m_looseOnly = isOn;
    arrange(filtered(m_order));
}

void InterfaceFilter::sort(int column, Qt::SortOrder order)
{
    m_column = column;
    m_sortOrder = order;
    m_order = sorted();
    arrange(filtered(m_order));
}

bool InterfaceFilter::shows(int row) const
{
    if (m_looseOnly && !m_model.isLooseAt(row))
        return false;
    if (m_words.isEmpty())
        return true;
    const QByteArray &haystack = m_model.haystackAt(row);
    return std::all_of(m_words.begin(), m_words.end(), [&](const QByteArray &word) { return holds(haystack, word); });
}

std::vector<int> InterfaceFilter::sorted() const
{
    std::vector<int> rows(static_cast<std::size_t>(m_model.rowCount()));
    std::iota(rows.begin(), rows.end(), 0);
    if (m_column == InterfaceModel::Stage)
        sortBy(rows, m_sortOrder, [this](int row) { return m_model.stageAt(row); });
    else if (m_column >= 0)
        sortBy(rows, m_sortOrder, [this, collator = numericCollator()](int row) { return collator.sortKey(m_model.index(row, m_column).data().toString()); });
    return rows;
}

std::vector<int> InterfaceFilter::filtered(std::vector<int> rows) const
{
    std::erase_if(rows, [this](int row) { return !shows(row); });
    return rows;
}

void InterfaceFilter::place(std::vector<int> shown)
{
    m_shown = std::move(shown);
    m_rowOf.assign(static_cast<std::size_t>(m_model.rowCount()), -1);
    for (std::size_t at = 0; at < m_shown.size(); ++at)
        m_rowOf[static_cast<std::size_t>(m_shown[at])] = static_cast<int>(at);
}

void InterfaceFilter::arrange(std::vector<int> shown)
{
    if (shown == m_shown)
        return;
    beginLayout();
    endLayout(std::move(shown));
}

void InterfaceFilter::beginLayout()
{
    emit layoutAboutToBeChanged({}, rowsAlone);
    m_kept = persistentIndexList();
    m_keptSources.clear();
    for (const QModelIndex &kept : m_kept)
        m_keptSources << mapToSource(kept);
}

void InterfaceFilter::endLayout(std::vector<int> shown)
{
    place(std::move(shown));
    QModelIndexList now;
    for (const QPersistentModelIndex &source : m_keptSources)
        now << mapFromSource(source);
    changePersistentIndexList(m_kept, now);
    emit layoutChanged({}, rowsAlone);
}

void InterfaceFilter::followData(const QModelIndex &first, const QModelIndex &last)
{
    bool isOtherwise = m_column >= 0;
    for (int row = first.row(); row <= last.row(); ++row) {
        isOtherwise = isOtherwise || shows(row) != isShown(row);
        if (isShown(row))
            emit dataChanged(mapFromSource(m_model.index(row, first.column())), mapFromSource(m_model.index(row, last.column())));
    }
    if (!isOtherwise)
        return;
    m_order = sorted();
    arrange(filtered(m_order));
}

} // namespace desktop
