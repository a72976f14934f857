// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/terminal_progress.hpp"

#include <unistd.h>

#include <cstdio>
#include <memory>

namespace cli {

std::function<bool(qint64, qint64)> terminalProgress(const QString &what)
{
    if (::isatty(STDERR_FILENO) == 0)
        return [](qint64, qint64) { return true; };
    return [what, told = std::make_shared<qint64>(-1)](qint64 done, qint64 all) {
        constexpr qint64 hundred = 100;
        const qint64 part = all > 0 ? hundred * done / all : 0;
        if (part == *told)
            return true;
        *told = part;
        std::fprintf(stderr, "\r%s %lld %%%s", qUtf8Printable(what), static_cast<long long>(part), part == hundred ? "\n" : "");
        return true;
    };
}

} // namespace cli
