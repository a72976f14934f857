// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "app/photos/photo_file.hpp"

namespace photos {

/// A copy as JPEG that holds the picture alone: upright, in sRGB, on white, without anything that the camera wrote into the file (place, time, device,
/// preview, profile). `longestSide` in pixels, where it should be smaller as well. BadInput: it cannot be decoded or encoded.
/// The copy is another file with another digest.
core::Result<PhotoFile> bareCopy(const PhotoFile &photo, std::optional<int> longestSide);

} // namespace photos
