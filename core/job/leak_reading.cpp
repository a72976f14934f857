// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/leak_reading.hpp"

#include <QCoreApplication>

#include "core/acts/act.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using measure::Edge;
using measure::LeakScheme;
using measure::Measured;
using measure::SizeBound;

QString tr(const char *text) { return QCoreApplication::translate("Measure", text); }

tl::unexpected<QString> no(const QString &sentence) { return tl::unexpected<QString>(sentence); }

std::optional<QString> classIn(const QString &text) { return text.isEmpty() || text == dryLeak() ? std::nullopt : std::optional(text); }

constexpr auto under = "under "_L1;

std::optional<SizeBound> boundIn(const QString &text)
{
    const bool isUnder = text.startsWith(under);
    const QString length = isUnder ? text.sliced(under.size()) : text;
    const auto size = Quantity::parse(length.section(u' ', 0, 0), length.section(u' ', 1));
    if (!size || size->dimension() != Dimension::Length)
        return std::nullopt;
    return SizeBound{*size, isUnder ? Edge::Excluded : Edge::Included};
}

Edge other(Edge edge) { return edge == Edge::Included ? Edge::Excluded : Edge::Included; }

/// Ends each class but the last at its size; the next begins there.
std::optional<QString> whyNotBounded(LeakScheme &scheme, const std::vector<QString> &upTo)
{
    if (upTo.empty())
        return std::nullopt;
    if (upTo.size() + 1 != scheme.classes.size())
        return tr(QT_TRANSLATE_NOOP("Measure", "%1 leak classes have %2 sizes between them, not %3: give each class but the last its greatest size, or none at all."))
            .arg(QString::number(scheme.classes.size()), QString::number(static_cast<qsizetype>(scheme.classes.size()) - 1), QString::number(upTo.size()));
    for (std::size_t i = 0; i < upTo.size(); ++i) {
        const auto bound = boundIn(upTo[i]);
        if (!bound)
            return tr(QT_TRANSLATE_NOOP("Measure", "\"%1\" is no size of a leak. Write 0.75 in, or under 0.75 in where exactly that size belongs to the next class.")).arg(upTo[i]);
        if (i > 0 && bound->size <= scheme.classes[i].lower->size)
            return tr(QT_TRANSLATE_NOOP("Measure", "The sizes of leak classes rise; %1 comes after %2.")).arg(upTo[i], upTo[i - 1]);
        scheme.classes[i].upper = bound;
        scheme.classes[i + 1].lower = SizeBound{bound->size, other(bound->edge)};
    }
    return std::nullopt;
}

} // namespace

QString dryLeak() { return u"dry"_s; }

Measured<LeakScheme> leakSchemeIn(const json::Object &body)
{
    LeakScheme scheme{body.text(u"leak_scheme"), {}, body.integer(u"leak_minutes"), {}};
    for (const QString &name : body.texts(u"leak_classes"))
        scheme.classes.push_back({name, std::nullopt, std::nullopt});
    const std::vector<QString> upTo = body.texts(u"leak_up_to");
    if (scheme.classes.empty()) {
        if (!upTo.empty() || scheme.minutes)
            return no(tr(QT_TRANSLATE_NOOP("Measure", "Sizes and minutes of leaks belong to classes. Name the classes, or leave them out.")));
        return scheme;
    }
    if (scheme.minutes && *scheme.minutes < 1)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "A scheme that looks 0 minutes after wiping dry has no time. Leave the minutes out.")));
    if (const auto why = whyNotBounded(scheme, upTo))
        return no(*why);
    if (const auto fault = measure::faultOf(scheme))
        return no(*fault);
    return scheme;
}

void setDryLeak(json::Object &body, const LeakScheme &scheme)
{
    if (scheme.hasSizes()) {
        body.set(u"size"_s, u"0 mm"_s);
        body.set(u"flow"_s, u"still"_s);
    } else {
        body.set(u"class"_s, dryLeak());
    }
    if (scheme.minutes)
        body.set(u"minutes"_s, *scheme.minutes);
}

std::optional<measure::LeakLook> leakLookIn(const json::Object &body)
{
    const auto size = quantityIn(body, u"size", Dimension::Length);
    const QString flow = body.text(u"flow");
    if (!size || flow.isEmpty())
        return std::nullopt;
    return measure::LeakLook{*size, flow == u"still" ? measure::Flow::Still : measure::Flow::DripsOrPools, body.integer(u"minutes")};
}

std::optional<Measured<QString>> leakClassIn(const json::Object &body, const LeakScheme &scheme)
{
    if (!scheme.hasSizes()) {
        const QString told = body.text(u"class");
        return told.isEmpty() ? std::nullopt : std::optional<Measured<QString>>(told);
    }
    const auto look = leakLookIn(body);
    if (!look)
        return std::nullopt;
    return measure::classOf(*look, scheme).map([](const measure::LeakFound &found) { return found.name.value_or(dryLeak()); });
}

Measured<bool> isLeakClassWithin(const QString &seen, const QString &worst, const LeakScheme &scheme)
{
    return measure::isWithin(classIn(seen), classIn(worst), scheme);
}

std::optional<Quantity> leakRateIn(const json::Object &body)
{
    const auto rate = quantityIn(body, u"rate", Dimension::VolumeRate);
    return rate ? rate : quantityIn(body, u"drops", Dimension::DropRate);
}

std::optional<Decimal> leakDropSizeIn(const json::Object &body, const LeakLimit &limit)
{
    const auto told = Decimal::parse(body.text(u"drops_per_ml"));
    return told || !body.contains(u"drops") ? told : limit.dropsPerMillilitre;
}

} // namespace core
