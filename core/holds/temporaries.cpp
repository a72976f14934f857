// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include <algorithm>

#include "core/holds/condition.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Hold", text); }

bool isAbout(const HoldCondition &condition, const TemporaryItem &item)
{
    const QString sort = temporarySortText(item.sort);
    return std::find(condition.names.begin(), condition.names.end(), sort) != condition.names.end();
}

QString spoken(const HoldCondition &condition)
{
    return QStringList(condition.names.begin(), condition.names.end()).join(tr(QT_TRANSLATE_NOOP("Hold", " or ")));
}

std::optional<QString> fault(const HoldCondition &condition)
{
    if (!condition.which.isEmpty())
        return tr(QT_TRANSLATE_NOOP("Hold", "A condition on temporary items names their sorts, not interfaces."));
    if (condition.names.empty())
        return tr(QT_TRANSLATE_NOOP("Hold", "A condition on temporary items names one sort or more."));
    for (const QString &name : condition.names) {
        if (!parseTemporarySort(name))
            return tr(QT_TRANSLATE_NOOP("Hold", "There is no sort \"%1\" of temporary items.")).arg(name);
    }
    return condition.least >= 1 ? std::nullopt : std::optional(tr(QT_TRANSLATE_NOOP("Hold", "At least one is applied, or nothing is asked for.")));
}

QString describeApplied(const HoldCondition &condition) { return tr(QT_TRANSLATE_NOOP("Hold", "Applied, and not removed: %1, at least %2.")).arg(spoken(condition)).arg(condition.least); }

ConditionFound findApplied(const JobState &job, const HoldCondition &condition)
{
    std::vector<qint64> applied;
    for (const TemporaryItem &item : job.temporaries) {
        if (isAbout(condition, item) && !item.removed)
            applied.push_back(item.applied.seq);
    }
    const auto number = static_cast<qint64>(applied.size());
    if (number < condition.least)
        return {{tr(QT_TRANSLATE_NOOP("Hold", "%1 applied: %2; asked for: %3.")).arg(spoken(condition)).arg(number).arg(condition.least)}, 0};
    // It rests on as many of the oldest as it asks for: what was added since undermines nothing.
    std::sort(applied.begin(), applied.end());
    return {{}, applied[static_cast<std::size_t>(condition.least - 1)]};
}

QString describeRemoved(const HoldCondition &condition) { return tr(QT_TRANSLATE_NOOP("Hold", "Removed, every one of them: %1.")).arg(spoken(condition)); }

ConditionFound findRemoved(const JobState &job, const HoldCondition &condition)
{
    ConditionFound found;
    for (const TemporaryItem &item : job.temporaries) {
        if (!isAbout(condition, item))
            continue;
        if (item.removed)
            found.restsOn = std::max(found.restsOn, item.removed->seq);
        else
            found.missing << tr(QT_TRANSLATE_NOOP("Hold", "%1 (%2) is still applied.")).arg(item.id.text(), item.name);
    }
    return found;
}

} // namespace

std::vector<ConditionKind> temporaryConditions()
{
    return {{"applied"_L1, {}, &fault, &describeApplied, &findApplied}, {"removed"_L1, {}, &fault, &describeRemoved, &findRemoved}};
}

} // namespace core
