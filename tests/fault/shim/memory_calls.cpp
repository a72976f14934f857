// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

// Memory, put before the C library's. The real thing is asked for under the names that the library keeps for itself.

#include <cerrno>
#include <cstddef>
#include <cstdlib>

#include "tests/fault/shim/plan.hpp"

using shim::Calls;

extern "C" {

void *__libc_malloc(size_t size);
void *__libc_calloc(size_t count, size_t size);
void *__libc_realloc(void *memory, size_t size);
void *__libc_memalign(size_t alignment, size_t size);

void *malloc(size_t size) noexcept { return shim::hurts(Calls::Memory) ? nullptr : __libc_malloc(size); }

void *calloc(size_t count, size_t size) noexcept { return shim::hurts(Calls::Memory) ? nullptr : __libc_calloc(count, size); }

void *realloc(void *memory, size_t size) noexcept { return shim::hurts(Calls::Memory) ? nullptr : __libc_realloc(memory, size); }

void *aligned_alloc(size_t alignment, size_t size) noexcept
{
    return shim::hurts(Calls::Memory) ? nullptr : __libc_memalign(alignment, size);
}

int posix_memalign(void **memory, size_t alignment, size_t size) noexcept
{
    *memory = shim::hurts(Calls::Memory) ? nullptr : __libc_memalign(alignment, size);
    return *memory ? 0 : ENOMEM;
}
}
