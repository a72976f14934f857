// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringView>

#include <vector>

#include "core/kinds/kind.hpp"

namespace core {

/// All kinds that the program came with, in the order of their names.
class Kinds {
public:
    /// Refuses an empty collection and two kinds of one id or one name: a program without kinds could list nothing.
    static Result<Kinds> of(std::vector<Kind> kinds);

    const std::vector<Kind> &all() const { return m_kinds; }
    /// The kind of that id, or nullptr.
    const Kind *find(QStringView id) const;
    /// Its name for screens, or the id itself where the kind is unknown.
    QString nameOf(const QString &id) const;
    bool operator==(const Kinds &) const = default;

private:
    explicit Kinds(std::vector<Kind> kinds) : m_kinds(std::move(kinds)) {}
    std::vector<Kind> m_kinds;
};

} // namespace core
