// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QPointF>
#include <QRectF>

#include <vector>

#include "core/job/state.hpp"

class QPainter;

namespace photos {

/// How a mark is drawn; the words beside the photo say which are signed.
enum class MarkLook { Signed, Draft };

/// Where a mark lies on a picture that is drawn in `picture`.
QPointF placeOf(const core::PhotoMark &mark, const QRectF &picture);

/// A ring around the place, and beside it a flag with the number: black on white, so that it shows on any photo and without colour. A draft's ring is dashed.
/// `size` is the height of the number.
void drawMark(QPainter &painter, const core::PhotoMark &mark, const QRectF &picture, double size, MarkLook look);

} // namespace photos
