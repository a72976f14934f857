// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"

namespace desktop {

/// Which photos of one interface stand side by side.
struct PhotoChoice {
    const core::Photo *left = nullptr;
    const core::Photo *right = nullptr;
    bool operator==(const PhotoChoice &) const = default;
};

/// The last photo before on the left, the last one after on the right; where there is none before, the last other one is on the left.
PhotoChoice usualChoice(const std::vector<core::Photo> &photos);
/// One photo put on its side: after is the right one.
PhotoChoice withPhoto(PhotoChoice choice, const core::Photo &photo);

} // namespace desktop
