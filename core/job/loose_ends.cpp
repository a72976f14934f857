// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/loose_ends.hpp"

#include <QCoreApplication>

#include "core/job/stage.hpp"
#include "core/requirements/catalogue.hpp"

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("LooseEnd", text); }

QString technician() { return tr("a technician of the crew"); }
QString inspector() { return tr("an authorised inspector who had no hand in it"); }

LooseEnd endOf(const InterfaceState &item, const QString &rule, const QString &sentence, const QString &clearedBy)
{
    return {rule, item.listed.id.text(), sentence.arg(item.listed.name), clearedBy};
}

void addItem(LooseEnds &ends, const InterfaceState &item)
{
    switch (stageOf(item)) {
    case Stage::Connected:
        ends.push_back(endOf(item, QStringLiteral("loose.untouched"), tr("%1 is on the list and was never disconnected. Disconnect it, or strike its listing if it stays on."), tr("a technician; or the lead, by striking the listing")));
        return;
    case Stage::Disconnected:
        ends.push_back(endOf(item, QStringLiteral("loose.disconnected"), tr("%1 is disconnected."), technician()));
        return;
    case Stage::Reconnected:
        for (const auto &[requirement, sentence] : stillToShow(item))
            ends.push_back(endOf(item, QStringLiteral("loose.") + requirement->name, tr("%1 is joined, not secured. ") + sentence, technician()));
        return;
    case Stage::Secured:
        ends.push_back(endOf(item, QStringLiteral("loose.inspection"),
                             item.acceptances.empty() ? tr("%1 waits for its inspection.") : tr("%1 waits for its second inspection, by another person."), inspector()));
        return;
    case Stage::Inspected: return;
    }
}

void addFindings(LooseEnds &ends, const JobState &job)
{
    for (const Finding &finding : job.findings) {
        if (!finding.closed)
            ends.push_back({QStringLiteral("loose.finding"), finding.id.text(), tr("Finding %1 is open: %2").arg(finding.id.text(), finding.description), inspector()});
    }
}

} // namespace

LooseEnds looseEnds(const JobState &job, const Register &reg)
{
    LooseEnds ends;
    if (job.closed)
        return ends;
    for (const InterfaceState &item : job.items)
        addItem(ends, item);
    addFindings(ends, job);
    if (const Handover *pending = job.pendingHandover())
        ends.push_back({QStringLiteral("loose.handover"), pending->to.text(), tr("The handover to %1 has not been accepted.").arg(reg.nameOf(pending->to)), reg.nameOf(pending->to)});
    return ends;
}

json::Array openAtHandover(const JobState &job)
{
    json::Array open;
    for (const InterfaceState &item : job.items) {
        const Stage stage = stageOf(item);
        if (stage == Stage::Connected || stage == Stage::Inspected)
            continue;
        json::Object record{{QStringLiteral("interface"), item.listed.id.text()}, {QStringLiteral("stage"), stageName(stage)}};
        std::vector<QString> missing;
        if (stage == Stage::Reconnected) {
            for (const auto &[requirement, sentence] : stillToShow(item))
                missing.push_back(requirement->name);
            record.set(QStringLiteral("missing"), json::arrayOf(missing));
        }
        open.emplace_back(std::move(record));
    }
    return open;
}

} // namespace core
