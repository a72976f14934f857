// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QColor>
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QString>

#include <cstddef>
#include <vector>

#include "app/picture/lift_layout.hpp"
#include "app/record/record.hpp"
#include "app/record/typeface.hpp"

namespace record {

// Solid colours alone: anything see-through would break PDF/A-1b.
namespace ink {
constexpr QColor text(0x1a, 0x1f, 0x24);
constexpr QColor quiet(0x4c, 0x57, 0x61);
constexpr QColor alarm(0x9b, 0x1c, 0x1c);
constexpr QColor caution(0x7a, 0x4c, 0x00);
constexpr QColor paper(0xff, 0xff, 0xff);
constexpr QColor rule(0xb4, 0xbe, 0xc7);
constexpr QColor head(0xdd, 0xe5, 0xec);
constexpr QColor group(0xef, 0xf3, 0xf6);
} // namespace ink

/// A line of text that starts at a point on its base line.
struct Run {
    QPointF baseline;
    QString text;
    Face face;
    QColor colour;
};

/// A filled rectangle: a tint or a rule.
struct Patch {
    QRectF rect;
    QColor colour;
};

/// A photo in its place, encoded as JPEG: decoded, those of a whole job would not fit into memory.
struct Picture {
    QRectF rect;
    QByteArray jpeg;
};

/// One page, laid out and not yet drawn: patches lie under pictures, pictures under the text.
struct Sheet {
    std::vector<Patch> patches;
    std::vector<picture::LiftLayout> lifts;
    std::vector<Picture> photos;
    std::vector<Run> runs;
};

/// A heading that a reader can go to, and where it stands.
struct Bookmark {
    QString title;
    int depth;        ///< 0 for the sections of the record, 1 for what stands under one, and so on
    std::size_t page; ///< counted from 0
    double y;         ///< from the top of the page
    bool operator==(const Bookmark &) const = default;
};

/// The page and what of it is free for the record, between head and foot.
struct PageFrame {
    QSizeF size;
    QRectF body;
};

PageFrame frameOf(PageSize size);

} // namespace record
