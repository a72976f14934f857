// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QAbstractButton>
#include <QLabel>
#include <QMap>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QStackedWidget>
#include <QTabBar>
#include <QTest>

#include "tests/app/desktop/all_screens.hpp"

using namespace Qt::StringLiterals;

/// Alt and a letter reach one thing on a screen, in every language: where two have the letter, it presses neither.
class TstKeysGivenOnce : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { QCOMPARE(m_screens.trouble(), QString()); }
    void onEveryScreen_data();
    void onEveryScreen();
    void inEveryMenu_data() { languages(); }
    void inEveryMenu();
    void sheetsOfMostActsAreLookedAt();

private:
    void languages();
    void speak(language::Language language);

    AllScreens m_screens;
    language::Language m_spoken = language::Language::English;
};

namespace {

/// Behind another page of the same stack.
bool isBehind(const QWidget &widget)
{
    for (const QWidget *at = &widget; at && !at->isWindow(); at = at->parentWidget()) {
        const auto *stack = qobject_cast<const QStackedWidget *>(at->parentWidget());
        if (stack && stack->currentWidget() != at)
            return true;
    }
    return false;
}

/// What has a key on that window. What is hidden or greyed now may be neither in a moment, so it counts too.
QStringList textsWithKeys(const QWidget &window)
{
    QStringList texts;
    const auto isOnIt = [&](const QWidget *widget) { return widget->window() == &window && !isBehind(*widget); };
    for (const QAbstractButton *button : window.findChildren<QAbstractButton *>()) {
        if (isOnIt(button))
            texts << button->text();
    }
    for (const QLabel *label : window.findChildren<QLabel *>()) {
        if (label->buddy() && isOnIt(label))
            texts << label->text();
    }
    for (const QTabBar *tabs : window.findChildren<QTabBar *>()) {
        for (int at = 0; isOnIt(tabs) && at < tabs->count(); ++at)
            texts << tabs->tabText(at);
    }
    for (const QMenuBar *bar : window.findChildren<QMenuBar *>()) {
        for (const QAction *action : bar->actions())
            texts << action->text();
    }
    return texts;
}

/// A line for each key that is given twice, with what has it.
QStringList givenTwice(const QStringList &texts)
{
    QMap<QString, QStringList> byKey;
    for (const QString &text : texts) {
        if (const QKeySequence key = QKeySequence::mnemonic(text); !key.isEmpty())
            byKey[key.toString()] << text;
    }
    QStringList lines;
    for (auto at = byKey.cbegin(); at != byKey.cend(); ++at) {
        if (at.value().size() > 1)
            lines << at.key() + u": "_s + at.value().join(u" | "_s);
    }
    return lines;
}

} // namespace

void TstKeysGivenOnce::languages()
{
    QTest::addColumn<language::Language>("spoken");
    for (const language::LanguageLine &line : language::languages())
        QTest::addRow("%s", line.code) << line.language;
}

void TstKeysGivenOnce::speak(language::Language language)
{
    if (language != m_spoken)
        m_screens.speak(language);
    m_spoken = language;
}

void TstKeysGivenOnce::onEveryScreen_data()
{
    QTest::addColumn<language::Language>("spoken");
    QTest::addColumn<AllScreens::Screen>("screen");
    QTest::addColumn<bool>("isDialog");
    for (const language::LanguageLine &line : language::languages()) {
        for (const auto *screens : {&m_screens.pages(), &m_screens.dialogs()}) {
            for (const AllScreens::Screen &screen : *screens)
                QTest::addRow("%s: %s", line.code, qPrintable(screen.name)) << line.language << screen << (screens == &m_screens.dialogs());
        }
    }
}

void TstKeysGivenOnce::onEveryScreen()
{
    QFETCH(language::Language, spoken);
    QFETCH(AllScreens::Screen, screen);
    speak(spoken);
    const QWidget *shown = screen.show();
    QVERIFY(shown);
    const bool isOver = shown->isModal();
    const QStringList texts = textsWithKeys(*shown);
    m_screens.leave();
    QFETCH(bool, isDialog);
    QCOMPARE(isOver, isDialog); // or what was meant did not come up
    QVERIFY(isDialog || !texts.isEmpty());
    QCOMPARE(givenTwice(texts).join(u'\n'), QString());
}

/// Within an open menu a letter chooses by itself.
void TstKeysGivenOnce::inEveryMenu()
{
    QFETCH(language::Language, spoken);
    speak(spoken);
    int met = 0;
    QStringList lines;
    for (const QMenu *menu : m_screens.window().findChild<QMenuBar *>()->findChildren<QMenu *>()) {
        QStringList texts;
        for (const QAction *action : menu->actions())
            texts << action->text();
        met += static_cast<int>(texts.size());
        lines += givenTwice(texts);
    }
    QVERIFY(met > 40);
    QCOMPARE(lines.join(u'\n'), QString());
}

void TstKeysGivenOnce::sheetsOfMostActsAreLookedAt()
{
    QVERIFY(m_screens.acts().size() > 40);
}

QTEST_MAIN(TstKeysGivenOnce)
#include "tst_keys_given_once.moc"
