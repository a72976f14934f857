// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/timeline_filter.hpp"

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/acts/references.hpp"

namespace core {

using namespace Qt::StringLiterals;

namespace {

/// As the list has it, or as it was listed where the listing does not count any more.
QString zoneOf(const JobState &job, const InterfaceId &id)
{
    if (const InterfaceState *item = job.item(id))
        return item->listed.zone;
    const auto at = std::find_if(job.said.begin(), job.said.end(), [&](const Statement &said) { return said.subject == id.text() && !said.body.text(u"zone").isEmpty(); });
    return at == job.said.end() ? QString() : (*at).body.text(u"zone");
}

std::optional<InterfaceId> interfaceOf(const JobState &job, SubjectSort sort, const QString &subject)
{
    if (sort == SubjectSort::Interface || sort == SubjectSort::NewInterface)
        return InterfaceId::parse(subject);
    if (sort != SubjectSort::Finding && sort != SubjectSort::NewFinding)
        return std::nullopt;
    const auto id = FindingId::parse(subject);
    const Finding *finding = id ? job.finding(*id) : nullptr;
    return finding ? finding->item : std::nullopt;
}

/// Zones of the interfaces that a member of the body names.
void addNamed(QSet<QString> &zones, const JobState &job, const Field &field, const json::Object &body)
{
    const QString name = field.name;
    if (field.type == FieldType::Interfaces) {
        for (const InterfaceId &id : interfacesIn(body, name))
            zones.insert(zoneOf(job, id));
    }
    const auto id = field.type == FieldType::Interface ? InterfaceId::parse(body.text(name)) : std::nullopt;
    if (id)
        zones.insert(zoneOf(job, *id));
}

bool names(const Statement &said, const PersonId &person)
{
    const auto references = referencesOf(said);
    return std::find(references.begin(), references.end(), Reference{u"person"_s, person.text()}) != references.end();
}

bool counts(const JobState &job, qint64 seq)
{
    const auto index = static_cast<std::size_t>(seq - 1);
    return index >= job.lines.size() || job.lines[index].standing == Standing::Stands;
}

} // namespace

QSet<QString> zonesOf(const JobState &job, const Statement &said)
{
    QSet<QString> zones{said.body.text(u"zone")};
    const Act *act = findAct(said.kind);
    if (act && said.subject) {
        if (const auto id = interfaceOf(job, act->subject, *said.subject))
            zones.insert(zoneOf(job, *id));
        const auto temporary = act->subject == SubjectSort::Temporary ? TemporaryId::parse(*said.subject) : std::nullopt;
        if (const TemporaryItem *item = temporary ? job.temporary(*temporary) : nullptr)
            zones.insert(item->zone);
    }
    if (act) {
        for (const Field &field : act->fields)
            addNamed(zones, job, field, said.body);
    }
    zones.remove(QString());
    return zones;
}

bool fits(const TimelineFilter &filter, const JobState &job, const Statement &said, const QString &shown)
{
    return (filter.words.isEmpty() || shown.contains(filter.words, Qt::CaseInsensitive)) && (!filter.kind || said.kind == *filter.kind)
           && (filter.which == WhichStand::All || !counts(job, said.seq)) && (!filter.person || names(said, *filter.person))
           && (!filter.zone || zonesOf(job, said).contains(*filter.zone));
}

TimelineChoices timelineChoices(const JobState &job)
{
    TimelineChoices choices;
    for (const Statement &said : job.said) {
        choices.kinds.insert(said.kind);
        for (const Reference &reference : referencesOf(said)) {
            const auto person = reference.sort == u"person" ? PersonId::parse(reference.value) : std::nullopt;
            if (person)
                choices.people.insert(*person);
        }
    }
    for (const Zone &zone : job.facts.zones)
        choices.zones.push_back(zone.name);
    return choices;
}

} // namespace core
