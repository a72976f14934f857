// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/labels/scanned.hpp"

namespace core {

namespace {

std::optional<InterfaceId> itemNamed(const JobState &job, const QString &text)
{
    if (const auto tag = job.tagAt.constFind(text); tag != job.tagAt.cend() && job.item(*tag))
        return *tag;
    const auto id = InterfaceId::parse(text);
    return id && job.item(*id) ? id : std::nullopt;
}

} // namespace

Scanned meantBy(const JobState &job, const QString &text)
{
    const auto label = readLabelText(text);
    if (!label) {
        const auto item = itemNamed(job, text);
        return {item ? ScanMeans::Item : ScanMeans::Nothing, item, std::nullopt};
    }
    if (label->workOrder != job.facts.workOrder)
        return {ScanMeans::OtherJob, std::nullopt, label};
    if (!job.item(label->item))
        return {ScanMeans::UnknownItem, std::nullopt, label};
    return {ScanMeans::Item, label->item, label};
}

} // namespace core
