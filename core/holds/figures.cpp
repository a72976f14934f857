// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include <algorithm>

#include "core/holds/condition.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Hold", text); }

bool isNamed(const HoldCondition &condition, const QString &name)
{
    return condition.names.empty() || std::find(condition.names.begin(), condition.names.end(), name) != condition.names.end();
}

/// The last figure of this kind of which a member is named, or of any where none is named.
ConditionFound last(const JobState &job, const HoldCondition &condition, QLatin1String kind, QStringView member, const QString &missing)
{
    qint64 seq = 0;
    for (const JobFigure &figure : job.figures) {
        if (figure.kind == kind && isNamed(condition, figure.body.text(member)))
            seq = figure.mark.seq;
    }
    return seq == 0 ? ConditionFound{{missing}, 0} : ConditionFound{{}, seq};
}

QString named(const HoldCondition &condition) { return QStringList(condition.names.begin(), condition.names.end()).join(u", "_s); }

std::optional<QString> liftFault(const HoldCondition &condition)
{
    const bool isUnit = condition.which.isEmpty() && condition.names.size() == 1 && (condition.names.front() == u"outgoing" || condition.names.front() == u"incoming");
    return isUnit ? std::nullopt : std::optional(tr(QT_TRANSLATE_NOOP("Hold", "A lift is planned for the outgoing or for the incoming unit: name one.")));
}

QString liftSaid(const HoldCondition &condition) { return tr(QT_TRANSLATE_NOOP("Hold", "A lift of the %1 unit is planned, within the limits of hoist and sling.")).arg(named(condition)); }

ConditionFound liftFound(const JobState &job, const HoldCondition &condition)
{
    // Given up, the unit that goes up is the one that came down; and where none came down nothing is lifted.
    if (job.reversed && isNamed(condition, u"incoming"_s)) {
        if (!job.unit.off)
            return {{}, job.reversed->seq};
        HoldCondition outgoing = condition;
        outgoing.names = {u"outgoing"_s};
        return last(job, outgoing, "lift.planned"_L1, u"unit", tr(QT_TRANSLATE_NOOP("Hold", "No lift of the outgoing unit is planned.")));
    }
    return last(job, condition, "lift.planned"_L1, u"unit", tr(QT_TRANSLATE_NOOP("Hold", "No lift of the %1 unit is planned.")).arg(named(condition)));
}

std::optional<QString> servicedFault(const HoldCondition &condition)
{
    return condition.which.isEmpty() && condition.names.size() == 1 ? std::nullopt : std::optional(tr(QT_TRANSLATE_NOOP("Hold", "Name one system that is serviced.")));
}

QString servicedSaid(const HoldCondition &condition) { return tr(QT_TRANSLATE_NOOP("Hold", "Serviced: %1.")).arg(named(condition)); }

ConditionFound servicedFound(const JobState &job, const HoldCondition &condition)
{
    return last(job, condition, "servicing.recorded"_L1, u"system", tr(QT_TRANSLATE_NOOP("Hold", "No servicing of %1 is recorded.")).arg(named(condition)));
}

std::optional<QString> nameless(const HoldCondition &condition)
{
    return condition.which.isEmpty() && condition.names.empty() ? std::nullopt : std::optional(tr(QT_TRANSLATE_NOOP("Hold", "This condition names nothing.")));
}

QString weighedSaid(const HoldCondition &) { return tr(QT_TRANSLATE_NOOP("Hold", "The weight change is recorded.")); }

ConditionFound weighedFound(const JobState &job, const HoldCondition &condition)
{
    // The same unit is on again, with all that was on it.
    if (job.reversed && std::none_of(job.accessories.begin(), job.accessories.end(), [](const Accessory &one) { return one.left.has_value(); }))
        return {{}, job.reversed->seq};
    return last(job, condition, "weight.recorded"_L1, u"", tr(QT_TRANSLATE_NOOP("Hold", "No weight change is recorded.")));
}

QString accessoriesSaid(const HoldCondition &) { return tr(QT_TRANSLATE_NOOP("Hold", "Every accessory has moved, or is declared to leave with the outgoing unit.")); }

ConditionFound accessoriesFound(const JobState &job, const HoldCondition &)
{
    ConditionFound found;
    for (const Accessory &accessory : job.accessories) {
        if (!isPlaced(job, accessory))
            found.missing << tr(QT_TRANSLATE_NOOP("Hold", "%1 (%2) is not placed.")).arg(accessory.id.text(), accessory.name);
        else if (const auto &where = accessory.left ? accessory.left : accessory.moved)
            found.restsOn = std::max(found.restsOn, where->seq);
    }
    return found;
}

QString findingsSaid(const HoldCondition &) { return tr(QT_TRANSLATE_NOOP("Hold", "No finding is open.")); }

ConditionFound findingsFound(const JobState &job, const HoldCondition &)
{
    ConditionFound found;
    for (const Finding &finding : job.findings) {
        if (finding.closed)
            found.restsOn = std::max(found.restsOn, finding.closed->seq);
        else
            found.missing << tr(QT_TRANSLATE_NOOP("Hold", "Finding %1 is open: %2")).arg(finding.id.text(), finding.description);
    }
    return found;
}

std::optional<QString> passedFault(const HoldCondition &condition)
{
    return !condition.which.isEmpty() || condition.names.empty() ? std::optional(tr(QT_TRANSLATE_NOOP("Hold", "Name the hold points that come first, and nothing else."))) : std::nullopt;
}

QString passedSaid(const HoldCondition &condition) { return tr(QT_TRANSLATE_NOOP("Hold", "Passed before: %1.")).arg(named(condition)); }

/// That an earlier hold point was passed, not that it still stands: what of it has to last, it asks for itself.
ConditionFound passedFound(const JobState &job, const HoldCondition &condition)
{
    ConditionFound found;
    for (const QString &name : condition.names) {
        const auto id = HoldId::parse(name);
        const HoldPoint *hold = id ? job.hold(*id) : nullptr;
        if (hold && hold->passed)
            continue;
        found.missing << tr(QT_TRANSLATE_NOOP("Hold", "The hold point %1 has not been passed.")).arg(hold ? hold->title : name);
    }
    return found;
}

} // namespace

std::vector<ConditionKind> figureConditions()
{
    return {
        {"lift_planned"_L1, {}, &liftFault, &liftSaid, &liftFound},
        {"serviced"_L1, {}, &servicedFault, &servicedSaid, &servicedFound},
        {"weighed"_L1, {}, &nameless, &weighedSaid, &weighedFound},
        {"accessories_placed"_L1, {}, &nameless, &accessoriesSaid, &accessoriesFound},
        {"findings_closed"_L1, {}, &nameless, &findingsSaid, &findingsFound},
        {"passed"_L1, {}, &passedFault, &passedSaid, &passedFound},
    };
}

} // namespace core
