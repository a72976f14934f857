// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFont>
#include <QLineF>
#include <QPolygonF>
#include <QRectF>
#include <QString>

#include <vector>

#include "core/reports/progress.hpp"

namespace picture {

struct AxisText {
    QRectF rect;
    QString text;
    Qt::Alignment alignment;
};

/// One line of the plot: level from entry to entry, and upright where the number changes.
struct StepPath {
    QPolygonF path;
    bool isWhole; ///< of the whole job: bold
    AxisText label;
};

/// How many interfaces were undone and not inspected, from bottom to top, over the hours since the first entry, from left to right.
struct ProgressLayout {
    QFont font;
    QRectF plot;
    std::vector<QLineF> grid;
    std::vector<AxisText> texts;
    std::vector<StepPath> lines;
};

/// The step between the numbers on an axis that ends at `last`: 1, 2 or 5 times a power of ten, with at most `most` steps. At least 1.
qint64 countStep(qint64 last, int most);
/// The same for an axis of hours, in milliseconds, as clocks and days divide them: from a quarter of an hour to many days.
qint64 hourStep(qint64 milliseconds, int most);

/// Lays out the whole job and, where one is given, a zone or a person beside it.
ProgressLayout layProgress(const core::Progress &progress, const core::ProgressLine *beside, const QRectF &area, const QFont &font);

} // namespace picture
