// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

#include "core/holds/condition.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Hold", text); }

QString named(const HoldCondition &condition) { return QStringList(condition.names.begin(), condition.names.end()).join(u", "_s); }

std::optional<QString> fault(const HoldCondition &condition)
{
    const bool isSort = condition.names.size() == 1 && std::any_of(testSorts.begin(), testSorts.end(), [&](QLatin1String sort) { return condition.names.front() == sort; });
    return isSort && condition.which.isEmpty() ? std::nullopt : std::optional(tr(QT_TRANSLATE_NOOP("Hold", "A condition on tests names one sort: ground run, functional test or leak check.")));
}

QString sentence(const HoldCondition &condition) { return tr(QT_TRANSLATE_NOOP("Hold", "Passed, and not void since: %1.")).arg(named(condition)); }

ConditionFound find(const JobState &job, const HoldCondition &condition)
{
    ConditionFound found{{tr(QT_TRANSLATE_NOOP("Hold", "No %1 was passed yet.")).arg(named(condition))}, 0};
    for (const JobTest *test : lastTests(job)) {
        if (test->what != condition.names.front())
            continue;
        const auto voided = whyVoid(job, *test);
        if (!test->hasPassed)
            return {{tr(QT_TRANSLATE_NOOP("Hold", "%1 (%2) has failed.")).arg(test->id.text(), test->name)}, 0};
        if (voided)
            return {{tr(QT_TRANSLATE_NOOP("Hold", "%1 (%2) is void: %3")).arg(test->id.text(), test->name, *voided)}, 0};
        found = {{}, std::max(found.restsOn, test->mark.seq)};
    }
    return found;
}

} // namespace

std::vector<ConditionKind> testConditions() { return {{"tested"_L1, {}, &fault, &sentence, &find}}; }

} // namespace core
