// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include <algorithm>

#include "core/holds/condition.hpp"
#include "core/job/linked.hpp"
#include "core/job/reached.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Hold", text); }

struct StageLine {
    QLatin1String name;
    const char *word; ///< after "is"
    Reached (*reached)(const InterfaceState &);
};

constexpr StageLine stageLines[] = {
    {"disconnected"_L1, QT_TRANSLATE_NOOP("Hold", "disconnected"), &disconnectedWith},
    {"walked_round"_L1, QT_TRANSLATE_NOOP("Hold", "disconnected and confirmed free by a second person"), &walkedRoundWith},
    {"reconnected"_L1, QT_TRANSLATE_NOOP("Hold", "reconnected"), &reconnectedWith},
    {"torqued"_L1, QT_TRANSLATE_NOOP("Hold", "reconnected and torqued"), &torquedWith},
    {"restored"_L1, QT_TRANSLATE_NOOP("Hold", "restored, all but the leak check"), &restoredWith},
    {"inspected"_L1, QT_TRANSLATE_NOOP("Hold", "restored and inspected"), &inspectedWith},
};

const StageLine &lineOf(const HoldCondition &condition)
{
    const auto at = std::find_if(std::begin(stageLines), std::end(stageLines), [&](const StageLine &line) { return line.name == condition.stage; });
    Q_ASSERT(at != std::end(stageLines)); // faultOf refuses any other
    return *at;
}

std::optional<QString> fault(const HoldCondition &condition)
{
    return condition.names.empty() ? std::nullopt : std::optional(tr(QT_TRANSLATE_NOOP("Hold", "A condition on interfaces names these by kind, zone or id.")));
}

QString sentence(const HoldCondition &condition)
{
    QString said = tr(QT_TRANSLATE_NOOP("Hold", "%1 is %2.")).arg(inWordsOf(condition.which), tr(lineOf(condition).word));
    said[0] = said[0].toUpper();
    return said;
}

ConditionFound find(const JobState &job, const HoldCondition &condition)
{
    const StageLine &line = lineOf(condition);
    ConditionFound found;
    for (const InterfaceState &item : job.items) {
        if (!condition.which.letsThrough(item.listed))
            continue;
        if (const Reached reached = reachedNow(job, item, line.reached))
            found.restsOn = std::max(found.restsOn, *reached);
        else
            found.missing << (tr(QT_TRANSLATE_NOOP("Hold", "%1 (%2) is not %3.")).arg(item.listed.id.text(), item.listed.name, tr(line.word)) + u' ' + whereInWords(job, item)).trimmed();
    }
    return found;
}

} // namespace

std::vector<ConditionKind> interfaceConditions()
{
    std::vector<QLatin1String> stages;
    for (const StageLine &line : stageLines)
        stages.push_back(line.name);
    return {{"interfaces"_L1, stages, &fault, &sentence, &find}};
}

} // namespace core
