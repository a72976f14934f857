// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <array>

#include "core/job/state.hpp"

namespace core {

/// How far along its way an interface is. Computed from what was shown, never stored.
enum class Stage {
    Connected,    ///< not undone in this job
    Disconnected, ///< undone
    Reconnected,  ///< joined, with something still to show, a condition that is not settled, or details to follow
    Secured,      ///< every requirement shown
    Inspected,    ///< accepted by as many independent inspectors as it asks for
};

Stage stageOf(const InterfaceState &item);

/// True when an inspector may look at it: secured, no break point that nobody took up, and read against its twins where that is asked for.
bool isReadyToAccept(const JobState &job, const InterfaceState &item);

/// Stable text, used in records and files: `disconnected`.
QString stageName(Stage stage);
/// The word on a screen, translated.
QString stageWord(Stage stage);

/// How many are at each stage, in the order of the enum.
std::array<qsizetype, 5> stageCounts(const JobState &job);

} // namespace core
