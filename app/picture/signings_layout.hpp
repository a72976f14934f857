// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFont>
#include <QLineF>
#include <QPointF>
#include <QRectF>
#include <QString>

#include <vector>

#include "core/reports/signings.hpp"

namespace picture {

/// Where one signature stands: by its sort told by shape, hollow where it does not count any more.
struct PlacedMark {
    qint64 seq;
    QPointF centre;
    core::SignedAs as;
    bool counts;
    bool inBurst;
};

struct PlacedText {
    QRectF rect;
    QString text;
    bool isQuiet;
};

/// A lane a person, shifts told apart by lines, time from left to right.
struct SigningLayout {
    double markSize = 0;
    QFont font;
    QRectF plot;
    std::vector<double> laneLines; ///< y
    std::vector<double> shiftLines; ///< x
    std::vector<PlacedText> texts;
    std::vector<PlacedMark> marks; ///< in the order of their entries
};

/// How high the picture wants to be with that font.
double signingsHeight(const core::Signings &signings, const QFont &font);

/// Lays it out into the area. Marks of one moment and person stand on one another; the table beside the picture counts them.
SigningLayout laySignings(const core::Signings &signings, const QRectF &area, const QFont &font);

} // namespace picture
