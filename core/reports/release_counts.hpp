// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtGlobal>

#include "core/job/state.hpp"

namespace core {

/// How the interfaces of a job stand: each is counted once, so the sum is the length of the list.
struct ReleaseCounts {
    qsizetype inspected = 0;     ///< undone, reconnected, and inspected as often as is asked
    qsizetype undisturbed = 0;   ///< never undone, and somebody who looked said so
    qsizetype notApplicable = 0; ///< and agreed to where that is asked for
    qsizetype givenOver = 0;     ///< to a linked job
    qsizetype open = 0;          ///< none of these
    bool operator==(const ReleaseCounts &) const = default;
};

ReleaseCounts releaseCounts(const JobState &job);

} // namespace core
