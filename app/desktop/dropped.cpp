// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/dropped.hpp"

#include <QMimeData>
#include <QUrl>

#include "app/photos/incoming.hpp"

namespace desktop {

Dropped whatIsDropped(const QMimeData &data, Shown shown)
{
    if (shown == Shown::Job && photos::mayHoldPhotos(data))
        return Dropped::Photos;
    const QList<QUrl> files = data.urls();
    if (files.size() != 1 || !files.front().isLocalFile())
        return Dropped::Nothing;
    return files.front().toLocalFile().endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive) ? Dropped::List : Dropped::StoreOrPackage;
}

} // namespace desktop
