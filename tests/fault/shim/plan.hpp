// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>

/// What the shim does to one process, told by its environment:
///   FAULT_FOLDER   only calls on files below this folder count
///   FAULT_CALLS    which calls: open read write sync truncate map lock stat rename unlink chmod close memory
///   FAULT_NTH      the call that is hurt, from 1; 0 counts alone
///   FAULT_STICKY   1: every later call of that sort is hurt as well
///   FAULT_DOES     fail (with FAULT_ERRNO), kill (before the call), torn (half of a write is done, then kill),
///                  last (the call fails with FAULT_ERRNO, the next write kills)
///   FAULT_STICK    1: acts like a memory stick's file system: no links, no modes, no rename that keeps what is there
///   FAULT_REPORT   a file that is told how many calls there were and what was hurt
/// Nothing counts before fault_arm() was called, unless FAULT_ARMED is 1.
namespace shim {

enum class Calls { Open, Read, Write, Sync, Truncate, Map, Lock, Stat, Rename, Unlink, Chmod, Close, Memory };

/// Whether a path, or a file opened before, is among those that count.
bool isOurs(const char *path);
bool isOurs(int file);
void remember(int file, const char *path);
void forget(int file);

/// Counts a call and says whether it must fail; errno is set then. Does not return when the process is to die.
bool hurts(Calls calls);
/// The same for a write of `size` bytes: when it is to be torn, `writePart` does so many bytes of it before the process dies.
bool hurtsWrite(std::size_t size, void (*writePart)(void *call, std::size_t size), void *call);

bool actsLikeStick();

} // namespace shim

extern "C" {
void fault_arm();
void fault_disarm();
}
