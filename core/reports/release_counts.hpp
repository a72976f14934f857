// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtGlobal>

#include "core/job/state.hpp"

namespace core {

/// Whether it is undone here, and not inspected as often as is asked.
bool isUndone(const InterfaceState &item);

/// How the interfaces of a job stand. Each is inspected, undisturbed, not applicable, given over or open, so the sum of these is the length of the list.
struct ReleaseCounts {
    qsizetype inspected = 0;     ///< undone, reconnected, and inspected as often as is asked
    qsizetype undisturbed = 0;   ///< never undone, and somebody who looked said so
    qsizetype notApplicable = 0; ///< and agreed to where that is asked for
    qsizetype givenOver = 0;     ///< to a linked job
    qsizetype open = 0;          ///< none of these: not finished
    qsizetype undone = 0;        ///< of those that are open: isUndone; the others nobody undid
    bool operator==(const ReleaseCounts &) const = default;
};

ReleaseCounts releaseCounts(const JobState &job);

} // namespace core
