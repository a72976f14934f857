// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/quantity.hpp"

#include <algorithm>

namespace core {

namespace {

Unit unit(const QString &symbol, Dimension dimension, QStringView factor)
{
    return {symbol, dimension, *Decimal::parse(factor)};
}

} // namespace

const std::vector<Unit> &units()
{
    static const std::vector<Unit> table = {
        unit(QStringLiteral("N·m"), Dimension::Torque, u"1"),
        unit(QStringLiteral("lbf·in"), Dimension::Torque, u"0.1129848290276167"),
        unit(QStringLiteral("lbf·ft"), Dimension::Torque, u"1.3558179483314004"),
        unit(QStringLiteral("kgf·m"), Dimension::Torque, u"9.80665"),
        unit(QStringLiteral("mΩ"), Dimension::Resistance, u"0.001"),
        unit(QStringLiteral("Ω"), Dimension::Resistance, u"1"),
    };
    return table;
}

const Unit *findUnit(QStringView symbol)
{
    QString wanted = symbol.toString();
    if (wanted == u"Nm" || wanted == u"N.m")
        wanted = QStringLiteral("N·m");
    // Both the ohm sign and the Greek capital omega are on keyboards; U+2126 is canonically equivalent to U+03A9.
    wanted.replace(QChar(0x2126), QChar(0x03A9));
    const auto &all = units();
    const auto at = std::find_if(all.begin(), all.end(), [&](const Unit &u) { return u.symbol == wanted; });
    return at == all.end() ? nullptr : &*at;
}

std::optional<Quantity> Quantity::parse(QStringView value, QStringView unit)
{
    const auto number = Decimal::parse(value);
    const Unit *found = findUnit(unit);
    if (!number || !found)
        return std::nullopt;
    return Quantity(*number, found);
}

std::partial_ordering operator<=>(const Quantity &a, const Quantity &b)
{
    if (a.dimension() != b.dimension())
        return std::partial_ordering::unordered;
    return Decimal::compareScaled(a.m_value, a.m_unit->factor, b.m_value, b.m_unit->factor);
}

} // namespace core
