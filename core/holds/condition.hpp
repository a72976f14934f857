// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>
#include <QStringList>

#include "core/job/state.hpp"

namespace core {

/// How a condition stands.
struct ConditionFound {
    QStringList missing; ///< a sentence for each thing that is not so; empty: met
    /// The last entry on which its being met rests, 0 for none. Where it is later than the passing of the hold point, what was looked at
    /// then is not what is there now.
    qint64 restsOn = 0;
    bool isMet() const { return missing.isEmpty(); }
};

/// A kind of condition that hold points are made of.
struct ConditionKind {
    QLatin1String what;                ///< as it stands in entries
    std::vector<QLatin1String> stages; ///< that it can ask for; empty where it asks for none
    /// What is wrong with such a condition, or nothing. Asked after the catalogue has checked its stage.
    std::optional<QString> (*fault)(const HoldCondition &);
    /// One line for the person who passes: "Every mount is torqued."
    QString (*describe)(const HoldCondition &);
    ConditionFound (*find)(const JobState &, const HoldCondition &);
};

/// Every kind of condition, grouped by file.
const std::vector<ConditionKind> &conditionKinds();
const ConditionKind *findConditionKind(QStringView what);

/// What is wrong with a condition as it was entered, or nothing: a kind that there is not, a stage that it does not know, or its own fault.
std::optional<QString> faultOf(const HoldCondition &condition);
/// As the kind describes it; the name of a kind that there is not.
QString describe(const HoldCondition &condition);
/// How it stands. A kind that there is not is never met.
ConditionFound findCondition(const JobState &job, const HoldCondition &condition);

// Rows of the catalogue, one function a file of this folder.
std::vector<ConditionKind> interfaceConditions();
std::vector<ConditionKind> temporaryConditions();
std::vector<ConditionKind> unitConditions();
std::vector<ConditionKind> testConditions();
std::vector<ConditionKind> figureConditions();
std::vector<ConditionKind> toolConditions();

} // namespace core
