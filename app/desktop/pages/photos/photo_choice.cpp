// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/photos/photo_choice.hpp"

#include <QStringView>

#include <algorithm>

namespace desktop {

namespace {

const core::Photo *lastOf(const std::vector<core::Photo> &photos, QStringView moment)
{
    const auto at = std::find_if(photos.rbegin(), photos.rend(), [&](const core::Photo &photo) { return photo.moment == moment; });
    return at == photos.rend() ? nullptr : &*at;
}

} // namespace

PhotoChoice usualChoice(const std::vector<core::Photo> &photos)
{
    const core::Photo *before = lastOf(photos, u"before");
    return {before ? before : lastOf(photos, u"other"), lastOf(photos, u"after")};
}

PhotoChoice withPhoto(PhotoChoice choice, const core::Photo &photo)
{
    (photo.moment == u"after" ? choice.right : choice.left) = &photo;
    return choice;
}

} // namespace desktop
