// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QPainterPath>
#include <QString>

#include <vector>

#include "core/value/result.hpp"

namespace labels {

/// How much of a code may be dirty or torn and is still read: about 15 % (M) and 25 % (Q) of its words. ISO/IEC 18004, error correction.
enum class Correction { M, Q };

/// A QR code as a square of modules.
struct QrCode {
    int side; ///< in modules, without the quiet zone
    std::vector<bool> dark; ///< row by row
    Correction correction;

    bool isDark(int column, int row) const { return dark[static_cast<std::size_t>(row) * static_cast<std::size_t>(side) + static_cast<std::size_t>(column)]; }
};

/// Left white on every side of a code, in modules. ISO/IEC 18004, quiet zone of a QR code.
constexpr int quietModules = 4;

/// A smaller module is not read from a dirty tag at arm's length by a common hand scanner, in millimetres. Common practice.
constexpr double leastModule = 0.4;

/// The code that says `text`, for a square of side `room` (in the units of record::Run), quiet zone included: with correction Q where its modules
/// are not smaller than leastModule then, else with M.
/// BadInput when they are smaller with M as well, or the text is longer than any code holds.
core::Result<QrCode> qrCodeFor(const QString &text, double room);

/// The side of a module where the code with its quiet zone fills that room: a whole number of units, so that all come out alike.
double moduleOf(const QrCode &code, double room);

/// The dark modules, each of side `module`; the first one at the origin. One path, so that no drawing program leaves seams between them.
QPainterPath pathOf(const QrCode &code, double module);

} // namespace labels
