// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include <algorithm>

#include "core/holds/condition.hpp"

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Hold", text); }

} // namespace

const std::vector<ConditionKind> &conditionKinds()
{
    static const std::vector<ConditionKind> all = [] {
        std::vector<ConditionKind> list;
        for (auto *rows : {&interfaceConditions, &temporaryConditions, &unitConditions, &testConditions, &figureConditions, &toolConditions}) {
            for (ConditionKind &kind : rows())
                list.push_back(std::move(kind));
        }
        return list;
    }();
    return all;
}

const ConditionKind *findConditionKind(QStringView what)
{
    const auto &all = conditionKinds();
    const auto at = std::find_if(all.begin(), all.end(), [&](const ConditionKind &kind) { return kind.what == what; });
    return at == all.end() ? nullptr : &*at;
}

std::optional<QString> faultOf(const HoldCondition &condition)
{
    const ConditionKind *kind = findConditionKind(condition.what);
    if (!kind) {
        QStringList names;
        for (const ConditionKind &one : conditionKinds())
            names << one.what;
        return tr(QT_TRANSLATE_NOOP("Hold", "There is no condition \"%1\"; they are: %2.")).arg(condition.what, names.join(QStringLiteral(", ")));
    }
    const bool isStage = std::any_of(kind->stages.begin(), kind->stages.end(), [&](QLatin1String stage) { return stage == condition.stage; });
    if (kind->stages.empty() ? !condition.stage.isEmpty() : !isStage) {
        QStringList names;
        for (const QLatin1String stage : kind->stages)
            names << stage;
        return kind->stages.empty() ? tr(QT_TRANSLATE_NOOP("Hold", "The condition \"%1\" asks for no stage.")).arg(condition.what)
                                    : tr(QT_TRANSLATE_NOOP("Hold", "The condition \"%1\" asks for one of the stages %2, not \"%3\".")).arg(condition.what, names.join(QStringLiteral(", ")), condition.stage);
    }
    return kind->fault(condition);
}

QString describe(const HoldCondition &condition)
{
    const ConditionKind *kind = findConditionKind(condition.what);
    return kind ? kind->describe(condition) : condition.what;
}

ConditionFound findCondition(const JobState &job, const HoldCondition &condition)
{
    const ConditionKind *kind = findConditionKind(condition.what);
    return kind ? kind->find(job, condition) : ConditionFound{{tr(QT_TRANSLATE_NOOP("Hold", "There is no condition \"%1\".")).arg(condition.what)}, 0};
}

} // namespace core
