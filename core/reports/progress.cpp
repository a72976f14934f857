// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/progress.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <map>

#include "core/job/fold.hpp"
#include "core/reports/audit_table.hpp"
#include "core/reports/left_in_words.hpp"
#include "core/reports/timeline.hpp"

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Progress", text); }

/// Whose and where an interface is that is undone and not inspected; nothing for any other.
struct Undone {
    QString zone;
    PersonId by;
    bool operator==(const Undone &) const = default;
};

std::optional<Undone> undoneOf(const InterfaceState &item) { return isUndone(item) ? std::optional(Undone{item.listed.zone, item.removal->mark.by}) : std::nullopt; }

/// Counts as entries come. Only what an entry may have changed is looked at: a job may have thousands of each.
class Count {
public:
    void take(const JobState &job, const Statement &said)
    {
        m_entry = {said.seq, said.at, 0};
        while (m_undone.size() > job.items.size()) { // a listing was struck
            change(m_undone.size() - 1, std::nullopt);
            m_undone.pop_back();
        }
        m_undone.resize(job.items.size());
        job.items.eachUnshared(m_before, [&](std::size_t at) { change(at, undoneOf(job.items[at])); });
        m_before = job.items;
        step(m_total);
        for (auto &[zone, line] : m_zones)
            step(line);
        for (auto &[person, line] : m_persons)
            step(line);
    }
    struct Line {
        ProgressLine line{};
        qint64 undone = 0;
    };
    const Line &total() const { return m_total; }
    const std::map<QString, Line> &zones() const { return m_zones; }
    const std::map<PersonId, Line> &persons() const { return m_persons; }

private:
    void change(std::size_t at, std::optional<Undone> now)
    {
        std::optional<Undone> &was = m_undone[at];
        if (was == now)
            return;
        if (was)
            add(*was, -1);
        if (now)
            add(*now, 1);
        was = std::move(now);
    }
    void add(const Undone &one, qint64 by)
    {
        m_total.undone += by;
        m_zones[one.zone].undone += by;
        m_persons[one.by].undone += by;
    }
    void step(Line &one) const
    {
        std::vector<ProgressStep> &steps = one.line.steps;
        if (steps.empty() || steps.back().undone != one.undone)
            steps.push_back({m_entry.seq, m_entry.at, one.undone});
    }

    ProgressStep m_entry{0, Instant::fromMilliseconds(0), 0};
    Series<InterfaceState> m_before;
    std::vector<std::optional<Undone>> m_undone;
    Line m_total;
    std::map<QString, Line> m_zones;
    std::map<PersonId, Line> m_persons;
};

/// Begun with the job, at nought, so that all lines of a picture begin together.
ProgressLine begun(const Count::Line &counted, const QString &name, const Statement &first)
{
    ProgressLine line{name, counted.line.steps};
    if (line.steps.front().seq != first.seq)
        line.steps.insert(line.steps.begin(), {first.seq, first.at, 0});
    return line;
}

} // namespace

std::optional<Progress> progressOf(const JobState &job, const Register &reg)
{
    if (job.said.empty())
        return std::nullopt;
    const std::vector<Digest> hashes = hashesOf(job.said);
    JobFold fold;
    Count count;
    for (std::size_t i = 0; i < job.said.size(); ++i) {
        fold.take(job.said[i], hashes[i]);
        count.take(fold.state(), job.said[i]);
    }
    const Statement &first = job.said.front();
    Progress progress{begun(count.total(), {}, first), {}, {}, first.at, job.said.back().at};

    const auto &zones = job.facts.zones;
    const auto placeOf = [&](const QString &name) { return std::find_if(zones.begin(), zones.end(), [&](const Zone &zone) { return zone.name == name; }) - zones.begin(); };
    std::vector<QString> names;
    for (const auto &[zone, line] : count.zones())
        names.push_back(zone);
    std::stable_sort(names.begin(), names.end(), [&](const QString &a, const QString &b) { return placeOf(a) < placeOf(b); });
    for (const QString &name : names)
        progress.zones.push_back(begun(count.zones().at(name), name.isEmpty() ? tr("no zone") : name, first));

    std::vector<std::pair<qint64, ProgressLine>> persons;
    for (const auto &[person, line] : count.persons())
        persons.emplace_back(line.line.steps.front().seq, begun(line, reg.nameOf(person), first));
    std::stable_sort(persons.begin(), persons.end(), [](const auto &a, const auto &b) { return a.first < b.first; });
    for (auto &[seq, line] : persons)
        progress.persons.push_back(std::move(line));
    return progress;
}

QString progressInWords(const ProgressLine &line)
{
    const auto most = std::max_element(line.steps.begin(), line.steps.end(), [](const ProgressStep &a, const ProgressStep &b) { return a.undone < b.undone; });
    const ProgressStep &last = line.steps.back();
    const QString name = line.name.isEmpty() ? tr("The whole job") : line.name;
    if (most->undone == 0)
        return tr("%1: no interface undone so far.").arg(name);
    return tr("%1: at most %2, first at entry %3 (%4); now %5.").arg(name, undoneInWords(most->undone), QString::number(most->seq), momentText(most->at), QString::number(last.undone));
}

} // namespace core
