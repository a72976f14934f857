// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QRectF>

#include <vector>

#include "app/labels/label_size.hpp"
#include "app/labels/qr_code.hpp"
#include "app/record/sheet.hpp"
#include "core/labels/labels.hpp"
#include "core/value/result.hpp"

/// All lengths in the units of record::Run.
namespace labels {

/// A code in its place.
struct PlacedCode {
    QRectF place; ///< with its quiet zone
    double module;
    QrCode code;
};

struct PlacedLabel {
    QRectF place; ///< all of the label, to its edges
    PlacedCode code;
    std::vector<record::Run> words;
};

/// One page of labels, laid out and not yet drawn.
using LabelSheet = std::vector<PlacedLabel>;

/// How many labels of a size lie beside and above each other on a paper, and where the first one begins: they stand in the middle, edge to edge.
struct Grid {
    int columns;
    int rows;
    QPointF origin;
};

Grid gridOf(const LabelSize &size, record::PageSize paper);

/// Every label in its place, row by row. BadInput: a code that the size is too small for, see qrCodeFor; names the interface.
core::Result<std::vector<LabelSheet>> layOut(const std::vector<core::Label> &labels, const LabelSize &size, record::PageSize paper, const record::Typefaces &faces);

} // namespace labels
