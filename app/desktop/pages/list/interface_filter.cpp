// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/list/interface_filter.hpp"

#include <algorithm>

#include "app/desktop/pages/list/interface_model.hpp"

namespace desktop {

InterfaceFilter::InterfaceFilter(QObject *parent) : QSortFilterProxyModel(parent)
{
    m_collator.setNumericMode(true);
    m_collator.setCaseSensitivity(Qt::CaseInsensitive);
    setSortRole(InterfaceModel::SortRole);
    setDynamicSortFilter(true);
}

void InterfaceFilter::setWords(const QString &text)
{
    const QStringList words = text.toLower().split(u' ', Qt::SkipEmptyParts);
    if (words == m_words)
        return;
    m_words = words;
    invalidateFilter();
}

void InterfaceFilter::setLooseOnly(bool isOn)
{
    if (isOn == m_looseOnly)
        return;
    m_looseOnly = isOn;
    invalidateFilter();
}

bool InterfaceFilter::filterAcceptsRow(int row, const QModelIndex &parent) const
{
    const QModelIndex at = sourceModel()->index(row, 0, parent);
    if (m_looseOnly && at.data(InterfaceModel::StageRole).toInt() == static_cast<int>(core::Stage::Inspected))
        return false;
    if (m_words.isEmpty())
        return true;
    const QString haystack = at.data(InterfaceModel::HaystackRole).toString();
    return std::all_of(m_words.begin(), m_words.end(), [&](const QString &word) { return haystack.contains(word); });
}

bool InterfaceFilter::lessThan(const QModelIndex &left, const QModelIndex &right) const
{
    const QVariant one = left.data(sortRole());
    const QVariant two = right.data(sortRole());
    if (one.typeId() == QMetaType::Int)
        return one.toInt() < two.toInt();
    return m_collator.compare(one.toString(), two.toString()) < 0;
}

} // namespace desktop
