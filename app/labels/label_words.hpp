// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QRectF>

#include <vector>

#include "app/labels/label_size.hpp"
#include "app/record/sheet.hpp"
#include "core/labels/labels.hpp"

namespace labels {

/// The words of a label, set into `room` (in the units of record::Run): its id, as large as its length lets it, its name, tag, zone and work
/// order. What is too long for the room ends in an ellipsis; nothing leaves the room.
std::vector<record::Run> wordsOf(const core::Label &label, const LabelSize &size, const QRectF &room, const record::Typefaces &faces);

} // namespace labels
