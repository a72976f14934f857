// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/labels/layout.hpp"

#include <algorithm>

#include "app/labels/label_words.hpp"

namespace labels {

namespace {

using record::millimetre;

/// The code stands left, as high as the label, and leaves the larger part of its width to the words.
double roomForCode(const LabelSize &size)
{
    constexpr double share = 0.45;
    return millimetre * std::min(size.height - 2 * size.rim, share * (size.width - 2 * size.rim));
}

PlacedCode placed(QrCode code, const QRectF &inside, double room)
{
    const double module = moduleOf(code, room);
    const double side = module * (code.side + 2 * quietModules);
    return {{inside.left(), inside.top() + (inside.height() - side) / 2, side, side}, module, std::move(code)};
}

core::Result<PlacedLabel> placed(const core::Label &label, const LabelSize &size, const QRectF &place, const record::Typefaces &faces)
{
    const double room = roomForCode(size);
    auto code = qrCodeFor(label.code, room);
    if (!code)
        return core::failure(code.error());
    const QRectF inside = place.adjusted(size.rim * millimetre, size.rim * millimetre, -size.rim * millimetre, -size.rim * millimetre);
    PlacedCode there = placed(*std::move(code), inside, room);
    constexpr double gap = 0.5 * millimetre; // besides the quiet zone, for letters that lean to the left
    QRectF words = inside;
    words.setLeft(there.place.right() + gap);
    return PlacedLabel{place, std::move(there), wordsOf(label, size, words, faces)};
}

} // namespace

Grid gridOf(const LabelSize &size, record::PageSize paper)
{
    const QSizeF page = record::frameOf(paper).size;
    const QSizeF label(size.width * millimetre, size.height * millimetre);
    // A thousandth more than the page: 3 · 70 mm is the 210 mm of A4, whatever their binary fractions make of it.
    constexpr double nearly = 1.001;
    const int columns = static_cast<int>(page.width() * nearly / label.width());
    const int rows = static_cast<int>(page.height() * nearly / label.height());
    return {columns, rows, {(page.width() - columns * label.width()) / 2, (page.height() - rows * label.height()) / 2}};
}

core::Result<std::vector<LabelSheet>> layOut(const std::vector<core::Label> &labels, const LabelSize &size, record::PageSize paper, const record::Typefaces &faces)
{
    const Grid grid = gridOf(size, paper);
    const std::size_t columns = static_cast<std::size_t>(grid.columns);
    const std::size_t each = columns * static_cast<std::size_t>(grid.rows);
    const QSizeF label(size.width * millimetre, size.height * millimetre);
    std::vector<LabelSheet> sheets;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        if (i % each == 0)
            sheets.emplace_back();
        const std::size_t column = i % each % columns;
        const std::size_t row = i % each / columns;
        const QPointF at = grid.origin + QPointF(static_cast<double>(column) * label.width(), static_cast<double>(row) * label.height());
        auto there = placed(labels[i], size, {at, label}, faces);
        if (!there)
            return core::failure(there.error());
        sheets.back().push_back(*std::move(there));
    }
    return sheets;
}

} // namespace labels
