// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/photos/on_white.hpp"

#include <QColorSpace>
#include <QPainter>

namespace photos {

QImage onWhite(QImage image)
{
    if (image.colorSpace().isValid())
        image.convertToColorSpace(QColorSpace(QColorSpace::SRgb));
    QImage bare(image.size(), QImage::Format_RGB32);
    bare.fill(Qt::white);
    QPainter(&bare).drawImage(0, 0, image);
    return bare;
}

} // namespace photos
