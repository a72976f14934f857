// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>
#include <optional>

#include "app/photos/photo_file.hpp"
#include "core/value/json.hpp"

namespace desktop {

/// What a page knows already of an entry whose sheet it wants.
struct Given {
    core::json::Object body{};                  ///< members that stand in each of its bodies
    std::optional<photos::PhotoFile> photo{};   ///< that it attaches
    /// Told which photo was attached, the original where it was a copy; nothing where the entry attaches none.
    std::function<void(const std::optional<core::Digest> &original)> whenSigned{};
};

} // namespace desktop
