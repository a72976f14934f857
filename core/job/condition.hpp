// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>
#include <vector>

#include "core/job/mark.hpp"

namespace core {

/// What is physically true of an interface within its stage, as somebody said it for the next shift.
enum class Condition {
    Positioned,    ///< laid in its place; goes when it is reconnected
    HandTight,     ///< run down by hand; goes when it is torqued, or reconnected where no torque is asked for
    Temporary,     ///< joined for a trial; it stays disconnected until that is undone or made final
    SlaveHardware, ///< held by pieces that have to come out again
    Damaged,
    CannotVerify,
};

QString conditionText(Condition condition); ///< in entries: `hand-tight`
std::optional<Condition> parseCondition(QStringView text);
/// On a screen, translated: "Hand-tight".
QString conditionWord(Condition condition);

/// What somebody said of an interface, until it is cleared.
struct ConditionStated {
    Mark mark;
    Condition condition;
    QString reason;    ///< empty for what goes by itself
    QString fasteners; ///< which, where it was said
    QString toComeOut; ///< the pieces of slave hardware
    std::optional<FindingId> finding{}; ///< that the damage raised
    bool operator==(const ConditionStated &) const = default;
};

struct InterfaceState;

/// The condition as it stands, or nullptr.
const ConditionStated *standingCondition(const InterfaceState &item, Condition condition);

/// The first condition that has to be undone, made final, repaired or verified before the interface is done, or nullptr: all but
/// positioned and hand-tight.
/// Source: a trial fit and hardware that has to come out are no restoration: common practice.
const ConditionStated *unsettled(const InterfaceState &item);
bool isUnsettling(Condition condition);

/// All of them as they stand in entries, or those alone that somebody has to clear.
enum class Which { All, Unsettling };
std::vector<QLatin1String> conditionTexts(Which which);

/// True for an interface that is logged as off and is held all the same: for a trial, or by hand.
bool isHeldInPlace(const InterfaceState &item);

/// A sentence for a list: "Slave hardware: two bolts of the old mount have to come out (not delivered yet)."
QString inWordsOf(const ConditionStated &stated);

/// For when hands are on the interface again. What goes by itself goes: joined, or torqued as far as it asks for.
void dropPassingConditions(InterfaceState &item);

/// For when an interface is undone: what was said of how far it was joined is over; what needs somebody to clear it stands.
void dropWhatGoesWithUndoing(InterfaceState &item);

} // namespace core
