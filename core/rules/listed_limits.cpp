// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/listed_limits.hpp"

#include <QStringList>

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/acts/listing.hpp"
#include "core/measure/leak.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

constexpr std::size_t mostPasses = 10;
constexpr QStringView fullTurn = u"360";

/// Members that say something only together: half a specification would be lost.
struct SpecGroup {
    QLatin1String requirement; ///< which tells of its missing parts itself where it is asked for
    std::vector<QLatin1String> members;
    std::vector<QLatin1String> companions; ///< mean nothing without the members
    const char *sentence;
};

const std::vector<SpecGroup> &specGroups()
{
    static const std::vector<SpecGroup> all = {
        {"torque"_L1, {"torque_fasteners"_L1, "torque_min"_L1, "torque_max"_L1, "torque_unit"_L1},
         {"torque_prevailing"_L1, "torque_prevailing_min"_L1, "torque_prevailing_max"_L1, "torque_condition"_L1, "torque_passes"_L1, "torque_order"_L1, "torque_turn_min"_L1, "torque_turn_max"_L1, "thread"_L1},
         QT_TRANSLATE_NOOP("Rule", "A torque is specified by its fasteners, least, most and unit; this one is missing.")},
        {"bonding"_L1, {"bonding_max"_L1, "bonding_unit"_L1},
         {"bonding_comparison"_L1, "bonding_readings"_L1},
         QT_TRANSLATE_NOOP("Rule", "A bonding limit is a resistance and its unit; this one is missing.")},
    };
    return all;
}

std::optional<Refusal> refuse(const Case &c, const QString &sentence) { return refusal(c, sentence, inWords(QT_TRANSLATE_NOOP("Rule", "whoever makes the list"))); }

bool isNegative(const std::optional<Quantity> &quantity) { return quantity && quantity->value().isNegative(); }

} // namespace

std::vector<MissingPart> missingParts(const json::Object &body)
{
    const std::vector<QString> requirements = body.texts(u"requirements");
    const auto isGiven = [&](QLatin1String name) { return body.contains(QString(name)); };
    std::vector<MissingPart> all;
    for (const SpecGroup &group : specGroups()) {
        const auto missing = std::find_if_not(group.members.begin(), group.members.end(), isGiven);
        const bool isBegun = std::any_of(group.members.begin(), group.members.end(), isGiven) || std::any_of(group.companions.begin(), group.companions.end(), isGiven);
        const bool isAsked = std::find(requirements.begin(), requirements.end(), group.requirement) != requirements.end();
        if (missing != group.members.end() && isBegun && !isAsked)
            all.push_back({*missing, inWords(group.sentence)});
    }
    return all;
}

std::optional<Refusal> specsAreWhole(const Case &c)
{
    const std::vector<MissingPart> missing = missingParts(c.draft.body);
    if (missing.empty())
        return std::nullopt;
    return refuse(c, missing.front().member + u": "_s + missing.front().sentence);
}

std::optional<Refusal> passesAreSound(const Case &c)
{
    const std::vector<QString> texts = c.draft.body.texts(u"torque_passes");
    const Decimal zero = *Decimal::parse(u"0");
    Decimal before = zero;
    for (const QString &text : texts) {
        const auto percent = Decimal::parse(text);
        if (!percent || *percent < before || *percent == zero)
            return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "The passes of a torque rise, in percent of the final torque, such as 30, 60, 100, 100; \"%1\" does not.")).arg(text));
        before = *percent;
    }
    if (texts.empty() || (before == *Decimal::parse(u"100") && texts.size() <= mostPasses))
        return std::nullopt;
    return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "The last pass of a torque is 100 percent, and there are at most %1 passes; these are %2, the last %3.")).arg(mostPasses).arg(texts.size()).arg(texts.back()));
}

std::optional<Refusal> orderIsSound(const Case &c)
{
    const std::vector<QString> texts = c.draft.body.texts(u"torque_order");
    const qint64 fasteners = c.draft.body.integer(u"torque_fasteners").value_or(0);
    if (texts.empty() || texts == std::vector{u"cross"_s} || fasteners > mostFasteners)
        return std::nullopt;
    std::vector<qint64> order = torqueOrderIn(texts, fasteners);
    std::sort(order.begin(), order.end());
    bool isEachOnce = static_cast<qint64>(order.size()) == fasteners;
    for (std::size_t i = 0; isEachOnce && i < order.size(); ++i)
        isEachOnce = order[i] == static_cast<qint64>(i) + 1;
    if (isEachOnce)
        return std::nullopt;
    return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "An order is \"cross\", or names each of the %1 fasteners once.")).arg(fasteners));
}

std::optional<Refusal> turnAndDragAreSound(const Case &c)
{
    const auto leastDrag = quantityIn(c.draft.body, u"torque_prevailing_min", Dimension::Torque);
    const auto mostDrag = quantityIn(c.draft.body, u"torque_prevailing_max", Dimension::Torque);
    for (const auto &drag : {leastDrag, mostDrag}) {
        if (drag && drag->coherent() <= 0)
            return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "A limit of %1 for the drag of a nut limits nothing: a nut that turns with nothing does not lock.")).arg(drag->text()));
    }
    if (leastDrag && mostDrag && *leastDrag > *mostDrag)
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "The drag of a nut runs from less to more, not from %1 to %2.")).arg(leastDrag->text(), mostDrag->text()));
    const auto least = quantityIn(c.draft.body, u"torque_turn_min", Dimension::Angle);
    const auto most = quantityIn(c.draft.body, u"torque_turn_max", Dimension::Angle);
    if (!least && !most)
        return std::nullopt;
    if (least && most && *least <= *most && least->coherent() > 0 && most->value() <= *Decimal::parse(fullTurn))
        return std::nullopt;
    return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "A turn after the torque runs from a least angle above 0 to a most of a full turn at most; give both.")));
}

std::optional<Refusal> bondingReadingsAreSound(const Case &c)
{
    const qint64 readings = c.draft.body.integer(u"bonding_readings").value_or(1);
    if (readings == 1 || readings == 2)
        return std::nullopt;
    return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "A bond is measured once or twice, not %1 times.")).arg(readings));
}

std::optional<Refusal> dropSizeIsSound(const Case &c)
{
    const auto drops = Decimal::parse(c.text(u"leak_drops_per_ml"));
    if (!drops)
        return std::nullopt;
    if (!c.draft.body.contains(u"leak_rate"))
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "Drops to the millilitre turn counted drops into a rate, and this row limits none. Give a rate, or leave them out.")));
    const auto why = measure::whyNoDropSize(*drops);
    return why ? std::optional(refuse(c, *why)) : std::nullopt;
}

std::optional<Refusal> leakRateIsSound(const Case &c)
{
    if (!isNegative(quantityIn(c.draft.body, u"leak_rate", Dimension::VolumeRate)))
        return std::nullopt;
    return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "A rate of leak is not below 0.")));
}

std::optional<Refusal> leakClassIsSound(const Case &c)
{
    const QString worst = c.text(u"leak_class");
    QStringList classes;
    for (const measure::LeakClass &one : c.job.facts.leakScheme.classes)
        classes << one.name;
    if (worst.isEmpty())
        return std::nullopt;
    if (classes.empty())
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "This job was opened without a scheme of leak classes, so \"%1\" says nothing. Give a rate.")).arg(worst));
    if (!classes.contains(worst))
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" is no leak class of this job; they are: %2.")).arg(worst, classes.join(u", "_s)));
    if (worst == classes.back() && !c.draft.body.contains(u"leak_rate"))
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" is the worst class of this job, so it limits nothing. Give a lesser one, or a rate beside it.")).arg(worst));
    return std::nullopt;
}

std::optional<Refusal> leakLimitIsSound(const Case &c)
{
    for (const auto &refused : {leakRateIsSound(c), dropSizeIsSound(c), leakClassIsSound(c)}) {
        if (refused)
            return refused;
    }
    return std::nullopt;
}

const Rule specsWhole{"listing.whole"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Half a limit would be read as none."), &specsAreWhole};
const Rule passesSound{"listing.passes"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A pass that is not the last must not look final."), &passesAreSound};
const Rule orderSound{"listing.order"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A fastener that the order forgets is never tightened."), &orderIsSound};
const Rule turnAndDragSound{"listing.turn-and-drag"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Half a limit limits nothing."), &turnAndDragAreSound};
const Rule bondingReadingsSound{"listing.bonding-readings"_L1, QT_TRANSLATE_NOOP("RuleWhy", "As many readings as are asked for can be recorded."), &bondingReadingsAreSound};
const Rule leakLimitSound{"listing.leak"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The same word names different leaks in different schemes."), &leakLimitIsSound};

} // namespace core::rules
