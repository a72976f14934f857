// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "tests/fault/crash_vfs/disk.hpp"

namespace crash {

/// One way in which the power may go: the files that are left, and how many entries had been acknowledged by then.
struct State {
    Files files;
    int acknowledged;
};

/// How many states are made at each moment.
struct Thoroughness {
    bool isEvery = false;      ///< each prefix, each single loss, each single survivor, each torn and each damaged write
    int byChance = 1;          ///< that many more, everything about them by chance
    std::uint64_t seed = 1;
};

/// Lets the power go after every event of a recording in turn. The same recording and seed give the same states. A state that
/// was given before, with as many acknowledged, is not given again. Ends when `take` answers false.
void eachState(const std::vector<Event> &events, const Thoroughness &how, const std::function<bool(State)> &take);

} // namespace crash
