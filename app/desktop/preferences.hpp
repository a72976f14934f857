// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QStringList>

#include "app/desktop/parts/theme.hpp"

class QSettings;

namespace desktop {

/// What the program remembers about this person's screen; nothing of any job.
struct Preferences {
    Appearance appearance = Appearance::System;
    QStringList recentStores; ///< the last one first, at most eight
    QByteArray windowGeometry;
    QByteArray windowState;
    int idleMinutes = 5;

    /// Puts a store first.
    void remember(const QString &store);
};

/// Read and written in main alone.
Preferences readPreferences(QSettings &settings);
void writePreferences(QSettings &settings, const Preferences &preferences);

} // namespace desktop
