// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/list_index.hpp"

#include <algorithm>
#include <iterator>

namespace core {

namespace {

void putIn(Places &places, std::size_t place)
{
    const auto at = std::lower_bound(places.begin(), places.end(), place);
    if (at == places.end() || *at != place)
        places.insert(at, place);
}

template <class Key>
void takeOut(QHash<Key, Places> &index, const Key &key, std::size_t place)
{
    const auto at = index.find(key);
    if (at == index.end())
        return;
    std::erase(*at, place);
    if (at->empty())
        index.erase(at);
}

template <class Key>
const Places &placesOf(const QHash<Key, Places> &index, const Key &key)
{
    static const Places none;
    const auto at = index.constFind(key);
    return at == index.constEnd() ? none : *at;
}

} // namespace

void ListIndex::note(std::size_t place, const Listing *before, const Listing &after)
{
    if (before) {
        for (const InterfaceId &inFront : before->access)
            takeOut(m_under, inFront, place);
        takeOut(m_twins, before->twinGroup, place);
        takeOut(m_independent, before->independenceGroup, place);
    }
    for (const InterfaceId &inFront : after.access)
        putIn(m_under[inFront], place);
    if (!after.twinGroup.isEmpty())
        putIn(m_twins[after.twinGroup], place);
    if (!after.independenceGroup.isEmpty())
        putIn(m_independent[after.independenceGroup], place);
}

void ListIndex::noteSent(std::size_t place) { putIn(m_sent, place); }

const Places &ListIndex::under(const InterfaceId &id) const { return placesOf(m_under, id); }
const Places &ListIndex::twins(const QString &group) const { return placesOf(m_twins, group); }
const Places &ListIndex::independent(const QString &group) const { return placesOf(m_independent, group); }

Places united(const Places &a, const Places &b)
{
    Places all;
    std::set_union(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(all));
    return all;
}

} // namespace core
