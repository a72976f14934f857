// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/draft_help.hpp"

#include <algorithm>

namespace core {

namespace {

/// Numbers of the blocks that are out which no interface has had, at most so many.
std::vector<QString> leftOfBlocks(const JobState &job, std::size_t count)
{
    std::vector<QString> tags;
    for (const TagBlock &block : job.tags.blocks) {
        for (qint64 number = block.first; !block.returned && number <= block.last && tags.size() < count; ++number) {
            if (const QString tag = QString::number(number); !job.tagAt.contains(tag))
                tags.push_back(tag);
        }
    }
    return tags;
}

/// One more than the greatest number so far.
qint64 numberAfterAll(const JobState &job)
{
    // A longer number is a serial number off some box of tags, and nothing to count on from.
    constexpr qint64 mostCounted = 1'000'000'000'000'000;
    qint64 next = 1;
    for (auto at = job.tagAt.keyBegin(); at != job.tagAt.keyEnd(); ++at) {
        if (const qint64 number = at->toLongLong(); number <= mostCounted)
            next = std::max(next, number + 1);
    }
    return next;
}

} // namespace

std::vector<QString> nextTags(const JobState &job, std::size_t count)
{
    std::vector<QString> tags = leftOfBlocks(job, count);
    for (qint64 number = numberAfterAll(job); tags.size() < count; ++number) {
        const QString tag = QString::number(number);
        if (!job.tagAt.contains(tag) && std::find(tags.begin(), tags.end(), tag) == tags.end())
            tags.push_back(tag);
    }
    return tags;
}

QString nextTag(const JobState &job) { return nextTags(job, 1).front(); }

QString nextFinding(const JobState &job)
{
    auto number = job.findings.size() + 1;
    while (job.finding(*FindingId::parse(QStringLiteral("F%1").arg(number))))
        ++number;
    return QStringLiteral("F%1").arg(number);
}

QString nextTemporary(const JobState &job)
{
    auto number = job.temporaries.size() + 1;
    while (job.temporary(*TemporaryId::parse(QStringLiteral("T%1").arg(number))))
        ++number;
    return QStringLiteral("T%1").arg(number);
}

QString nextAccessory(const JobState &job)
{
    auto number = job.accessories.size() + 1;
    while (job.accessory(*AccessoryId::parse(QStringLiteral("AC%1").arg(number))))
        ++number;
    return QStringLiteral("AC%1").arg(number);
}

QString nextTest(const JobState &job)
{
    const auto isTaken = [&](const QString &text) { return std::any_of(job.tests.begin(), job.tests.end(), [&](const JobTest &test) { return test.id.text() == text; }); };
    auto number = job.tests.size() + 1;
    while (isTaken(QStringLiteral("R%1").arg(number)))
        ++number;
    return QStringLiteral("R%1").arg(number);
}

QString nextUnlisted(const JobState &job)
{
    qsizetype number = 1;
    while (job.item(*InterfaceId::parse(QStringLiteral("X%1").arg(number))))
        ++number;
    return QStringLiteral("X%1").arg(number);
}

} // namespace core
