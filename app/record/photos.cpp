// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/photos.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "app/record/photo.hpp"
#include "core/reports/attachments.hpp"
#include "core/reports/report_rows.hpp"

namespace record {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Record", text); }

/// What a place on the page shows at 200 dots an inch.
constexpr QSize most(670, 490);

core::Result<Shown> fetched(const core::NamedAttachment &named, const FetchAttachment &fetch)
{
    if (!fetch)
        return core::failure(core::ErrorCode::NotFound, tr("The store that holds it was not at hand."));
    const auto bytes = fetch(named.digest);
    return bytes ? shown(*bytes, most, core::marksOn(named)) : core::failure(bytes.error());
}

PhotoTile tileOf(const core::JobRecord &job, const core::NamedAttachment &named, const FetchAttachment &fetch)
{
    PhotoTile tile;
    tile.title = core::reporting::itemText(named.item, *named.entry);
    tile.caption = core::attachmentText(named);
    for (const core::PhotoMark &mark : core::marksOn(named))
        tile.marks << core::markText(job, mark);
    tile.proof = core::attachmentProof(job, named);
    tile.note = core::reporting::standingText(job, *named.line);
    tile.strike = named.line->standing == core::Standing::Stands ? Strike::Not : Strike::Through;
    const auto photo = fetched(named, fetch);
    if (photo) {
        tile.jpeg = photo->jpeg;
        tile.pixels = photo->pixels;
    } else {
        tile.missing = tr("This attachment is not shown. %1").arg(photo.error().message);
    }
    return tile;
}

QString zoneOf(const core::NamedAttachment &named) { return named.item ? named.item->listed.zone : QString(); }

} // namespace

void setPhotos(Flow &flow, const core::JobRecord &job, const FetchAttachment &fetch)
{
    const auto all = core::namedAttachments(job);
    if (all.empty())
        return;
    flow.heading(tr("Photos"));
    for (auto from = all.begin(); from != all.end() && !flow.isCancelled();) {
        const auto to = std::find_if(from, all.end(), [&](const core::NamedAttachment &one) { return zoneOf(one) != zoneOf(*from); });
        const QString zone = zoneOf(*from);
        flow.heading(zone.isEmpty() ? tr("Of no listed interface") : tr("Zone %1").arg(zone), 1);
        // Two side by side, and made one pair after the other: a decoded photo is large.
        for (; from != to && !flow.isCancelled();) {
            std::vector<PhotoTile> pair{tileOf(job, *from++, fetch)};
            if (from != to)
                pair.push_back(tileOf(job, *from++, fetch));
            flow.photos(pair);
        }
    }
}

} // namespace record
