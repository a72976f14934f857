// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringView>

#include <compare>
#include <optional>
#include <vector>

#include "core/value/decimal.hpp"

namespace core {

enum class Dimension { Torque, Resistance };

/// A unit of measurement with its exact factor to the coherent SI unit of its dimension (N·m, Ω).
struct Unit {
    QString symbol; ///< as written in records: `N·m`, `lbf·in`, `mΩ`
    Dimension dimension;
    Decimal factor;
};

/// All units the program knows, one row each.
/// Factors: NIST SP 811 (2008) appendix B, exact by the definitions of pound, inch and standard gravity.
const std::vector<Unit> &units();

/// The unit of that symbol, or nullptr. `N.m` and `Nm` are taken for `N·m`, `in-lb` is not: which of two orders was meant
/// is not for a program to guess.
const Unit *findUnit(QStringView symbol);

/// A measured or specified value with its unit, kept as typed.
class Quantity {
public:
    /// Nothing when the value is no decimal or the unit is unknown.
    static std::optional<Quantity> parse(QStringView value, QStringView unit);

    const Decimal &value() const { return m_value; }
    const QString &unit() const { return m_unit->symbol; }
    Dimension dimension() const { return m_unit->dimension; }
    /// `23.5 N·m`
    QString text() const { return m_value.text() + u' ' + m_unit->symbol; }

    /// Exact, across units. Unordered when the dimensions differ.
    friend std::partial_ordering operator<=>(const Quantity &a, const Quantity &b);
    friend bool operator==(const Quantity &a, const Quantity &b) { return (a <=> b) == 0; }

private:
    Quantity(Decimal value, const Unit *unit) : m_value(std::move(value)), m_unit(unit) {}
    Decimal m_value;
    const Unit *m_unit; ///< points into units(), which lives as long as the program
};

} // namespace core
