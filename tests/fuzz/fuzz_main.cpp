// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

// What libFuzzer calls; one program for each target, see CMakeLists.txt.

#include <QCoreApplication>

#include <cstdint>

#include "core/ledger/seal.hpp"
#include "tests/fuzz/targets.hpp"

extern "C" int LLVMFuzzerInitialize(int *, char ***)
{
    static int argc = 1;
    static char name[] = "fuzz";
    static char *argv[] = {name, nullptr};
    static const QCoreApplication application(argc, argv);
    return core::readyCryptography() ? 0 : 1;
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const QByteArray bytes(reinterpret_cast<const char *>(data), static_cast<qsizetype>(size));
    for (const fuzz::Target &target : fuzz::targets()) {
        if (QLatin1String(target.name) == QLatin1String(FUZZ_TARGET))
            target.feed(bytes);
    }
    return 0;
}
