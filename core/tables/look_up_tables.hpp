// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStringView>

#include <vector>

#include "core/tables/look_up_table.hpp"

namespace core {

/// All look-up tables that the program came with, in the order of the catalogue.
class LookUpTables {
public:
    /// Refuses a collection that is not the catalogue's: a table missing, twice, in another place, or unknown.
    static Result<LookUpTables> of(std::vector<LookUpTable> tables);

    const std::vector<LookUpTable> &all() const { return m_tables; }
    /// The table of that id, or nullptr.
    const LookUpTable *find(QStringView id) const;
    bool operator==(const LookUpTables &) const = default;

private:
    explicit LookUpTables(std::vector<LookUpTable> tables) : m_tables(std::move(tables)) {}
    std::vector<LookUpTable> m_tables;
};

} // namespace core
