// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QPointF>
#include <QRectF>

namespace desktop {

/// What part of a photo is looked at, in terms of the photo alone, so that two photos can be looked at through the same.
struct Lens {
    double zoom = 1;            ///< 1: all of it, to greatestZoom
    QPointF centre{0.5, 0.5};   ///< of the picture's width and height
    bool operator==(const Lens &) const = default;
};

constexpr double greatestZoom = 16;

/// As near as can be, without showing nothing beside the picture that need not be shown.
Lens withinPicture(Lens lens);
/// Larger or smaller by a factor; the place `about` of the picture stays where it is in the view.
Lens zoomed(const Lens &lens, double factor, const QPointF &about);
/// Moved by a part of what is in sight: {1, 0} is one view to the right.
Lens moved(const Lens &lens, const QPointF &byViews);

/// Where in `view` all of the picture lies, seen through the lens.
QRectF pictureIn(const QRectF &view, const QSizeF &picture, const Lens &lens);

} // namespace desktop
