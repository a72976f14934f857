// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/draft_help.hpp"

#include <algorithm>

namespace core {

namespace {

/// The first number of a block that is out which no interface has had; nothing where there is none.
std::optional<qint64> nextOfBlocks(const JobState &job)
{
    for (const TagBlock &block : job.tags.blocks) {
        for (qint64 number = block.first; !block.returned && number <= block.last; ++number) {
            if (!job.tagAt.contains(QString::number(number)))
                return number;
        }
    }
    return std::nullopt;
}

} // namespace

QString nextTag(const JobState &job)
{
    if (const auto number = nextOfBlocks(job))
        return QString::number(*number);

    // A longer number is a serial number off some box of tags, and nothing to count on from.
    constexpr qint64 mostCounted = 1'000'000'000'000'000;
    qint64 next = 1;
    for (auto at = job.tagAt.keyBegin(); at != job.tagAt.keyEnd(); ++at) {
        if (const qint64 number = at->toLongLong(); number <= mostCounted)
            next = std::max(next, number + 1);
    }
    while (job.tagAt.contains(QString::number(next)))
        ++next;
    return QString::number(next);
}

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
QString nextUnlisted(const JobState &job)
{
    qsizetype number = 1;
    while (job.item(*InterfaceId::parse(QStringLiteral("X%1").arg(number))))
        ++number;
    return QStringLiteral("X%1").arg(number);
}

} // namespace core
