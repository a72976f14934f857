// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QColor>

#include <optional>

#include "app/picture/signings_layout.hpp"

class QPainter;

namespace picture {

struct SigningInks {
    QColor ink;   ///< marks and names
    QColor quiet; ///< lines and times
    QColor paper; ///< inside a mark that does not count
    QColor burst; ///< the bar under marks of a burst
};

/// One mark alone, for a legend: work is a square, a look a circle, a record an upright bar, a release a diamond. Hollow: it does not count any more.
void paintSigningMark(QPainter &painter, const PlacedMark &mark, double size, const SigningInks &inks);

/// The whole picture; the chosen mark in a frame.
void paintSignings(QPainter &painter, const SigningLayout &layout, const SigningInks &inks, std::optional<qint64> chosen = {});

} // namespace picture
