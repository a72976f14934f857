// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "app/labels/label_size.hpp"
#include "app/record/record.hpp"
#include "core/labels/labels.hpp"
#include "core/value/result.hpp"

namespace labels {

struct WrittenLabels {
    qint64 labels;
    qint64 sheets;
};

/// Writes sheets of tag labels as PDF/A-1b, each with a QR code (ISO/IEC 18004) and its words, with ticks at the corners to cut by.
/// Replaces a file of that name with the care and the errors of record::writeRecord. BadInput: no labels, or a code that is too long for the size.
core::Result<WrittenLabels> writeLabels(const std::vector<core::Label> &labels, const QString &path, const LabelSize &size, record::PageSize paper);

} // namespace labels
