// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "app/record/record.hpp"
#include "core/reports/one_page.hpp"

class QPagedPaintDevice;

namespace record {

/// How many things of each part there is room for on one page, so that the longest part is cut first and none without a word.
/// Nothing when not even the headings fit.
std::optional<qsizetype> roomFor(const core::OnePage &page, PageSize size);

/// Writes a sheet as one page of PDF, in letters of 9 points and more: it is read at arm's length. What has no room is counted in words where
/// it would stand. Replaces a file of that name, with the care and the errors of writeSafely.
/// NotFound: no font. BadInput: not even the headings fit.
core::Result<void> writeOnePagePdf(const core::OnePage &page, const QString &path, PageSize size);

/// The same on a printer as the person set it up. Io: the printer cannot be begun.
core::Result<void> printOnePage(const core::OnePage &page, QPagedPaintDevice &printer);

} // namespace record
