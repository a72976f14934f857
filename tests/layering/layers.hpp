// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QSet>
#include <QString>
#include <QStringList>

#include <functional>

namespace layering {

/// What the rules must know of the world; the real tree in the test, small made-up ones in its self-test.
struct World {
    QSet<QString> qtCoreHeaders; ///< as included: "QString", "qglobal.h"
    QSet<QString> qtWidgetsHeaders;
    std::function<bool(const QString &)> existsInSources; ///< path from the root of the sources
};

/// The names of the headers that a module installs (`QtCore`), read from the folder that this Qt names as its own.
/// Empty when the folder is missing.
QSet<QString> installedHeaders(const QString &module);

/// Faults of one file as "path:line: sentence", none when it keeps to its layer. path is from the root of the sources.
/// Rules: app → db → core, never back; core sees values only; sqlite3.h in db/sqlite alone; no widget below
/// app/desktop; quoted includes are paths from the root.
QStringList includeFaults(const QString &path, const QString &text, const World &world);

/// Faults in the code itself: SQL outside of db, a clock, file or QObject in core.
QStringList codeFaults(const QString &path, const QString &text);

/// Faults of form: the two SPDX lines, names that say nothing, globs and folder-wide settings in CMake.
QStringList formFaults(const QString &path, const QString &text);

} // namespace layering
