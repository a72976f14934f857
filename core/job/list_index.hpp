// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QHash>
#include <QString>

#include <cstddef>
#include <vector>

#include "core/job/listed.hpp"

namespace core {

/// Places of items in a job's list, ascending.
using Places = std::vector<std::size_t>;

/// Which rows of the list name which others. Kept beside the items, since a rule that walked the whole list for every entry would make a job of
/// thousands of interfaces slow to verify.
class ListIndex {
public:
    /// The row at `place` was listed (`before` is null then), or is another.
    void note(std::size_t place, const Listing *before, const Listing &after);
    void noteSent(std::size_t place);

    /// The items that name this one as what is in front of them.
    const Places &under(const InterfaceId &id) const;
    /// Nothing for an empty name, by which no item is in a group.
    const Places &twins(const QString &group) const;
    const Places &independent(const QString &group) const;
    /// The items that were given over to a linked job: their rows may be others there.
    const Places &sent() const { return m_sent; }

    bool operator==(const ListIndex &) const = default;

private:
    QHash<InterfaceId, Places> m_under;
    QHash<QString, Places> m_twins;
    QHash<QString, Places> m_independent;
    Places m_sent;
};

/// All that are in either, ascending.
Places united(const Places &a, const Places &b);

} // namespace core
