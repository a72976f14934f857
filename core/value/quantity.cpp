// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/quantity.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Quantity", text); }

Unit unit(const QString &symbol, Dimension dimension, QStringView factor)
{
    return {symbol, dimension, *Decimal::parse(factor)};
}

QString symbolsIn(const std::vector<const Unit *> &all)
{
    QStringList symbols;
    for (const Unit *one : all)
        symbols << one->symbol;
    return symbols.join(QStringLiteral(", "));
}

QString symbolsOf(Dimension dimension) { return symbolsIn(unitsOf(dimension)); }

std::vector<const Unit *> allUnits()
{
    std::vector<const Unit *> all;
    for (const Unit &one : units())
        all.push_back(&one);
    return all;
}

/// What somebody typed, cut where the number ends.
struct Typed {
    QStringView whole;
    QStringView number;
    QStringView symbol;
};

Typed parted(QStringView text)
{
    const QStringView whole = text.trimmed();
    const auto isOfNumber = [](QChar c) { return (c >= u'0' && c <= u'9') || c == u'.' || c == u',' || c == u'-' || c == u'+'; };
    const qsizetype end = std::find_if_not(whole.begin(), whole.end(), isOfNumber) - whole.begin();
    return {whole, whole.first(end), whole.sliced(end).trimmed()};
}

/// What is wrong before anybody asks what the unit measures.
std::optional<QString> whyUnread(const Typed &typed, const QString &symbols)
{
    if (typed.number.contains(u','))
        return tr(QT_TRANSLATE_NOOP("Quantity", "\"%1\" has a comma, which one reader takes for a decimal sign and another for thousands. Type a decimal point, and no grouping.")).arg(typed.whole);
    if (!Decimal::parse(typed.number))
        return tr(QT_TRANSLATE_NOOP("Quantity", "\"%1\" is no number with a unit. Type, for example, 12.5 and one of %2; at most 18 digits.")).arg(typed.whole, symbols);
    if (typed.symbol.isEmpty())
        return tr(QT_TRANSLATE_NOOP("Quantity", "\"%1\" has no unit. Add one of %2.")).arg(typed.whole, symbols);
    if (!findUnit(typed.symbol))
        return tr(QT_TRANSLATE_NOOP("Quantity", "The unit of \"%1\" is not known. Use one of %2.")).arg(typed.whole, symbols);
    return std::nullopt;
}

tl::unexpected<Error> unreadable(const QString &sentence) { return failure(ErrorCode::BadInput, sentence); }

} // namespace

QString dimensionInWords(Dimension dimension)
{
    switch (dimension) {
    case Dimension::Torque: return tr(QT_TRANSLATE_NOOP("Quantity", "a torque"));
    case Dimension::Resistance: return tr(QT_TRANSLATE_NOOP("Quantity", "a resistance"));
    case Dimension::Voltage: return tr(QT_TRANSLATE_NOOP("Quantity", "a voltage"));
    case Dimension::Current: return tr(QT_TRANSLATE_NOOP("Quantity", "a current"));
    case Dimension::Mass: return tr(QT_TRANSLATE_NOOP("Quantity", "a weight"));
    case Dimension::Length: return tr(QT_TRANSLATE_NOOP("Quantity", "a length"));
    case Dimension::Angle: return tr(QT_TRANSLATE_NOOP("Quantity", "an angle"));
    case Dimension::Moment: return tr(QT_TRANSLATE_NOOP("Quantity", "a moment of weight"));
    case Dimension::Volume: return tr(QT_TRANSLATE_NOOP("Quantity", "a volume"));
    case Dimension::VolumeRate: return tr(QT_TRANSLATE_NOOP("Quantity", "a rate of flow"));
    case Dimension::DropRate: return tr(QT_TRANSLATE_NOOP("Quantity", "a number of drops in a time"));
    }
    Q_UNREACHABLE();
}

const std::vector<Unit> &units()
{
    static const std::vector<Unit> table = {
        unit(QStringLiteral("N·m"), Dimension::Torque, u"1"),
        unit(QStringLiteral("lbf·in"), Dimension::Torque, u"0.1129848290276167"),
        unit(QStringLiteral("lbf·ft"), Dimension::Torque, u"1.3558179483314004"),
        unit(QStringLiteral("kgf·m"), Dimension::Torque, u"9.80665"),
        unit(QStringLiteral("mΩ"), Dimension::Resistance, u"0.001"),
        unit(QStringLiteral("Ω"), Dimension::Resistance, u"1"),
        unit(QStringLiteral("mV"), Dimension::Voltage, u"0.001"),
        unit(QStringLiteral("V"), Dimension::Voltage, u"1"),
        unit(QStringLiteral("A"), Dimension::Current, u"1"),
        unit(QStringLiteral("kg"), Dimension::Mass, u"1"),
        unit(QStringLiteral("lb"), Dimension::Mass, u"0.45359237"),
        unit(QStringLiteral("mm"), Dimension::Length, u"0.001"),
        unit(QStringLiteral("m"), Dimension::Length, u"1"),
        unit(QStringLiteral("in"), Dimension::Length, u"0.0254"),
        unit(QStringLiteral("ft"), Dimension::Length, u"0.3048"),
        unit(QStringLiteral("°"), Dimension::Angle, u"1"),
        unit(QStringLiteral("kg·m"), Dimension::Moment, u"1"),
        unit(QStringLiteral("kg·mm"), Dimension::Moment, u"0.001"),
        unit(QStringLiteral("lb·in"), Dimension::Moment, u"0.011521246198"),
        unit(QStringLiteral("L"), Dimension::Volume, u"1"),
        unit(QStringLiteral("mL"), Dimension::Volume, u"0.001"),
        unit(QStringLiteral("US qt"), Dimension::Volume, u"0.946352946"),
        unit(QStringLiteral("US gal"), Dimension::Volume, u"3.785411784"),
        unit(QStringLiteral("L/min"), Dimension::VolumeRate, u"1"),
        unit(QStringLiteral("mL/min"), Dimension::VolumeRate, u"0.001"),
        unit(QStringLiteral("drops/min"), Dimension::DropRate, u"1"),
    };
    return table;
}

std::vector<const Unit *> unitsOf(Dimension dimension)
{
    std::vector<const Unit *> found;
    for (const Unit &one : units()) {
        if (one.dimension == dimension)
            found.push_back(&one);
    }
    return found;
}

const Unit *findUnit(QStringView symbol)
{
    QString wanted = symbol.toString().simplified();
    if (wanted == u"Nm")
        wanted = QStringLiteral("N·m");
    if (wanted == u"deg")
        wanted = QStringLiteral("°");
    wanted.replace(u'*', u'·').replace(u'.', u'·').replace(QChar(0x22C5), u'·');
    // Both the ohm sign and the Greek capital omega are on keyboards; U+2126 is canonically equivalent to U+03A9.
    wanted.replace(QChar(0x2126), QChar(0x03A9)).replace(QStringLiteral("ohm"), QStringLiteral("Ω"));
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

Result<Quantity> Quantity::read(QStringView text, Dimension dimension)
{
    const Typed typed = parted(text);
    if (const auto why = whyUnread(typed, symbolsOf(dimension)))
        return unreadable(*why);
    const Unit *unit = findUnit(typed.symbol);
    if (unit->dimension != dimension)
        return unreadable(tr(QT_TRANSLATE_NOOP("Quantity", "\"%1\" is %2; %3 is needed, in one of %4.")).arg(typed.whole, dimensionInWords(unit->dimension), dimensionInWords(dimension), symbolsOf(dimension)));
    return Quantity(*Decimal::parse(typed.number), unit);
}

Result<Quantity> Quantity::read(QStringView text)
{
    const Typed typed = parted(text);
    if (const auto why = whyUnread(typed, symbolsIn(allUnits())))
        return unreadable(*why);
    return Quantity(*Decimal::parse(typed.number), findUnit(typed.symbol));
}

std::partial_ordering operator<=>(const Quantity &a, const Quantity &b)
{
    if (a.dimension() != b.dimension())
        return std::partial_ordering::unordered;
    return Decimal::compareScaled(a.m_value, a.m_unit->factor, b.m_value, b.m_unit->factor);
}

Rational inUnit(const Rational &coherent, const Unit &unit) { return coherent / Rational(unit.factor); }

} // namespace core
