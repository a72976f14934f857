// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QStringList>

#include <optional>

#include "app/desktop/parts/theme.hpp"
#include "app/language/language.hpp"

class QSettings;

namespace desktop {

/// What the program remembers about this person's screen; nothing of any job.
struct Preferences {
    Appearance appearance = Appearance::System;
    QStringList recentStores; ///< the last one first, at most eight
    QByteArray windowGeometry;
    QByteArray windowState;
    int idleMinutes = 5;
    std::optional<language::Language> language{}; ///< nothing until one is chosen: the screens follow the system

    /// The one that was chosen, or what a system of that locale asks for.
    language::Language spoken(const QLocale &ofSystem) const { return language.value_or(language::languageFor(ofSystem)); }

    /// Puts a store first.
    void remember(const QString &store);
};

/// Read and written in main alone.
Preferences readPreferences(QSettings &settings);
void writePreferences(QSettings &settings, const Preferences &preferences);

} // namespace desktop
