// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "app/photos/photo_file.hpp"

class QMimeData;

namespace photos {

/// Whether what is dropped or pasted may be photos: files that end like one, or a picture where there is no file.
bool mayHoldPhotos(const QMimeData &data);

/// The photos in what was dropped or pasted, each by itself, or why it is none. Bytes of a picture are taken as they are where they are offered as JPEG or
/// PNG; a bare picture becomes PNG, which loses nothing. `name` is what such a picture without a file is called.
std::vector<core::Result<PhotoFile>> photosIn(const QMimeData &data, const QString &name);

} // namespace photos
