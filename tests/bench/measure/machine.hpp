// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

namespace bench {

/// What a figure depends on besides the program.
struct Machine {
    QString date; ///< UTC
    QString build;
    QString processor;
    int cores;
    qint64 memoryMiB;
    QString system;
    QString fileSystem; ///< of the folder that is worked in
    QString libraries;
};
Machine machineWith(const QString &folder);

/// How many programs wanted to run, averaged over the last minute (/proc/loadavg); -1 where that is not told.
double load();

/// Whether this build's figures may be held against the goals.
bool isReleaseBuild();

} // namespace bench
