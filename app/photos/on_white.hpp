// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QImage>

namespace photos {

/// The picture alone, in sRGB, opaque on white. Painted anew: texts, profile and all else that travels with a QImage stay behind.
QImage onWhite(QImage image);

} // namespace photos
