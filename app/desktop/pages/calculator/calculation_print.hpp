// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/calculator/worked_out.hpp"

class QPrinter;

namespace desktop {

/// Puts a calculation on paper: cautions, what was given, each step, the answer, notes and sources, and on every page that the data
/// governs. `at` is the moment of printing. Io when the printer or the file cannot be begun; NotFound without any font.
core::Result<void> print(const WorkedOut &worked, const core::Instant &at, QPrinter &printer);

/// The same as a PDF file on A4. Errors also as record::writeSafely.
core::Result<void> writePdf(const WorkedOut &worked, const core::Instant &at, const QString &path);

} // namespace desktop
