// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/reports/release_counts.hpp"

namespace core {

/// How much of a job is left, wherever it is said. Three counts stand side by side and differ, so each says what it counts.

/// Loose ends, as looseEnds() counts whatever stops closure: an interface may have several, and hold points, tools, tags and findings have theirs.
/// `Nothing is loose`, `1 loose end`, `12 loose ends`.
QString looseEndsInWords(qsizetype count);

/// Interfaces that are not finished, ReleaseCounts::open. `67 interfaces not finished: 66 undone and not inspected, 1 not undone`.
QString unfinishedInWords(const ReleaseCounts &counts);

/// Interfaces that are undone and not inspected, ReleaseCounts::undone. `66 interfaces undone and not inspected`.
QString undoneInWords(qsizetype count);

} // namespace core
