// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/rows/scratch.hpp"

#include <QDir>

#include <unistd.h>

namespace scratch {

QString pattern()
{
    const QString inMemory = QStringLiteral("/dev/shm");
    const bool mayUse = access("/dev/shm", W_OK | X_OK) == 0;
    return (mayUse ? inMemory : QDir::tempPath()) + QStringLiteral("/remate-fault-XXXXXX");
}

} // namespace scratch
