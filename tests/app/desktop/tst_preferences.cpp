// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include "app/desktop/preferences.hpp"

using namespace Qt::StringLiterals;

class TstPreferences : public QObject {
    Q_OBJECT

private slots:
    void comeBackAsWritten();
    void lastStoreComesFirst();
    void numbersOutOfRangeAreBounded();
    void languageFollowsTheSystemUntilOneIsChosen();
};

void TstPreferences::comeBackAsWritten()
{
    const QTemporaryDir folder;
    QSettings settings(folder.filePath(u"remate.conf"_s), QSettings::IniFormat);
    desktop::Preferences preferences;
    preferences.appearance = desktop::Appearance::Dark;
    preferences.idleMinutes = 7;
    preferences.windowGeometry = "geometry";
    preferences.remember(u"/a.remate"_s);
    desktop::writePreferences(settings, preferences);
    const desktop::Preferences read = desktop::readPreferences(settings);
    QVERIFY(read.appearance == desktop::Appearance::Dark);
    QCOMPARE(read.idleMinutes, 7);
    QCOMPARE(read.windowGeometry, QByteArray("geometry"));
    QCOMPARE(read.recentStores, QStringList{u"/a.remate"_s});
}

void TstPreferences::lastStoreComesFirst()
{
    desktop::Preferences preferences;
    for (int i = 0; i < 10; ++i)
        preferences.remember(QString::number(i));
    preferences.remember(u"5"_s);
    QCOMPARE(preferences.recentStores, QStringList({u"5"_s, u"9"_s, u"8"_s, u"7"_s, u"6"_s, u"4"_s, u"3"_s, u"2"_s}));
}

void TstPreferences::numbersOutOfRangeAreBounded()
{
    const QTemporaryDir folder;
    QSettings settings(folder.filePath(u"remate.conf"_s), QSettings::IniFormat);
    settings.setValue(u"appearance"_s, 99);
    settings.setValue(u"idle_minutes"_s, -3);
    const desktop::Preferences read = desktop::readPreferences(settings);
    QVERIFY(read.appearance == desktop::Appearance::StarkDark);
    QCOMPARE(read.idleMinutes, 1);
}

void TstPreferences::languageFollowsTheSystemUntilOneIsChosen()
{
    const QTemporaryDir folder;
    QSettings settings(folder.filePath(u"remate.conf"_s), QSettings::IniFormat);
    const QLocale french(u"fr_FR"_s);
    desktop::writePreferences(settings, desktop::readPreferences(settings));
    QVERIFY(desktop::readPreferences(settings).spoken(french) == language::Language::French);
    desktop::Preferences chosen;
    chosen.language = language::Language::German;
    desktop::writePreferences(settings, chosen);
    QVERIFY(desktop::readPreferences(settings).spoken(french) == language::Language::German);
    settings.setValue(u"language"_s, u"xx"_s);
    QVERIFY(desktop::readPreferences(settings).spoken(french) == language::Language::French);
}

QTEST_GUILESS_MAIN(TstPreferences)
#include "tst_preferences.moc"
