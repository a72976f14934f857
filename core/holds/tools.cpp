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
    return condition.which.isEmpty() && condition.names.empty() ? std::nullopt : std::optional(tr(QT_TRANSLATE_NOOP("Hold", "The tools are counted all together: name none.")));
}

QString sentence(const HoldCondition &) { return tr(QT_TRANSLATE_NOOP("Hold", "Every tool that is out was counted, after the last issue, return or loss.")); }

/// Where no tool was issued to the job there is none to count.
ConditionFound find(const JobState &job, const HoldCondition &)
{
    const qint64 changed = job.tools.changedBy();
    if (changed == 0)
        return {};
    if (job.tools.counted && job.tools.counted->seq > changed)
        return {{}, job.tools.counted->seq};
    return {{tr(QT_TRANSLATE_NOOP("Hold", "The tools have not been counted since entry %1.")).arg(changed)}, 0};
}

} // namespace

std::vector<ConditionKind> toolConditions()
{
    return {{"tools_counted"_L1, {}, &fault, &sentence, &find}};
}

} // namespace core
