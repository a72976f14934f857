// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/signings.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <map>

#include "core/job/bursts.hpp"
#include "core/reports/timeline.hpp"

namespace core {

using namespace Qt::StringLiterals;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Report", text); }

constexpr std::array allSorts{SignedAs::Work, SignedAs::Look, SignedAs::Record, SignedAs::Release};

bool isIn(const std::vector<Burst> &bursts, const Statement &said)
{
    return std::any_of(bursts.begin(), bursts.end(), [&](const Burst &burst) { return burst.by == said.author && burst.meaning == said.meaning && said.seq >= burst.first && said.seq <= burst.last; });
}

std::vector<Shift> shiftsOf(const JobState &job)
{
    std::vector<Shift> shifts;
    for (std::size_t i = 0; i < job.said.size(); ++i) {
        const Statement &said = job.said[i];
        const bool begins = shifts.empty() || (said.kind == u"handover.accepted" && job.lines[i].standing == Standing::Stands);
        if (begins && !shifts.empty())
            shifts.back().until = said.at;
        if (begins)
            shifts.push_back({said.seq, said.at, said.at});
    }
    if (!shifts.empty())
        shifts.back().until = job.said[job.said.size() - 1].at;
    return shifts;
}

ReportRow rowOf(const SigningLane &lane, const std::vector<const SigningMark *> &marks, std::size_t shift, const JobState &job)
{
    std::vector<QString> cells{lane.person.text(), lane.name, QString::number(shift + 1)};
    for (const SignedAs as : allSorts) {
        const auto count = std::count_if(marks.begin(), marks.end(), [&](const SigningMark *mark) { return mark->as == as; });
        cells.push_back(count > 0 ? QString::number(count) : QString());
    }
    const auto struck = std::count_if(marks.begin(), marks.end(), [](const SigningMark *mark) { return !mark->counts; });
    const auto burst = std::count_if(marks.begin(), marks.end(), [](const SigningMark *mark) { return mark->inBurst; });
    cells.push_back(struck > 0 ? QString::number(struck) : QString());
    cells.push_back(burst > 0 ? QString::number(burst) : QString());
    cells.push_back(momentText(job, marks.front()->seq, marks.front()->at));
    cells.push_back(momentText(job, marks.back()->seq, marks.back()->at));
    return {{}, std::move(cells)};
}

} // namespace

SignedAs signedAs(QStringView meaning)
{
    if (meaning == u"performed")
        return SignedAs::Work;
    if (meaning == u"released")
        return SignedAs::Release;
    const bool isLook = meaning == u"inspected" || meaning == u"reinspected" || meaning == u"confirmed" || meaning == u"seen" || meaning == u"passed";
    return isLook ? SignedAs::Look : SignedAs::Record;
}

QString signedAsWord(SignedAs as)
{
    switch (as) {
    case SignedAs::Work:
        return tr("Work");
    case SignedAs::Look:
        return tr("Inspection, look");
    case SignedAs::Record:
        return tr("Record");
    case SignedAs::Release:
        return tr("Release");
    }
    Q_UNREACHABLE();
}

Signings signingsOf(const JobState &job, const Register &reg)
{
    Signings signings{{}, shiftsOf(job)};
    const std::vector<Burst> bursts = burstsOfSigning(job);
    std::map<PersonId, std::size_t> laneOf;
    for (std::size_t i = 0; i < job.said.size(); ++i) {
        const Statement &said = job.said[i];
        const auto [at, isNew] = laneOf.try_emplace(said.author, signings.lanes.size());
        if (isNew)
            signings.lanes.push_back({said.author, reg.nameOf(said.author), {}});
        signings.lanes[at->second].marks.push_back({said.seq, said.at, signedAs(said.meaning), job.lines[i].standing == Standing::Stands, isIn(bursts, said)});
    }
    return signings;
}

AuditTable signingsTable(const JobState &job, const Register &reg)
{
    AuditTable table{tr("Who signed what when"),
                     {{tr("Work order"), job.facts.workOrder}, {tr("Aircraft"), job.facts.aircraft}, {tr("Entries"), QString::number(job.said.size())}},
                     {{"person"_L1, QT_TRANSLATE_NOOP("Report", "Person"), 0},
                      {"name"_L1, QT_TRANSLATE_NOOP("Report", "Name"), 22},
                      {"shift"_L1, QT_TRANSLATE_NOOP("Report", "Shift"), 8},
                      {"work"_L1, QT_TRANSLATE_NOOP("Report", "Work"), 8},
                      {"look"_L1, QT_TRANSLATE_NOOP("Report", "Inspection, look"), 14},
                      {"record"_L1, QT_TRANSLATE_NOOP("Report", "Record"), 9},
                      {"release"_L1, QT_TRANSLATE_NOOP("Report", "Release"), 9},
                      {"struck"_L1, QT_TRANSLATE_NOOP("Report", "Of these struck"), 10},
                      {"burst"_L1, QT_TRANSLATE_NOOP("Report", "Many in a short time"), 14},
                      {"first"_L1, QT_TRANSLATE_NOOP("Report", "First"), 20},
                      {"last"_L1, QT_TRANSLATE_NOOP("Report", "Last"), 20}},
                     {},
                     tr("Nobody signed anything."),
                     {}};
    const Signings signings = signingsOf(job, reg);
    for (const SigningLane &lane : signings.lanes) {
        for (std::size_t shift = 0; shift < signings.shifts.size(); ++shift) {
            const qint64 next = shift + 1 < signings.shifts.size() ? signings.shifts[shift + 1].first : static_cast<qint64>(job.said.size()) + 1;
            std::vector<const SigningMark *> marks;
            for (const SigningMark &mark : lane.marks) {
                if (mark.seq >= signings.shifts[shift].first && mark.seq < next)
                    marks.push_back(&mark);
            }
            if (!marks.empty())
                table.rows.push_back(rowOf(lane, marks, shift, job));
        }
    }
    const auto hashes = hashesOf(job.said);
    if (!hashes.empty())
        table.foot = tr("Entry %1  %2").arg(job.said.size()).arg(hashes.back().hex());
    return table;
}

} // namespace core
