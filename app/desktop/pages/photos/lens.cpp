// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/photos/lens.hpp"

#include <algorithm>

namespace desktop {

Lens withinPicture(Lens lens)
{
    lens.zoom = std::clamp(lens.zoom, 1.0, greatestZoom);
    const double half = 0.5 / lens.zoom;
    lens.centre = {std::clamp(lens.centre.x(), half, 1 - half), std::clamp(lens.centre.y(), half, 1 - half)};
    return lens;
}

Lens zoomed(const Lens &lens, double factor, const QPointF &about)
{
    const double zoom = std::clamp(lens.zoom * factor, 1.0, greatestZoom);
    return withinPicture({zoom, about + (lens.centre - about) * (lens.zoom / zoom)});
}

Lens moved(const Lens &lens, const QPointF &byViews) { return withinPicture({lens.zoom, lens.centre + byViews / lens.zoom}); }

QRectF pictureIn(const QRectF &view, const QSizeF &picture, const Lens &lens)
{
    const QSizeF size = picture.scaled(view.size(), Qt::KeepAspectRatio) * lens.zoom;
    return {view.center() - QPointF(size.width() * lens.centre.x(), size.height() * lens.centre.y()), size};
}

} // namespace desktop
