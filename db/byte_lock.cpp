// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/byte_lock.hpp"

#include <fcntl.h>

namespace db {

namespace {

struct flock oneByte(short type, qint64 byte)
{
    struct flock lock {};
    lock.l_type = type;
    lock.l_whence = SEEK_SET;
    lock.l_start = byte;
    lock.l_len = 1;
    return lock;
}

bool set(int file, short type, qint64 byte)
{
    auto lock = oneByte(type, byte);
    return fcntl(file, F_OFD_SETLK, &lock) == 0;
}

} // namespace

bool lockByteShared(int file, qint64 byte) { return set(file, F_RDLCK, byte); }

bool lockByteAlone(int file, qint64 byte) { return set(file, F_WRLCK, byte); }

void unlockByte(int file, qint64 byte) { set(file, F_UNLCK, byte); }

bool isByteLockedElsewhere(int file, qint64 byte)
{
    auto lock = oneByte(F_WRLCK, byte);
    return fcntl(file, F_OFD_GETLK, &lock) == 0 && lock.l_type != F_UNLCK;
}

} // namespace db
