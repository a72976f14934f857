// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringView>

#include <compare>
#include <optional>
#include <vector>

#include "core/value/decimal.hpp"
#include "core/value/rational.hpp"
#include "core/value/result.hpp"

namespace core {

/// What a unit measures. Moment is weight times arm, of a weight record: mass by length, and never compared with a torque.
enum class Dimension { Torque, Resistance, Voltage, Current, Mass, Length, Angle, Moment, Volume, VolumeRate, DropRate };

/// For a sentence: "a torque".
QString dimensionInWords(Dimension dimension);

/// A unit of measurement with its exact factor to the coherent unit of its dimension (N·m, Ω, V, A, kg, m, degrees, kg·m, L, L/min,
/// drops/min).
struct Unit {
    QString symbol; ///< as written in records: `N·m`, `lbf·in`, `mΩ`
    Dimension dimension;
    Decimal factor;
};

/// All units the program knows, one row each.
/// Factors: NIST SP 811 (2008) appendix B, exact by the definitions of pound, inch, US gallon and standard gravity.
const std::vector<Unit> &units();
std::vector<const Unit *> unitsOf(Dimension dimension);

/// The unit of that symbol, or nullptr. What a keyboard has instead of the raised point and of omega is understood: `N.m`, `Nm`,
/// `lbf*in`, `mohm`. `in-lb` is not: which of two orders was meant is not for a program to guess.
const Unit *findUnit(QStringView symbol);

/// A measured or specified value with its unit, kept as typed.
class Quantity {
public:
    /// Nothing when the value is no decimal or the unit is unknown.
    static std::optional<Quantity> parse(QStringView value, QStringView unit);
    /// Number and unit as a person types them: `135 lbf·in`, `2.5mΩ`. BadInput, saying what to type instead: a number without a
    /// unit, a unit that is unknown or measures something else, a comma that could be a decimal sign or a grouping, more digits
    /// than are kept.
    static Result<Quantity> read(QStringView text, Dimension dimension);
    /// The same where the unit alone says what is measured.
    static Result<Quantity> read(QStringView text);

    const Decimal &value() const { return m_value; }
    const QString &unit() const { return m_unit->symbol; }
    Dimension dimension() const { return m_unit->dimension; }
    /// `23.5 N·m`
    QString text() const { return m_value.text() + u' ' + m_unit->symbol; }
    /// In the coherent unit of its dimension, exact.
    Rational coherent() const { return Rational(m_value) * Rational(m_unit->factor); }

    /// Exact, across units. Unordered when the dimensions differ.
    friend std::partial_ordering operator<=>(const Quantity &a, const Quantity &b);
    friend bool operator==(const Quantity &a, const Quantity &b) { return (a <=> b) == 0; }

private:
    Quantity(Decimal value, const Unit *unit) : m_value(std::move(value)), m_unit(unit) {}
    Decimal m_value;
    const Unit *m_unit; ///< points into units(), which lives as long as the program
};

/// A coherent value in another unit of its dimension, exact.
Rational inUnit(const Rational &coherent, const Unit &unit);

} // namespace core
