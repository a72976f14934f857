// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/leak.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core::measure {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Measure", text); }

tl::unexpected<QString> no(const QString &sentence) { return tl::unexpected<QString>(sentence); }

bool isAbove(const Quantity &size, const std::optional<SizeBound> &lower)
{
    return !lower || size > lower->size || (lower->edge == Edge::Included && size == lower->size);
}

bool isBelow(const Quantity &size, const std::optional<SizeBound> &upper)
{
    return !upper || size < upper->size || (upper->edge == Edge::Included && size == upper->size);
}

bool claims(const LeakClass &one, const Quantity &size) { return one.isSized() && isAbove(size, one.lower) && isBelow(size, one.upper); }

/// Whether any size lies between the bounds.
bool holdsASize(const LeakClass &one)
{
    if (!one.lower || !one.upper || one.lower->size < one.upper->size)
        return true;
    return one.lower->size == one.upper->size && one.lower->edge == Edge::Included && one.upper->edge == Edge::Included;
}

bool isNoLength(const std::optional<SizeBound> &bound)
{
    return bound && (bound->size.dimension() != Dimension::Length || bound->size.value().isNegative());
}

bool endsAtNothing(const LeakClass &one) { return one.upper && one.upper->size.coherent() == 0; }

std::optional<std::size_t> indexOf(const QString &name, const LeakScheme &scheme)
{
    const auto at = std::find_if(scheme.classes.begin(), scheme.classes.end(), [&](const LeakClass &one) { return one.name == name; });
    return at == scheme.classes.end() ? std::nullopt : std::optional(static_cast<std::size_t>(at - scheme.classes.begin()));
}

QString noSuchClass(const QString &name, const LeakScheme &scheme)
{
    QStringList names;
    for (const LeakClass &one : scheme.classes)
        names << one.name;
    return tr(QT_TRANSLATE_NOOP("Measure", "The scheme \"%1\" has no class \"%2\". Choose one of %3.")).arg(scheme.name, name, names.join(u", "_s));
}

std::optional<QString> whyNoLook(const LeakLook &look, const LeakScheme &scheme)
{
    if (const auto fault = faultOf(scheme))
        return fault;
    if (look.size.dimension() != Dimension::Length || look.size.value().isNegative())
        return tr(QT_TRANSLATE_NOOP("Measure", "A wetted area of %1 is none. Give its size across as a length, or 0 when it is dry.")).arg(look.size.text());
    return whyTooSoon(look.minutes, scheme);
}

/// By size alone; the size is above 0 and the scheme has sizes.
LeakFound bySize(const Quantity &size, const LeakScheme &scheme)
{
    QStringList claimed;
    for (const LeakClass &one : scheme.classes) {
        if (claims(one, size))
            claimed << one.name;
    }
    if (claimed.isEmpty()) {
        const QString worst = scheme.classes.back().name;
        return {worst, tr(QT_TRANSLATE_NOOP("Measure", "\"%1\" names no class for %2, so the worst, \"%3\", is taken.")).arg(scheme.name, size.text(), worst)};
    }
    if (claimed.size() == 1)
        return {claimed.front(), {}};
    return {claimed.back(), tr(QT_TRANSLATE_NOOP("Measure", "\"%1\" gives %2 to more than one class (%3), so the worst of them, \"%4\", is taken."))
                                .arg(scheme.name, size.text(), claimed.join(u", "_s), claimed.back())};
}

std::optional<QString> whyNoDrops(const Decimal &dropsPerMillilitre)
{
    if (Rational(dropsPerMillilitre) > 0)
        return std::nullopt;
    return tr(QT_TRANSLATE_NOOP("Measure", "%1 drops to the millilitre make no volume. Count how many fill a measure, or take the number of the maintenance data.")).arg(dropsPerMillilitre.text());
}

bool isRate(const Quantity &quantity)
{
    return (quantity.dimension() == Dimension::VolumeRate || quantity.dimension() == Dimension::DropRate) && !quantity.value().isNegative();
}

/// A rate in the kind of another: drops per minute or L/min.
Rational inKindOf(const Quantity &like, const Quantity &rate, const std::optional<Decimal> &dropsPerMillilitre)
{
    if (rate.dimension() == like.dimension())
        return rate.coherent();
    const Rational dropsPerLitre = Rational(*dropsPerMillilitre) * 1000;
    return rate.dimension() == Dimension::DropRate ? rate.coherent() / dropsPerLitre : rate.coherent() * dropsPerLitre;
}

} // namespace

bool LeakScheme::hasSizes() const
{
    return std::any_of(classes.begin(), classes.end(), [](const LeakClass &one) { return one.isSized(); });
}

std::optional<QString> whyTooSoon(const std::optional<qint64> &minutes, const LeakScheme &scheme)
{
    if (!scheme.minutes || (minutes && *minutes >= *scheme.minutes))
        return std::nullopt;
    if (!minutes)
        return tr(QT_TRANSLATE_NOOP("Measure", "\"%1\" classes what shows %2 minutes after wiping dry. Say after how many minutes it was looked.")).arg(scheme.name, QString::number(*scheme.minutes));
    return tr(QT_TRANSLATE_NOOP("Measure", "\"%1\" classes what shows %2 minutes after wiping dry; this was seen after %3. Wait, and look again."))
        .arg(scheme.name, QString::number(*scheme.minutes), QString::number(*minutes));
}

std::optional<QString> whyNoDropSize(const Decimal &dropsPerMillilitre)
{
    if (Rational(dropsPerMillilitre) >= 5 && Rational(dropsPerMillilitre) <= 60)
        return std::nullopt;
    return tr(QT_TRANSLATE_NOOP("Measure", "%1 drops to the millilitre come from no edge: 10 to 20 are usual, and 60 from the finest tips. Count how many fill a measure, or take the number of the maintenance data."))
        .arg(dropsPerMillilitre.text());
}

std::optional<QString> faultOf(const LeakScheme &scheme)
{
    if (scheme.classes.empty())
        return tr(QT_TRANSLATE_NOOP("Measure", "The scheme \"%1\" has no classes.")).arg(scheme.name);
    std::optional<Quantity> before;
    QStringList names;
    for (const LeakClass &one : scheme.classes) {
        if (one.name.isEmpty() || names.contains(one.name))
            return tr(QT_TRANSLATE_NOOP("Measure", "In the scheme \"%1\" a class has no name of its own (\"%2\").")).arg(scheme.name, one.name);
        if (isNoLength(one.lower) || isNoLength(one.upper) || endsAtNothing(one) || !holdsASize(one))
            return tr(QT_TRANSLATE_NOOP("Measure", "In the scheme \"%1\" no size belongs to the class \"%2\".")).arg(scheme.name, one.name);
        if (one.lower && before && one.lower->size < *before)
            return tr(QT_TRANSLATE_NOOP("Measure", "In the scheme \"%1\" the class \"%2\" begins below the one before it. Give the classes from the least to the worst.")).arg(scheme.name, one.name);
        if (one.lower)
            before = one.lower->size;
        names << one.name;
    }
    return std::nullopt;
}

Measured<LeakFound> classOf(const LeakLook &look, const LeakScheme &scheme)
{
    if (const auto why = whyNoLook(look, scheme))
        return no(*why);
    if (look.flow == Flow::DripsOrPools)
        return LeakFound{scheme.classes.back().name, {}};
    if (look.size.coherent() == 0)
        return LeakFound{};
    if (!scheme.hasSizes())
        return no(tr(QT_TRANSLATE_NOOP("Measure", "The scheme \"%1\" does not class by size. Choose the class by its description.")).arg(scheme.name));
    return bySize(look.size, scheme);
}

Measured<bool> isWithin(const std::optional<QString> &found, const std::optional<QString> &limit, const LeakScheme &scheme)
{
    for (const auto &name : {found, limit}) {
        if (name && !indexOf(*name, scheme))
            return no(noSuchClass(*name, scheme));
    }
    if (!found)
        return true;
    return limit && *indexOf(*found, scheme) <= *indexOf(*limit, scheme);
}

Measured<Working> leakWorking(const LeakLook &look, const std::optional<QString> &limit, const LeakScheme &scheme)
{
    const auto found = classOf(look, scheme);
    if (!found)
        return no(found.error());
    const auto within = isWithin(found->name, limit, scheme);
    if (!within)
        return no(within.error());

    const QString seen = look.flow == Flow::DripsOrPools ? tr(QT_TRANSLATE_NOOP("Measure", "%1, drips or pools")).arg(look.size.text()) : look.size.text();
    const QString name = found->name.value_or(tr(QT_TRANSLATE_NOOP("Measure", "dry")));
    const QString allowed = limit.value_or(tr(QT_TRANSLATE_NOOP("Measure", "dry")));
    Working working;
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Class by \"%1\"")).arg(scheme.name), {}, seen, name});
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Worst class allowed")), {}, {}, allowed});
    working.answer = *within ? tr(QT_TRANSLATE_NOOP("Measure", "\"%1\" is within the limit.")).arg(name)
                             : tr(QT_TRANSLATE_NOOP("Measure", "\"%1\" is worse than the limit, \"%2\". Find the cause; the maintenance data says what to do.")).arg(name, allowed);
    if (!found->said.isEmpty())
        working.notes << found->said;
    if (look.minutes)
        working.notes << tr(QT_TRANSLATE_NOOP("Measure", "Looked at %1 minutes after wiping dry.")).arg(*look.minutes);
    working.sources << scheme.name;
    if (!scheme.note.isEmpty())
        working.sources << scheme.note;
    return working;
}

Measured<Rational> volumeOfDrops(qint64 drops, const Decimal &dropsPerMillilitre)
{
    if (const auto why = whyNoDrops(dropsPerMillilitre))
        return no(*why);
    if (drops < 0)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "%1 drops cannot be counted. Give 0 or more.")).arg(drops));
    return Rational(drops) / Rational(dropsPerMillilitre) / 1000;
}

Measured<Rational> flowOfDrops(const Quantity &dropRate, const Decimal &dropsPerMillilitre)
{
    if (const auto why = whyNoDrops(dropsPerMillilitre))
        return no(*why);
    if (dropRate.dimension() != Dimension::DropRate || dropRate.value().isNegative())
        return no(tr(QT_TRANSLATE_NOOP("Measure", "%1 is no number of drops in a time. Give 0 or more drops/min.")).arg(dropRate.text()));
    return dropRate.coherent() / Rational(dropsPerMillilitre) / 1000;
}

Measured<RateCheck> rateAgainstLimit(const Quantity &rate, const Quantity &limit, const std::optional<Decimal> &dropsPerMillilitre)
{
    for (const Quantity &one : {rate, limit}) {
        if (!isRate(one))
            return no(tr(QT_TRANSLATE_NOOP("Measure", "%1 is no rate of a leak. Give 0 or more, in drops/min, mL/min or L/min.")).arg(one.text()));
    }
    if (rate.dimension() != limit.dimension()) {
        if (!dropsPerMillilitre)
            return no(tr(QT_TRANSLATE_NOOP("Measure", "%1 and %2 can be compared only when it is known how many drops make a millilitre. Count them, or take the number of the maintenance data."))
                          .arg(rate.text(), limit.text()));
        if (const auto why = whyNoDropSize(*dropsPerMillilitre))
            return no(*why);
    } else if (dropsPerMillilitre) {
        return no(tr(QT_TRANSLATE_NOOP("Measure", "%1 and %2 are compared as they are, so nothing is turned by %3 drops to the millilitre. Leave them out.")).arg(rate.text(), limit.text(), dropsPerMillilitre->text()));
    }
    RateCheck check{inKindOf(limit, rate, dropsPerMillilitre), limit.coherent(), false, {}};
    check.isWithin = check.rate <= check.limit;
    check.said = check.isWithin ? tr(QT_TRANSLATE_NOOP("Measure", "%1 is within the limit of %2.")).arg(rate.text(), limit.text())
                                : tr(QT_TRANSLATE_NOOP("Measure", "%1 is more than the limit of %2. Find the cause; the maintenance data says what to do.")).arg(rate.text(), limit.text());
    return check;
}

Measured<Working> rateWorking(const Quantity &rate, const Quantity &limit, const std::optional<Decimal> &dropsPerMillilitre)
{
    const auto check = rateAgainstLimit(rate, limit, dropsPerMillilitre);
    if (!check)
        return no(check.error());
    Working working;
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Rate seen")), {}, {}, rate.text()});
    if (rate.dimension() != limit.dimension()) {
        const bool fromDrops = rate.dimension() == Dimension::DropRate;
        const Rational inMillilitres = fromDrops ? *flowOfDrops(rate, *dropsPerMillilitre) : rate.coherent();
        working.steps.push_back({fromDrops ? tr(QT_TRANSLATE_NOOP("Measure", "As a flow, q")) : tr(QT_TRANSLATE_NOOP("Measure", "As drops, n")), fromDrops ? u"q = n / d"_s : u"n = q · d"_s,
                                 fromDrops ? u"%1 / %2"_s.arg(rate.text(), dropsPerMillilitre->text())
                                           : u"%1 · %2"_s.arg(shownIn(inMillilitres, *findUnit(u"mL/min")), dropsPerMillilitre->text()),
                                 shownIn(check->rate, *findUnit(limit.unit()))});
    }
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Limit")), {}, {}, limit.text()});
    working.answer = check->said;
    if (rate.dimension() != limit.dimension())
        working.notes << tr(QT_TRANSLATE_NOOP("Measure", "How many drops make a millilitre depends on the liquid and on the edge that they fall from."));
    working.sources << tr(QT_TRANSLATE_NOOP("Measure", "Limit: the maintenance data, as given"));
    return working;
}

QStringList leakCautions()
{
    return {
        tr(QT_TRANSLATE_NOOP("Measure", "Fuel and its vapour: no flame, spark or live circuit near, and air to carry it off.")),
        tr(QT_TRANSLATE_NOOP("Measure", "Never feel for a leak under pressure with a hand: a fine jet goes through skin. Let the pressure off before touching.")),
        tr(QT_TRANSLATE_NOOP("Measure", "While an engine runs, keep clear of intake, propeller and exhaust, and look from where the maintenance data says.")),
        tr(QT_TRANSLATE_NOOP("Measure", "The approved maintenance data and the local rules decide, and people who are licensed or authorised for it judge the leak.")),
    };
}

} // namespace core::measure
