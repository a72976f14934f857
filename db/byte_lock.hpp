// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtGlobal>

namespace db {

/// Advisory locks on single bytes of an open file (open file description locks): they belong to the open file, not to the
/// process, and go with it. A byte need not exist to be locked. None of these waits.
bool lockByteShared(int file, qint64 byte);
bool lockByteAlone(int file, qint64 byte);
void unlockByte(int file, qint64 byte);
/// Whether another open file holds a lock on that byte.
bool isByteLockedElsewhere(int file, qint64 byte);

} // namespace db
