// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "app/language/in_record_words.hpp"
#include "app/language/spoken.hpp"
#include "core/kinds/verb_words.hpp"

using namespace Qt::StringLiterals;
using language::Language;

/// Which language the screens speak, and which the record does.
class TstLanguages : public QObject {
    Q_OBJECT

private slots:
    void theSystemSaysWhich_data();
    void theSystemSaysWhich();
    void countsRightly_data();
    void countsRightly();
    void oneEnglishFormHasSeveralUses();
    void theRecordSpeaksEnglish();
    void datesAreTheCountrysOwn();
};

void TstLanguages::theSystemSaysWhich_data()
{
    QTest::addColumn<QLocale>("locale");
    QTest::addColumn<Language>("spoken");
    QTest::addRow("German of Switzerland") << QLocale(u"de_CH"_s) << Language::German;
    QTest::addRow("French of Canada") << QLocale(u"fr_CA"_s) << Language::French;
    QTest::addRow("American") << QLocale(u"en_US"_s) << Language::English;
    QTest::addRow("one that the screens do not speak") << QLocale(u"fi_FI"_s) << Language::English;
    QTest::addRow("none") << QLocale::c() << Language::English;
}

void TstLanguages::theSystemSaysWhich()
{
    QFETCH(QLocale, locale);
    QTEST(language::languageFor(locale), "spoken");
}

void TstLanguages::countsRightly_data()
{
    QTest::addColumn<Language>("spoken");
    QTest::addColumn<int>("number");
    QTest::addColumn<QString>("words");
    QTest::addRow("one in English") << Language::English << 1 << u"1 entry"_s;
    QTest::addRow("two in English") << Language::English << 2 << u"2 entries"_s;
    QTest::addRow("none in English") << Language::English << 0 << u"0 entries"_s;
    QTest::addRow("one in German") << Language::German << 1 << u"1 Eintrag"_s;
    QTest::addRow("none in German") << Language::German << 0 << u"0 Einträge"_s;
    // Unicode CLDR: French counts none as one.
    QTest::addRow("none in French") << Language::French << 0 << u"0 entrée"_s;
    QTest::addRow("two in French") << Language::French << 2 << u"2 entrées"_s;
}

void TstLanguages::countsRightly()
{
    QFETCH(Language, spoken);
    QFETCH(int, number);
    language::Spoken words(QLocale::c());
    words.speak(spoken);
    QTEST(QCoreApplication::translate("Anywhere", "%n entries", nullptr, number), "words");
}

/// A stand is set up, and then it is set up; in German these are two words.
void TstLanguages::oneEnglishFormHasSeveralUses()
{
    language::Spoken words(QLocale::c());
    words.speak(Language::German);
    const core::Verbs verbs{u"take away"_s, u"taken away"_s, u"set up"_s, u"set up"_s};
    QCOMPARE(core::verbInWords(verbs, &core::Verbs::on), u"aufstellen"_s);
    QCOMPARE(core::verbInWords(verbs, &core::Verbs::onDone), u"aufgestellt"_s);
}

void TstLanguages::theRecordSpeaksEnglish()
{
    language::Spoken words(QLocale::c());
    words.speak(Language::German);
    const QString german = QCoreApplication::translate("Anywhere", "Disconnect");
    QVERIFY(german != u"Disconnect");
    {
        const language::InRecordWords record;
        QCOMPARE(QCoreApplication::translate("Anywhere", "Disconnect"), u"Disconnect"_s);
        {
            const language::InRecordWords within;
            const language::InScreenWords screen;
            QCOMPARE(QCoreApplication::translate("Anywhere", "Disconnect"), german);
            const language::InRecordWords again;
            QCOMPARE(QCoreApplication::translate("Anywhere", "Disconnect"), u"Disconnect"_s);
        }
        QCOMPARE(QCoreApplication::translate("Anywhere", "Disconnect"), u"Disconnect"_s);
    }
    QCOMPARE(QCoreApplication::translate("Anywhere", "Disconnect"), german);
}

/// Unicode CLDR: the decimal sign is a comma in German and in French, and a point in German of Switzerland.
void TstLanguages::datesAreTheCountrysOwn()
{
    QCOMPARE(language::localeFor(Language::German, QLocale(u"fr_FR"_s)).decimalPoint(), u","_s);
    QCOMPARE(language::localeFor(Language::French, QLocale(u"en_GB"_s)).decimalPoint(), u","_s);
    QCOMPARE(language::localeFor(Language::German, QLocale(u"de_CH"_s)).decimalPoint(), u"."_s);
    QCOMPARE(language::localeFor(Language::English, QLocale(u"de_DE"_s)).decimalPoint(), u"."_s);
}

QTEST_GUILESS_MAIN(TstLanguages)

#include "tst_languages.moc"
