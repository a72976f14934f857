// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include "core/holds/condition.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Hold", text); }

std::optional<QString> fault(const HoldCondition &condition)
{
    return condition.which.isEmpty() && condition.names.empty() ? std::nullopt : std::optional(tr(QT_TRANSLATE_NOOP("Hold", "A condition on the unit names a stage alone.")));
}

QString sentence(const HoldCondition &condition)
{
    if (condition.stage == u"removed")
        return tr(QT_TRANSLATE_NOOP("Hold", "The outgoing unit is off, blanked and tagged."));
    if (condition.stage == u"received")
        return tr(QT_TRANSLATE_NOOP("Hold", "The incoming unit is received: plate, certificate, blanks and modification state."));
    return tr(QT_TRANSLATE_NOOP("Hold", "The incoming unit is in its place, and its shipping blanks are out."));
}

ConditionFound find(const JobState &job, const HoldCondition &condition)
{
    const UnitChange &unit = job.unit;
    const std::optional<qint64> reached = condition.stage == u"removed" ? (unit.off ? std::optional(unit.off->mark.seq) : std::nullopt)
                                          : condition.stage == u"received" ? (unit.in ? std::optional(unit.in->mark.seq) : std::nullopt)
                                                                           : (unit.up ? std::optional(unit.up->mark.seq) : std::nullopt);
    if (reached)
        return {{}, *reached};
    // Nothing comes in where the outgoing unit goes back on; and one that was not off yet is where it was.
    if (job.reversed && (condition.stage == u"received" || !unit.off))
        return {{}, job.reversed->seq};
    return {{tr(QT_TRANSLATE_NOOP("Hold", "Not so yet: %1")).arg(sentence(condition))}, 0};
}

} // namespace

std::vector<ConditionKind> unitConditions()
{
    return {{"unit"_L1, {"removed"_L1, "received"_L1, "positioned"_L1}, &fault, &sentence, &find}};
}

} // namespace core
