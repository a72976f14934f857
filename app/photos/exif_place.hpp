// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>

namespace photos {

/// Whether a JPEG tells by its Exif block where it was taken. That it does not tell there proves nothing: there are other places to write it.
/// Source: CIPA DC-008 / JEITA CP-3451 (Exif 2.3) section 4.6.3, tag 0x8825 of the 0th IFD; markers by ITU-T T.81 section B.1.1.
bool tellsPlace(const QByteArray &jpeg);

} // namespace photos
