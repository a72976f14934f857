// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/listed_limits.hpp"

#include <QStringList>

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/acts/listing.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

constexpr std::size_t mostPasses = 10;

std::optional<Refusal> refuse(const Case &c, const QString &sentence) { return refusal(c, sentence, inWords(QT_TRANSLATE_NOOP("Rule", "whoever makes the list"))); }

bool isNegative(const std::optional<Quantity> &quantity) { return quantity && quantity->value().isNegative(); }

} // namespace

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
    if (isNegative(quantityIn(c.draft.body, u"torque_prevailing_min", Dimension::Torque)))
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "The least drag of a nut is not below 0.")));
    const auto least = quantityIn(c.draft.body, u"torque_turn_min", Dimension::Angle);
    const auto most = quantityIn(c.draft.body, u"torque_turn_max", Dimension::Angle);
    if (!least && !most)
        return std::nullopt;
    if (least && most && *least <= *most && !isNegative(least))
        return std::nullopt;
    return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "A turn after the torque runs from a least to a most angle; give both.")));
}

std::optional<Refusal> bondingReadingsAreSound(const Case &c)
{
    const qint64 readings = c.draft.body.integer(u"bonding_readings").value_or(1);
    if (readings == 1 || readings == 2)
        return std::nullopt;
    return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "A bond is measured once or twice, not %1 times.")).arg(readings));
}

std::optional<Refusal> leakLimitIsSound(const Case &c)
{
    if (isNegative(quantityIn(c.draft.body, u"leak_rate", Dimension::VolumeRate)))
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "A rate of leak is not below 0.")));
    const QString worst = c.text(u"leak_class");
    const std::vector<QString> &classes = c.job.facts.leakClasses;
    if (worst.isEmpty() || std::find(classes.begin(), classes.end(), worst) != classes.end())
        return std::nullopt;
    if (classes.empty())
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "This job was opened without a scheme of leak classes, so \"%1\" says nothing. Give a rate.")).arg(worst));
    return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" is no leak class of this job; they are: %2.")).arg(worst, QStringList(classes.begin(), classes.end()).join(u", "_s)));
}

const Rule passesSound{"listing.passes"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A pass that is not the last must not look final."), &passesAreSound};
const Rule orderSound{"listing.order"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A fastener that the order forgets is never tightened."), &orderIsSound};
const Rule turnAndDragSound{"listing.turn-and-drag"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Half a limit limits nothing."), &turnAndDragAreSound};
const Rule bondingReadingsSound{"listing.bonding-readings"_L1, QT_TRANSLATE_NOOP("RuleWhy", "As many readings as are asked for can be recorded."), &bondingReadingsAreSound};
const Rule leakLimitSound{"listing.leak"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The same word names different leaks in different schemes."), &leakLimitIsSound};

} // namespace core::rules
