// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/preferences.hpp"

#include <QSettings>

#include <algorithm>

namespace desktop {

namespace {

constexpr int mostRecent = 8;

const QString appearance = QStringLiteral("appearance");
const QString recent = QStringLiteral("recent_stores");
const QString geometry = QStringLiteral("window_geometry");
const QString state = QStringLiteral("window_state");
const QString idle = QStringLiteral("idle_minutes");
const QString chosenLanguage = QStringLiteral("language");

} // namespace

void Preferences::remember(const QString &store)
{
    recentStores.removeAll(store);
    recentStores.prepend(store);
    while (recentStores.size() > mostRecent)
        recentStores.removeLast();
}

Preferences readPreferences(QSettings &settings)
{
    Preferences read;
    read.appearance = static_cast<Appearance>(std::clamp(settings.value(appearance, 0).toInt(), 0, static_cast<int>(Appearance::StarkDark)));
    read.recentStores = settings.value(recent).toStringList();
    read.windowGeometry = settings.value(geometry).toByteArray();
    read.windowState = settings.value(state).toByteArray();
    read.idleMinutes = std::clamp(settings.value(idle, read.idleMinutes).toInt(), 1, 60);
    read.language = language::languageOf(settings.value(chosenLanguage).toString());
    return read;
}

void writePreferences(QSettings &settings, const Preferences &preferences)
{
    settings.setValue(appearance, static_cast<int>(preferences.appearance));
    settings.setValue(recent, preferences.recentStores);
    settings.setValue(geometry, preferences.windowGeometry);
    settings.setValue(state, preferences.windowState);
    settings.setValue(idle, preferences.idleMinutes);
    if (preferences.language)
        settings.setValue(chosenLanguage, QString::fromLatin1(language::lineOf(*preferences.language).code));
}

} // namespace desktop
