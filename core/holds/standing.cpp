// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/holds/standing.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/requirements/catalogue.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Hold", text); }

/// Whether the condition need no longer hold.
bool isOver(const JobState &job, const HoldCondition &condition)
{
    const auto id = HoldId::parse(condition.until);
    const HoldPoint *until = id ? job.hold(*id) : nullptr;
    return until && until->passed;
}

template <class T>
bool has(const std::vector<T> &all, const T &one)
{
    return std::find(all.begin(), all.end(), one) != all.end();
}

bool isBehind(const JobState &job, const HoldGate &gate, QStringView kind, const std::optional<QString> &subject)
{
    if (gate.act != kind)
        return false;
    const auto itemId = InterfaceId::parse(subject.value_or(QString()));
    const InterfaceState *item = itemId ? job.item(*itemId) : nullptr;
    if (!gate.which.isEmpty() && (!item || !gate.which.letsThrough(item->listed)))
        return false;
    if (gate.names.empty())
        return true;
    const auto temporaryId = TemporaryId::parse(subject.value_or(QString()));
    const TemporaryItem *temporary = temporaryId ? job.temporary(*temporaryId) : nullptr;
    return temporary && has(gate.names, temporarySortText(temporary->sort));
}

/// Whether a gate holds back something that has still to be done, or had to, for the outgoing unit to be on again.
bool isOnTheWayBack(const JobState &job, const HoldGate &gate)
{
    if (gate.act == u"interface.disconnected" || gate.act == u"unit.removed" || gate.act == u"unit.received")
        return false;
    if (gate.act == u"unit.positioned")
        return job.unit.off.has_value();
    if (gate.act == u"temporary.removed")
        return std::any_of(job.temporaries.begin(), job.temporaries.end(), [&](const TemporaryItem &item) { return gate.names.empty() || has(gate.names, temporarySortText(item.sort)); });
    if (gate.act == u"test.recorded") // what nobody touched is not tried out
        return std::any_of(job.items.begin(), job.items.end(), [](const InterfaceState &item) { return item.removal.has_value(); });
    const Act *act = findAct(gate.act);
    if (!act || act->subject != SubjectSort::Interface)
        return true;
    return std::any_of(job.items.begin(), job.items.end(), [&](const InterfaceState &item) {
        const bool isAsked = gate.act != u"leak.checked" || asksFor(item.listed, "leak"_L1);
        return item.removal && isAsked && gate.which.letsThrough(item.listed);
    });
}

} // namespace

bool HoldStanding::areConditionsMet() const { return firstMissing().isEmpty(); }

QString HoldStanding::firstMissing() const
{
    for (const ConditionShown &one : conditions) {
        if (!one.isMet())
            return one.missing.front();
    }
    return {};
}

HoldStanding standingOf(const JobState &job, const HoldPoint &hold)
{
    HoldStanding standing{hold.passed ? HoldState::Passed : HoldState::Open, {}, {}};
    for (const HoldCondition &condition : hold.conditions) {
        const bool over = hold.passed && isOver(job, condition);
        const ConditionFound found = over ? ConditionFound{} : findCondition(job, condition);
        standing.conditions.push_back({describe(condition), found.missing, over});
        if (!hold.passed || over || !standing.undermined.isEmpty())
            continue;
        if (!found.isMet())
            standing.undermined = found.missing.front();
        else if (found.restsOn > hold.passed->seq)
            standing.undermined = tr(QT_TRANSLATE_NOOP("Hold", "Entry %1 came after it was passed: what was looked at then is no longer what is there.")).arg(found.restsOn);
    }
    if (!standing.undermined.isEmpty())
        standing.state = HoldState::Void;
    return standing;
}

bool isStillAsked(const JobState &job, const HoldPoint &hold)
{
    return !job.reversed || (hold.passed && hold.passed->seq > job.reversed->seq) || std::any_of(hold.gates.begin(), hold.gates.end(), [&](const HoldGate &gate) { return isOnTheWayBack(job, gate); });
}

bool isBehind(const JobState &job, const HoldPoint &hold, QStringView kind, const std::optional<QString> &subject)
{
    return std::any_of(hold.gates.begin(), hold.gates.end(), [&](const HoldGate &gate) { return isBehind(job, gate, kind, subject); });
}

std::vector<const HoldPoint *> holdsBefore(const JobState &job, const Draft &draft)
{
    std::vector<const HoldPoint *> holds;
    for (const HoldPoint &hold : job.holds) {
        if (isBehind(job, hold, draft.kind, draft.subject) && standingOf(job, hold).state != HoldState::Passed)
            holds.push_back(&hold);
    }
    return holds;
}

} // namespace core
