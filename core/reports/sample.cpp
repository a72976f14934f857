// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/sample.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <set>

#include "core/acts/act.hpp"
#include "core/job/stage.hpp"
#include "core/job/twins.hpp"
#include "core/reports/timeline.hpp"

namespace core {

using namespace Qt::StringLiterals;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Report", text); }

bool isOnFindingOf(const JobState &job, const QString &subject, const InterfaceId &id)
{
    const auto finding = FindingId::parse(subject);
    const Finding *found = finding ? job.finding(*finding) : nullptr;
    return found && found->item == id;
}

bool bodyNames(const Act &act, const json::Object &body, const InterfaceId &id)
{
    return std::any_of(act.fields.begin(), act.fields.end(), [&](const Field &field) {
        const QString name = field.name;
        if (field.type == FieldType::Interface)
            return body.text(name) == id.text();
        if (field.type != FieldType::Interfaces)
            return false;
        const auto named = interfacesIn(body, name);
        return std::find(named.begin(), named.end(), id) != named.end();
    });
}

bool isAbout(const JobState &job, const Statement &said, const InterfaceId &id)
{
    const Act *act = findAct(said.kind);
    if (!act)
        return false;
    const bool isOfInterface = act->subject == SubjectSort::Interface || act->subject == SubjectSort::NewInterface;
    const bool isOfFinding = act->subject == SubjectSort::Finding || act->subject == SubjectSort::NewFinding;
    const std::vector<InterfaceId> twins = twinsReadIn(job, said);
    return std::find(twins.begin(), twins.end(), id) != twins.end() || (isOfInterface && said.subject == id.text()) || (isOfFinding && said.subject && isOnFindingOf(job, *said.subject, id)) || bodyNames(*act, said.body, id);
}

QString headingOf(const InterfaceState &item, const Drawn &drawn)
{
    return tr("%1 %2, zone %3, %4. Rank %5").arg(item.listed.id.text(), item.listed.name, item.listed.zone, stageWord(stageOf(item)), drawn.rank.hex());
}

std::vector<ReportColumn> columnsOfSample()
{
    return {{"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 0},
            {"name"_L1, QT_TRANSLATE_NOOP("Report", "Name"), 0},
            {"zone"_L1, QT_TRANSLATE_NOOP("Report", "Zone"), 0},
            {"stage"_L1, QT_TRANSLATE_NOOP("Report", "Stage"), 0},
            {"rank"_L1, QT_TRANSLATE_NOOP("Report", "Rank"), 0},
            {"entry"_L1, QT_TRANSLATE_NOOP("Report", "Entry"), 7},
            {"at"_L1, QT_TRANSLATE_NOOP("Report", "Time"), 17},
            {"author"_L1, QT_TRANSLATE_NOOP("Report", "Id"), 10},
            {"signed_by"_L1, QT_TRANSLATE_NOOP("Report", "Signed by"), 14},
            {"meaning"_L1, QT_TRANSLATE_NOOP("Report", "Signed as"), 16},
            {"statement"_L1, QT_TRANSLATE_NOOP("Report", "Statement"), 34},
            {"standing"_L1, QT_TRANSLATE_NOOP("Report", "Standing"), 12},
            {"hash"_L1, QT_TRANSLATE_NOOP("Report", "Hash"), 0}};
}

} // namespace

Digest rankOf(const InterfaceId &id, const QString &seed) { return Digest::of(QString(seed + u'\n' + id.text()).toUtf8()); }

std::vector<qint64> entriesAbout(const JobState &job, const InterfaceId &id)
{
    std::set<qint64> about;
    for (const Statement &said : job.said) {
        if (!isAbout(job, said, id))
            continue;
        about.insert(said.seq);
        if (const auto by = job.lines[static_cast<std::size_t>(said.seq - 1)].struckBy)
            about.insert(*by);
    }
    return {about.begin(), about.end()};
}

Sample sampleOf(const JobState &job, qsizetype count, const QString &seed)
{
    Sample sample{seed, static_cast<qsizetype>(job.items.size()), {}};
    for (const InterfaceState &item : job.items)
        sample.drawn.push_back({item.listed.id, rankOf(item.listed.id, seed), {}});
    std::sort(sample.drawn.begin(), sample.drawn.end(), [](const Drawn &a, const Drawn &b) { return a.rank < b.rank; });
    while (static_cast<qsizetype>(sample.drawn.size()) > std::max(count, qsizetype{0}))
        sample.drawn.pop_back();
    for (Drawn &drawn : sample.drawn)
        drawn.entries = entriesAbout(job, drawn.id);
    return sample;
}

AuditTable sampleTable(const JobState &job, const Register &reg, const Kinds &kinds, const Sample &sample)
{
    const std::vector<Digest> hashes = hashesOf(job.said);
    const QString head = hashes.empty() ? QString() : tr("Entry %1  %2").arg(hashes.size()).arg(hashes.back().hex());
    AuditTable table{tr("Sample of the work: %1").arg(job.facts.workOrder), {}, columnsOfSample(), {}, tr("The job lists no interface to draw from."), head};
    table.facts = {{tr("Job"), tr("%1, %2, %3").arg(job.facts.workOrder, job.facts.title, job.facts.aircraft)},
                   {tr("State"), job.closed ? tr("closed") : tr("open")},
                   {tr("Drawn"), tr("interfaces: %1 of %2").arg(sample.drawn.size()).arg(sample.among)},
                   {tr("Seed"), sample.seed},
                   {tr("Drawn by"), tr("the smallest SHA-256 of the seed, a line feed and the interface's id, in UTF-8")},
                   {tr("Up to"), head},
                   {tr("Fingerprint of the root"), reg.fingerprint.hex()}};
    for (const Drawn &drawn : sample.drawn) {
        const InterfaceState &item = *job.item(drawn.id);
        for (const qint64 seq : drawn.entries) {
            const auto index = static_cast<std::size_t>(seq - 1);
            const Statement &said = job.said[index];
            const Line &line = job.lines[index];
            const QString standing = standingWord(line);
            table.rows.push_back({headingOf(item, drawn),
                                  {drawn.id.text(), item.listed.name, item.listed.zone, stageName(stageOf(item)), drawn.rank.hex(), QString::number(seq), momentText(job, seq, said.at), said.author.text(),
                                   reg.nameOf(said.author), meaningInWords(said.meaning), describe(said, reg, kinds.find(item.listed.kind)), standing.isEmpty() ? standingName(line.standing) : standing,
                                   hashes[index].hex()},
                                  line.standing});
        }
    }
    return table;
}

} // namespace core
