// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/photo_words.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

#include "app/desktop/parts/words.hpp"

namespace desktop {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Photos", text); }

} // namespace

QString photoInWords(const core::Photo &photo, const core::JobState &job, const core::Register &reg)
{
    return tr("%1: %2").arg(choiceInWords(photo.moment), photo.caption.isEmpty() ? markInWords(photo.mark, job, reg) : photo.caption);
}

QString attachedBefore(const core::Digest &digest, const core::JobState &job)
{
    for (const core::InterfaceState &item : job.items) {
        for (const core::Photo &photo : item.photos) {
            if (photo.digest == digest)
                return tr("This photo is attached to %1 already, by entry %2.").arg(item.listed.id.text()).arg(photo.mark.seq);
            if (photo.copyOf == digest)
                return tr("A copy of this photo is attached to %1 already, by entry %2.").arg(item.listed.id.text()).arg(photo.mark.seq);
        }
    }
    return {};
}

QString photosCounted(const std::vector<core::Photo> &photos)
{
    QStringList parts;
    for (const QString &moment : {QStringLiteral("before"), QStringLiteral("after"), QStringLiteral("other")}) {
        const auto count = std::count_if(photos.begin(), photos.end(), [&](const core::Photo &photo) { return photo.moment == moment; });
        if (count > 0)
            parts << tr("%1 %2").arg(QString::number(count), choiceMidSentence(moment));
    }
    return parts.join(QStringLiteral(", "));
}

} // namespace desktop
