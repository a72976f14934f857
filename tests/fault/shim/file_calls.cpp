// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

// The system calls on files, put before those of the C library. Each does the real thing through syscall(), so none of them
// needs the library that it stands before.

#include <cerrno>
#include <cstdarg>
#include <cstdio>
#include <cstdlib>

#include <dlfcn.h>
#include <fcntl.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

#include "tests/fault/shim/plan.hpp"

using shim::Calls;

namespace {

int openReally(int folder, const char *path, int flags, unsigned mode)
{
    if (shim::isOurs(path) && shim::hurts(Calls::Open))
        return -1;
    const int file = static_cast<int>(syscall(SYS_openat, folder, path, flags, mode));
    shim::remember(file, path);
    return file;
}

unsigned modeIn(int flags, va_list &arguments) { return flags & (O_CREAT | O_TMPFILE) ? va_arg(arguments, unsigned) : 0u; }

struct Write {
    int file;
    const void *bytes;
    off_t at; ///< -1: where the file stands
};

void writePart(void *call, std::size_t size)
{
    const auto *write = static_cast<Write *>(call);
    if (write->at < 0)
        syscall(SYS_write, write->file, write->bytes, size);
    else
        syscall(SYS_pwrite64, write->file, write->bytes, size, write->at);
}

bool hurtsWrite(Write write, std::size_t size) { return shim::isOurs(write.file) && shim::hurtsWrite(size, &writePart, &write); }

bool hurts(int file, Calls calls) { return shim::isOurs(file) && shim::hurts(calls); }

bool hurts(const char *path, Calls calls) { return shim::isOurs(path) && shim::hurts(calls); }

int refused(int error)
{
    errno = error;
    return -1;
}

int asInt(long status) { return static_cast<int>(status); }

} // namespace

extern "C" {

int open(const char *path, int flags, ...)
{
    va_list arguments;
    va_start(arguments, flags);
    const unsigned mode = modeIn(flags, arguments);
    va_end(arguments);
    return openReally(AT_FDCWD, path, flags, mode);
}

int open64(const char *path, int flags, ...)
{
    va_list arguments;
    va_start(arguments, flags);
    const unsigned mode = modeIn(flags, arguments);
    va_end(arguments);
    return openReally(AT_FDCWD, path, flags, mode);
}

int openat(int folder, const char *path, int flags, ...)
{
    va_list arguments;
    va_start(arguments, flags);
    const unsigned mode = modeIn(flags, arguments);
    va_end(arguments);
    return openReally(folder, path, flags, mode);
}

int mkstemp(char *path)
{
    if (hurts(path, Calls::Open))
        return -1;
    using Real = int (*)(char *);
    static const auto real = reinterpret_cast<Real>(dlsym(RTLD_NEXT, "mkstemp"));
    const int file = real(path);
    shim::remember(file, path);
    return file;
}

int close(int file)
{
    const bool isHurt = hurts(file, Calls::Close);
    const int error = errno;
    shim::forget(file);
    const int status = asInt(syscall(SYS_close, file)); // closed all the same, as the system does
    return isHurt ? refused(error) : status;
}

ssize_t read(int file, void *into, size_t size) { return hurts(file, Calls::Read) ? -1 : syscall(SYS_read, file, into, size); }

ssize_t pread(int file, void *into, size_t size, off_t at)
{
    return hurts(file, Calls::Read) ? -1 : syscall(SYS_pread64, file, into, size, at);
}

ssize_t pread64(int file, void *into, size_t size, off64_t at) { return pread(file, into, size, at); }

ssize_t write(int file, const void *bytes, size_t size)
{
    return hurtsWrite({file, bytes, -1}, size) ? -1 : syscall(SYS_write, file, bytes, size);
}

ssize_t pwrite(int file, const void *bytes, size_t size, off_t at)
{
    return hurtsWrite({file, bytes, at}, size) ? -1 : syscall(SYS_pwrite64, file, bytes, size, at);
}

ssize_t pwrite64(int file, const void *bytes, size_t size, off64_t at) { return pwrite(file, bytes, size, at); }

int fsync(int file) { return hurts(file, Calls::Sync) ? -1 : asInt(syscall(SYS_fsync, file)); }

int fdatasync(int file) { return hurts(file, Calls::Sync) ? -1 : asInt(syscall(SYS_fdatasync, file)); }

int ftruncate(int file, off_t size) noexcept { return hurts(file, Calls::Truncate) ? -1 : asInt(syscall(SYS_ftruncate, file, size)); }

int ftruncate64(int file, off64_t size) noexcept { return ftruncate(file, size); }

void *mmap(void *address, size_t size, int rights, int flags, int file, off_t at) noexcept
{
    const bool isMemory = (flags & MAP_ANONYMOUS) != 0;
    if (isMemory ? shim::hurts(Calls::Memory) : hurts(file, Calls::Map))
        return MAP_FAILED;
    return reinterpret_cast<void *>(syscall(SYS_mmap, address, size, rights, flags, file, at));
}

void *mmap64(void *address, size_t size, int rights, int flags, int file, off64_t at) noexcept
{
    return mmap(address, size, rights, flags, file, at);
}

int fcntl(int file, int what, ...)
{
    va_list arguments;
    va_start(arguments, what);
    void *argument = va_arg(arguments, void *);
    va_end(arguments);
    const bool isLock = what == F_SETLK || what == F_SETLKW || what == F_GETLK || what == F_OFD_SETLK || what == F_OFD_GETLK;
    if (isLock && hurts(file, Calls::Lock))
        return -1;
    return asInt(syscall(SYS_fcntl, file, what, argument));
}

int fcntl64(int file, int what, ...)
{
    va_list arguments;
    va_start(arguments, what);
    void *argument = va_arg(arguments, void *);
    va_end(arguments);
    return fcntl(file, what, argument);
}

int stat(const char *__restrict path, struct stat *__restrict found) noexcept
{
    return hurts(path, Calls::Stat) ? -1 : asInt(syscall(SYS_newfstatat, AT_FDCWD, path, found, 0));
}

int stat64(const char *__restrict path, struct stat64 *__restrict found) noexcept
{
    return stat(path, reinterpret_cast<struct stat *>(found));
}

int fstat(int file, struct stat *found) noexcept
{
    return hurts(file, Calls::Stat) ? -1 : asInt(syscall(SYS_fstat, file, found));
}

int fstat64(int file, struct stat64 *found) noexcept { return fstat(file, reinterpret_cast<struct stat *>(found)); }

int rename(const char *from, const char *to) noexcept
{
    return hurts(from, Calls::Rename) ? -1 : asInt(syscall(SYS_rename, from, to));
}

int renameat2(int fromFolder, const char *from, int toFolder, const char *to, unsigned flags) noexcept
{
    if (hurts(from, Calls::Rename))
        return -1;
    if (shim::actsLikeStick() && shim::isOurs(from) && flags != 0)
        return refused(EINVAL);
    return asInt(syscall(SYS_renameat2, fromFolder, from, toFolder, to, flags));
}

int link(const char *from, const char *to) noexcept
{
    if (shim::actsLikeStick() && shim::isOurs(from))
        return refused(EPERM);
    return asInt(syscall(SYS_linkat, AT_FDCWD, from, AT_FDCWD, to, 0));
}

int unlink(const char *path) noexcept { return hurts(path, Calls::Unlink) ? -1 : asInt(syscall(SYS_unlinkat, AT_FDCWD, path, 0)); }

int fchmod(int file, mode_t mode) noexcept
{
    if (hurts(file, Calls::Chmod))
        return -1;
    if (shim::actsLikeStick() && shim::isOurs(file))
        return refused(EPERM);
    return asInt(syscall(SYS_fchmod, file, mode));
}
}
