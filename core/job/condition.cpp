// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/condition.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/job/state.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/requirements/torque.hpp"

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Condition", text); }

struct ConditionLine {
    Condition condition;
    QLatin1String text;
    const char *word;
    bool isUnsettling;
};

constexpr ConditionLine conditionLines[] = {
    {Condition::Positioned, QLatin1String("positioned"), QT_TRANSLATE_NOOP("Condition", "Positioned"), false},
    {Condition::HandTight, QLatin1String("hand-tight"), QT_TRANSLATE_NOOP("Condition", "Hand-tight"), false},
    {Condition::Temporary, QLatin1String("temporary"), QT_TRANSLATE_NOOP("Condition", "Temporarily joined"), true},
    {Condition::SlaveHardware, QLatin1String("slave hardware"), QT_TRANSLATE_NOOP("Condition", "Slave hardware"), true},
    {Condition::Damaged, QLatin1String("damaged"), QT_TRANSLATE_NOOP("Condition", "Damaged"), true},
    {Condition::CannotVerify, QLatin1String("cannot verify"), QT_TRANSLATE_NOOP("Condition", "Cannot be verified"), true},
};

const ConditionLine &lineOf(Condition condition)
{
    return *std::find_if(std::begin(conditionLines), std::end(conditionLines), [&](const ConditionLine &line) { return line.condition == condition; });
}

bool passes(const InterfaceState &item, Condition condition)
{
    if (condition == Condition::Positioned)
        return item.restoration.has_value();
    if (condition == Condition::HandTight)
        return !isOff(item) && (!item.restoration || !asksFor(item.listed, "torque") || !missingTorque(item));
    return false;
}

} // namespace

QString conditionText(Condition condition) { return lineOf(condition).text; }

std::optional<Condition> parseCondition(QStringView text)
{
    const auto at = std::find_if(std::begin(conditionLines), std::end(conditionLines), [&](const ConditionLine &line) { return line.text == text; });
    return at == std::end(conditionLines) ? std::nullopt : std::optional(at->condition);
}

QString conditionWord(Condition condition) { return tr(lineOf(condition).word); }

bool isUnsettling(Condition condition) { return lineOf(condition).isUnsettling; }

std::vector<QLatin1String> conditionTexts(Which which)
{
    std::vector<QLatin1String> texts;
    for (const ConditionLine &line : conditionLines) {
        if (which == Which::All || line.isUnsettling)
            texts.push_back(line.text);
    }
    return texts;
}

const ConditionStated *standingCondition(const InterfaceState &item, Condition condition)
{
    const auto &all = item.conditions;
    const auto at = std::find_if(all.begin(), all.end(), [&](const ConditionStated &one) { return one.condition == condition; });
    return at == all.end() ? nullptr : &*at;
}

const ConditionStated *unsettled(const InterfaceState &item)
{
    const auto &all = item.conditions;
    const auto at = std::find_if(all.begin(), all.end(), [](const ConditionStated &one) { return isUnsettling(one.condition); });
    return at == all.end() ? nullptr : &*at;
}

bool isHeldInPlace(const InterfaceState &item)
{
    return isOff(item) && (standingCondition(item, Condition::Temporary) || standingCondition(item, Condition::HandTight));
}

QString inWordsOf(const ConditionStated &stated)
{
    QStringList more;
    if (!stated.fasteners.isEmpty())
        more << tr(QT_TRANSLATE_NOOP("Condition", "fasteners %1")).arg(stated.fasteners);
    if (!stated.toComeOut.isEmpty())
        more << tr(QT_TRANSLATE_NOOP("Condition", "to come out: %1")).arg(stated.toComeOut);
    if (!stated.reason.isEmpty())
        more << stated.reason;
    const QString word = conditionWord(stated.condition);
    return more.isEmpty() ? word : tr(QT_TRANSLATE_NOOP("Condition", "%1: %2")).arg(word, more.join(QStringLiteral("; ")));
}

void dropPassingConditions(InterfaceState &item)
{
    std::erase_if(item.conditions, [&](const ConditionStated &one) { return passes(item, one.condition); });
}

void dropWhatGoesWithUndoing(InterfaceState &item)
{
    std::erase_if(item.conditions, [](const ConditionStated &one) { return !isUnsettling(one.condition); });
}

} // namespace core
