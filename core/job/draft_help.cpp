// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/draft_help.hpp"

#include <algorithm>

#include "core/acts/taken_on.hpp"
#include "core/list/interface_list.hpp"

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

json::Object takenOnAs(const JobState &job, const JobState &from, const InterfaceState &item)
{
    json::Object body = bodyOf(item.listed);
    const auto isOfThatZone = [&](const Zone &zone) { return zone.name == item.listed.zone; };
    if (!job.facts.zones.empty() && std::none_of(job.facts.zones.begin(), job.facts.zones.end(), isOfThatZone))
        body.set(QStringLiteral("zone"), job.facts.zones.front().name);
    if (from.ledger)
        body.set(QStringLiteral("from"), from.ledger->text());
    body.set(QStringLiteral("comes"), QString(isOff(item) ? comesOff : comesUntouched));
    if (!isOff(item))
        return body;
    if (!item.removal->tag.isEmpty())
        body.set(QStringLiteral("tag"), item.removal->tag);
    if (!item.removal->asFound.isEmpty())
        body.set(QStringLiteral("as_found"), item.removal->asFound);
    body.set(QStringLiteral("blanks_fitted"), blanksToComeOut(from, item, End::Aircraft));
    if (const qint64 onTheUnit = blanksToComeOut(from, item, End::Unit); onTheUnit > 0)
        body.set(QStringLiteral("unit_blanks_fitted"), onTheUnit);
    json::Array hardware;
    for (const HardwareRemoved &one : item.removal->hardware)
        hardware.emplace_back(json::Object{{QStringLiteral("part"), one.part}, {QStringLiteral("quantity"), one.quantity}});
    if (!hardware.empty())
        body.set(QStringLiteral("hardware_removed"), std::move(hardware));
    return body;
}

} // namespace core
