// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"

namespace core {

/// How far a mark may be from the left and from the top edge: the whole picture, in thousandths of its width and height.
constexpr qint64 wholePicture = 1000;

/// The marks that the body of a `photo.marked` puts on its photo, in its order, as of that entry. A line that is not whole is passed over: the form
/// proves that there is none.
std::vector<PhotoMark> photoMarksIn(const json::Object &body, const Mark &entry);

/// The lines of a body's `marks`, for an entry to be.
json::Array linesOf(const std::vector<PhotoMark> &marks);

/// The number for the next mark on a photo: one more than the highest that stands.
qint64 nextMarkNumber(const std::vector<PhotoMark> &marks);

/// Marks that nobody signed yet, in their order, beside those that stand on the photo by now: each keeps its number unless that is taken, and then gets the
/// next one.
std::vector<PhotoMark> numberedBeside(std::vector<PhotoMark> standing, std::vector<PhotoMark> drafts);

} // namespace core
