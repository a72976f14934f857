// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <cstdio>

#include "app/cli/man_page.hpp"

/// Prints the manual page of remate-cli; run by the build.
int main(int argc, char **argv)
{
    if (argc != 3) {
        std::fputs("usage: write_man_page VERSION DAY\n", stderr);
        return 2;
    }
    const QByteArray page = cli::manPage(cli::commands(), QString::fromLocal8Bit(argv[1]), QString::fromLocal8Bit(argv[2]));
    const bool all = std::fwrite(page.constData(), 1, static_cast<std::size_t>(page.size()), stdout) == static_cast<std::size_t>(page.size());
    return all && std::fflush(stdout) == 0 ? 0 : 3;
}
