// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/attachments.hpp"

#include <QStringList>

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

std::optional<Digest> digestIn(const Statement &said)
{
    if (said.kind == u"photo.marked")
        return std::nullopt; // it is shown where it was attached
    const Act *act = findAct(said.kind);
    for (const Field &field : act ? act->fields : std::vector<Field>()) {
        if (field.type != FieldType::Digest)
            continue;
        if (const auto digest = Digest::parse(said.body.text(QString(field.name))))
            return digest;
    }
    return std::nullopt;
}

/// Where the interface stands among all, zone by zone; after them all for none.
std::pair<qsizetype, qsizetype> placeOf(const JobState &job, const NamedAttachment &named)
{
    const auto &zones = job.facts.zones;
    if (!named.item)
        return {static_cast<qsizetype>(zones.size()) + 1, 0};
    const auto zone = std::find_if(zones.begin(), zones.end(), [&](const Zone &one) { return one.name == named.item->listed.zone; });
    return {zone - zones.begin(), job.itemAt.value(named.item->listed.id)};
}

} // namespace

std::vector<NamedAttachment> namedAttachments(const JobRecord &record)
{
    const JobState &job = record.job();
    std::vector<NamedAttachment> found;
    for (std::size_t i = 0; i < record.entries().size(); ++i) {
        const Entry &entry = record.entries()[i];
        const auto digest = digestIn(entry.said);
        if (!digest)
            continue;
        const auto id = InterfaceId::parse(entry.said.subject.value_or(QString()));
        found.push_back({&entry, &job.lines[i], id ? job.item(*id) : nullptr, *digest, entry.said.body.text(u"media_type")});
    }
    std::stable_sort(found.begin(), found.end(), [&](const NamedAttachment &a, const NamedAttachment &b) { return placeOf(job, a) < placeOf(job, b); });
    return found;
}

QString attachmentText(const NamedAttachment &named)
{
    const json::Object &body = named.entry->said.body;
    const QString moment = body.text(u"moment");
    QStringList parts{inWords(QT_TRANSLATE_NOOP("Report", "Entry %1")).arg(named.entry->said.seq)};
    if (moment == u"before" || moment == u"after")
        parts << QCoreApplication::translate("Choice", moment.toUtf8().constData());
    if (const QString finding = body.text(u"finding"); !finding.isEmpty())
        parts << inWords(QT_TRANSLATE_NOOP("Report", "finding %1")).arg(finding);
    const QString caption = body.text(u"caption");
    const QString first = parts.join(u", "_s);
    return caption.isEmpty() ? first : inWords(QT_TRANSLATE_NOOP("Report", "%1: %2")).arg(first, caption);
}

std::vector<PhotoMark> marksOn(const NamedAttachment &named)
{
    for (const Photo &photo : named.item ? named.item->photos : std::vector<Photo>()) {
        if (photo.mark.seq == named.entry->said.seq)
            return photo.marks;
    }
    return {};
}

QString markText(const JobRecord &record, const PhotoMark &mark)
{
    return inWords(QT_TRANSLATE_NOOP("Report", "Mark %1: %2. %3, entry %4")).arg(QString::number(mark.number), mark.what, signedText(record, mark.mark), QString::number(mark.mark.seq));
}

QString attachmentProof(const JobRecord &record, const NamedAttachment &named)
{
    const QString proof = inWords(QT_TRANSLATE_NOOP("Report", "%1. SHA-256 %2…")).arg(signedText(record, markOf(named.entry->said)), named.digest.hex().left(16));
    const QString original = named.entry->said.body.text(u"copy_of");
    return original.isEmpty() ? proof : inWords(QT_TRANSLATE_NOOP("Report", "%1 Copy of a file with SHA-256 %2…")).arg(proof, original.left(16));
}

} // namespace core
