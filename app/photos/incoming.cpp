// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/photos/incoming.hpp"

#include <QBuffer>
#include <QMimeData>
#include <QUrl>

#include <algorithm>

namespace photos {

using namespace Qt::StringLiterals;

bool mayHoldPhotos(const QMimeData &data)
{
    const QList<QUrl> urls = data.urls();
    // A file manager offers a picture of the icon as well, of a list or a store, too.
    if (std::any_of(urls.begin(), urls.end(), [](const QUrl &url) { return url.isLocalFile(); }))
        return std::any_of(urls.begin(), urls.end(), [](const QUrl &url) { return url.isLocalFile() && endsLikeAPhoto(url.toLocalFile()); });
    return data.hasImage();
}

std::vector<core::Result<PhotoFile>> photosIn(const QMimeData &data, const QString &name)
{
    std::vector<core::Result<PhotoFile>> all;
    for (const QUrl &url : data.urls()) {
        if (url.isLocalFile())
            all.push_back(readPhoto(url.toLocalFile()));
    }
    if (!all.empty())
        return all; // a file manager offers a picture of the icon as well
    for (const QString &type : {u"image/jpeg"_s, u"image/png"_s}) {
        if (const QByteArray bytes = data.data(type); !bytes.isEmpty())
            return {photoFrom(name, bytes)};
    }
    if (data.hasImage()) {
        QByteArray bytes;
        QBuffer out(&bytes);
        out.open(QIODevice::WriteOnly);
        qvariant_cast<QImage>(data.imageData()).save(&out, "PNG");
        auto photo = photoFrom(name, bytes);
        if (photo)
            photo->isFile = false; // what another program holds became bytes here
        all.push_back(std::move(photo));
    }
    return all;
}

} // namespace photos
