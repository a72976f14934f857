// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QStringList>

#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

QString signedText(const JobRecord &record, const Mark &mark)
{
    return inWords(QT_TRANSLATE_NOOP("Report", "%1, %2, entry %3")).arg(personText(record.registerAt(mark.seq), mark.by), momentText(record.job(), mark.seq, mark.at)).arg(mark.seq);
}

QString crewText(const JobRecord &record)
{
    QStringList names;
    for (const PersonId &member : record.job().crew)
        names << personText(record.reg(), member);
    return names.join(u", "_s);
}

QString zonesText(const JobRecord &record)
{
    QStringList zones;
    for (const Zone &zone : record.job().facts.zones)
        zones << (zone.technician ? inWords(QT_TRANSLATE_NOOP("Report", "%1: %2")).arg(zone.name, record.reg().nameOf(*zone.technician)) : zone.name);
    return zones.join(u"; "_s);
}

QString closedText(const JobRecord &record)
{
    const auto &closed = record.job().closed;
    return closed ? signedText(record, *closed) : inWords(QT_TRANSLATE_NOOP("Report", "NOT CLOSED"));
}

QString acceptanceText(const JobFacts &facts)
{
    return facts.acceptsGuarded ? inWords(QT_TRANSLATE_NOOP("Report", "with a guard band as wide as what the tool may be off")) : inWords(QT_TRANSLATE_NOOP("Report", "anywhere in the band"));
}

QString skipText(const JobFacts &facts)
{
    return facts.maySkipFasteners ? inWords(QT_TRANSLATE_NOOP("Report", "out of their order with a reason")) : inWords(QT_TRANSLATE_NOOP("Report", "in their order alone"));
}

QString leakSchemeText(const JobFacts &facts)
{
    const measure::LeakScheme &scheme = facts.leakScheme;
    QStringList classes;
    for (const measure::LeakClass &one : scheme.classes)
        classes << (one.upper ? inWords(one.upper->edge == measure::Edge::Included ? QT_TRANSLATE_NOOP("Report", "%1 (up to %2)") : QT_TRANSLATE_NOOP("Report", "%1 (under %2)")).arg(one.name, one.upper->size.text()) : one.name);
    const QString listed = scheme.name.isEmpty() ? classes.join(u", "_s) : inWords(QT_TRANSLATE_NOOP("Report", "%1: %2")).arg(scheme.name, classes.join(u", "_s));
    return scheme.minutes ? inWords(QT_TRANSLATE_NOOP("Report", "%1; %2 minutes after wiping dry")).arg(listed, QString::number(*scheme.minutes)) : listed;
}

QString doubtText(const JobRecord &record, const TimeInDoubt &doubt)
{
    const QString difference = doubt.difference.isEmpty() ? inWords(QT_TRANSLATE_NOOP("Report", "difference not known")) : doubt.difference;
    return inWords(QT_TRANSLATE_NOOP("Report", "entries %1 to %2: %3; %4 (%5)")).arg(doubt.first).arg(doubt.last).arg(doubt.reason, difference, signedText(record, doubt.mark));
}

std::vector<ReportRow> factRows(const JobRecord &record)
{
    const JobState &job = record.job();
    const JobFacts &facts = job.facts;
    std::vector<ReportRow> rows;
    const auto add = [&](const char *name, const QString &value) {
        if (!value.isEmpty())
            rows.push_back({{}, {inWords(name), value}});
    };
    add(QT_TRANSLATE_NOOP("Report", "Title"), facts.title);
    add(QT_TRANSLATE_NOOP("Report", "Work order"), facts.workOrder);
    add(QT_TRANSLATE_NOOP("Report", "Aircraft"), facts.aircraft);
    add(QT_TRANSLATE_NOOP("Report", "Aircraft type"), facts.aircraftType);
    add(QT_TRANSLATE_NOOP("Report", "Maintenance data"), facts.maintenanceData);
    add(QT_TRANSLATE_NOOP("Report", "Revision"), facts.revision);
    for (const Revision &one : job.revisions)
        add(QT_TRANSLATE_NOOP("Report", "Revised"), inWords(QT_TRANSLATE_NOOP("Report", "from %1 to %2: %3 (%4)")).arg(one.before, one.revision, one.changed, signedText(record, one.mark)));
    add(QT_TRANSLATE_NOOP("Report", "Unit"), facts.unit);
    add(QT_TRANSLATE_NOOP("Report", "Outgoing serial number"), facts.outgoingSerial);
    add(QT_TRANSLATE_NOOP("Report", "Incoming serial number"), facts.incomingSerial);
    add(QT_TRANSLATE_NOOP("Report", "Follows the closed job"), facts.follows);
    if (job.opened) {
        add(QT_TRANSLATE_NOOP("Report", "Torque readings are accepted"), acceptanceText(facts));
        add(QT_TRANSLATE_NOOP("Report", "Fasteners are taken"), skipText(facts));
        if (facts.mayReinspect)
            add(QT_TRANSLATE_NOOP("Report", "Inspecting one's own work again"), inWords(QT_TRANSLATE_NOOP("Report", "allowed where nobody else is there, %1 minutes after the work")).arg(facts.reinspectionPause));
    }
    add(QT_TRANSLATE_NOOP("Report", "Leak classes, the least first"), leakSchemeText(facts));
    add(job.handovers.empty() ? QT_TRANSLATE_NOOP("Report", "Zones") : QT_TRANSLATE_NOOP("Report", "Zones, as divided at the opening"), zonesText(record));
    add(QT_TRANSLATE_NOOP("Report", "Lead"), job.lead ? personText(record.reg(), *job.lead) : QString());
    add(QT_TRANSLATE_NOOP("Report", "Crew"), crewText(record));
    add(QT_TRANSLATE_NOOP("Report", "Opened"), job.opened ? signedText(record, *job.opened) : QString());
    add(QT_TRANSLATE_NOOP("Report", "Closed"), closedText(record));
    for (const TimeInDoubt &one : job.timesInDoubt)
        add(QT_TRANSLATE_NOOP("Report", "Times in doubt"), doubtText(record, one));
    add(QT_TRANSLATE_NOOP("Report", "Job ledger"), job.ledger ? job.ledger->text() : QString());
    return rows;
}

} // namespace

Report factsReport()
{
    return {"facts"_L1,
            QT_TRANSLATE_NOOP("Report", "The job"),
            {{"fact"_L1, QT_TRANSLATE_NOOP("Report", "Fact"), 25}, {"value"_L1, QT_TRANSLATE_NOOP("Report", "As recorded"), 75}},
            &factRows};
}

} // namespace core
