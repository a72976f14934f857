// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/sheet.hpp"

namespace record {

namespace {

/// ISO 216 A4, and the Letter of ANSI/ASME Y14.1 (8.5 × 11 inches).
QSizeF sizeOf(PageSize size)
{
    switch (size) {
    case PageSize::A4: return {210 * millimetre, 297 * millimetre};
    case PageSize::Letter: return {8.5 * unitsPerInch, 11 * unitsPerInch};
    }
    Q_UNREACHABLE();
}

} // namespace

PageFrame frameOf(PageSize size)
{
    const QSizeF paper = sizeOf(size);
    // Wide enough on all sides for a punch and a printer that leaves a rim.
    const QMarginsF margins(16 * millimetre, 22 * millimetre, 16 * millimetre, 20 * millimetre);
    return {paper, QRectF(QPointF(0, 0), paper).marginsRemoved(margins)};
}

} // namespace record
