// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStringList>

#include "app/picture/perimeter_layout.hpp"
#include "core/job/state.hpp"
#include "core/value/result.hpp"

class QPrinter;

namespace desktop {

/// Puts the boundary on one page across, of the printer's own paper: which job, what is said of it, the moment of its last entry, the drawing with as much
/// beside each coupling as can be read, what each shape stands for, and that the data governs. Io when the printer cannot be begun.
core::Result<void> printPerimeter(const picture::Perimeter &perimeter, const core::JobState &job, const QStringList &said, QPrinter &printer);

} // namespace desktop
