// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/list/lessons.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Lessons", text); }

struct Taught {
    QLatin1String kind;
    const char *what;
};

/// Entries that no list foresees.
constexpr Taught taught[] = {
    {"interface.unlisted"_L1, QT_TRANSLATE_NOOP("Lessons", "undone, and on no list")},
    {"interface.not_applicable"_L1, QT_TRANSLATE_NOOP("Lessons", "listed, and not applicable")},
    {"interface.undisturbed"_L1, QT_TRANSLATE_NOOP("Lessons", "listed, and never touched")},
    {"interface.found_open"_L1, QT_TRANSLATE_NOOP("Lessons", "found open, and logged by nobody")},
    {"walkround.attached"_L1, QT_TRANSLATE_NOOP("Lessons", "found still attached on the walk-round")},
    {"inspection.rejected"_L1, QT_TRANSLATE_NOOP("Lessons", "rejected by the inspector")},
    {"inspection.repeated"_L1, QT_TRANSLATE_NOOP("Lessons", "inspected again by the person who did the work")},
    {"interface.disturbed"_L1, QT_TRANSLATE_NOOP("Lessons", "disturbed after it was restored")},
};

/// The first entry by which anything came off, or nothing while all is on.
std::optional<qint64> firstUndone(const JobState &job)
{
    for (const Line &line : job.lines) {
        if (line.standing == Standing::Stands && (line.kind == u"interface.disconnected" || line.kind == u"interface.unlisted"))
            return line.seq;
    }
    return std::nullopt;
}

} // namespace

std::vector<Lesson> lessonsOf(const JobState &job)
{
    std::vector<Lesson> lessons;
    for (const Line &line : job.lines) {
        const auto row = std::find_if(std::begin(taught), std::end(taught), [&](const Taught &one) { return line.kind == one.kind; });
        const auto id = InterfaceId::parse(line.subject.value_or(QString()));
        if (row != std::end(taught) && line.standing == Standing::Stands && id)
            lessons.push_back({*id, line.seq, tr(row->what)});
    }
    const std::optional<qint64> begun = firstUndone(job);
    for (const InterfaceState &item : job.items) {
        if (begun && !item.unlisted && item.listedBy.seq > *begun)
            lessons.push_back({item.listed.id, item.listedBy.seq, tr("listed after work had begun")});
    }
    for (const Finding &finding : job.findings) {
        if (finding.item)
            lessons.push_back({*finding.item, finding.raised.seq, tr("finding %1: %2").arg(finding.id.text(), finding.description)});
    }
    std::stable_sort(lessons.begin(), lessons.end(), [](const Lesson &one, const Lesson &other) { return one.entry < other.entry; });
    return lessons;
}

std::vector<Listing> listForNextJob(const JobState &job)
{
    const std::vector<Lesson> lessons = lessonsOf(job);
    std::vector<Listing> listings;
    for (const InterfaceState &item : job.items) {
        Listing listing = item.listed;
        QStringList whats;
        for (const Lesson &lesson : lessons) {
            if (lesson.item == listing.id && !whats.contains(lesson.what))
                whats << lesson.what;
        }
        if (!whats.isEmpty()) {
            const QString learnt = tr("Work order %1: %2.").arg(job.facts.workOrder, whats.join(u"; "_s));
            listing.note = listing.note.isEmpty() ? learnt : listing.note + u' ' + learnt;
        }
        listings.push_back(std::move(listing));
    }
    return listings;
}

} // namespace core
