// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "tests/fault/rows/row.hpp"

/// Rows that need no shim.
namespace rows {

/// Simulated power loss as the store is programmed, and with synchronous weakened to NORMAL and OFF, where loss must be found.
std::vector<Row> powerLoss(const QString &readyStore, const Extent &extent);

/// A disk that is full, and has room again. Needs the right to mount.
std::vector<Row> fullDisk(const QString &readyStore, const Extent &extent);

/// A store copied without its side file: sound, and known to be short.
Row copiedWithoutSideFile(const QString &readyStore, const Extent &extent);
/// A clock that was set back.
Row clockSetBack(const QString &readyStore, const Extent &extent);

/// A memory stick's file system: no links, no rights. A real one where it can be mounted.
std::vector<Row> stick(const Extent &extent);

} // namespace rows
