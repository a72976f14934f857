// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStringList>

namespace bench {

/// One of several programs that append to one store:
///   STORE JOBS NUMBER SECONDS
/// opens the store, says `ready`, waits for a line on its input, appends for so many seconds to `job-0` … in turn, beginning
/// with its own number, and prints: how many, its longest and median wait in microseconds, how often it was told that the
/// store is held, and when it began and ended by the monotonic clock.
int writeBesideOthers(const QStringList &arguments);

} // namespace bench
