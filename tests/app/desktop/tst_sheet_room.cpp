// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QTemporaryDir>
#include <QTest>

#include "app/desktop/parts/sign_sheet.hpp"
#include "app/desktop/parts/theme.hpp"
#include "tests/app/desktop/all_screens.hpp"

using namespace Qt::StringLiterals;

namespace {

/// 1366 × 768, the least that is still common on a hangar's portable, where everything is shown at 200 %.
constexpr const char *smallScreen = R"({"screens":[{"name":"small","x":0,"y":0,"width":683,"height":384,"logicalDpi":96,"dpr":1}]})";

} // namespace

/// What is signed can be read whole, and signed, on a small screen as well: it scrolls and is not cut.
class TstSheetRoom : public QObject {
    Q_OBJECT

public:
    TstSheetRoom() { desktop::applyAppearance(*qApp, desktop::Appearance::Light); }

private slots:
    void initTestCase();
    void isReadWhole_data();
    void isReadWhole();

private:
    AllScreens m_screens;
    language::Language m_spoken = language::Language::English;
};

void TstSheetRoom::initTestCase()
{
    QCOMPARE(m_screens.trouble(), QString());
    QCOMPARE(QGuiApplication::primaryScreen()->size(), QSize(683, 384));
}

void TstSheetRoom::isReadWhole_data()
{
    QTest::addColumn<language::Language>("spoken");
    QTest::addColumn<AllScreens::Screen>("screen");
    for (const language::LanguageLine &line : language::languages()) {
        for (const AllScreens::Screen &screen : m_screens.dialogs()) {
            if (screen.name.startsWith(u"act "))
                QTest::addRow("%s: %s", line.code, qPrintable(screen.name)) << line.language << screen;
        }
    }
}

void TstSheetRoom::isReadWhole()
{
    QFETCH(language::Language, spoken);
    QFETCH(AllScreens::Screen, screen);
    if (spoken != m_spoken)
        m_screens.speak(spoken);
    m_spoken = spoken;
    auto *sheet = qobject_cast<desktop::SignSheet *>(screen.show());
    QVERIFY(sheet);
    for (int i = 0; i < 3; ++i)
        QCoreApplication::processEvents(); // it takes its size, and then its parts theirs
    QStringList faults;
    auto *words = sheet->findChild<QListWidget *>(u"words"_s);
    // A label knows how high its text is at a width; the style leaves 0.4 em at each side of a line, 0.35 em above and below.
    QLabel label;
    label.setTextFormat(Qt::PlainText);
    label.setWordWrap(true);
    label.setFont(words->font());
    label.setMargin(0);
    for (int row = 0; row < words->count(); ++row) {
        const QRect at = words->visualItemRect(words->item(row));
        label.setText(words->item(row)->text());
        const int needed = label.heightForWidth(at.width() - words->fontMetrics().height()) + words->fontMetrics().height() / 2;
        if (at.height() < needed)
            faults << u"row %1 is %2 high and needs %3: %4"_s.arg(row).arg(at.height()).arg(needed).arg(label.text());
    }
    const bool isWhole = words->verticalScrollBar()->maximum() == 0;
    // What is not in sight can be scrolled to; who signs, and the button, are always there.
    for (const char *name : {"person", "secret", "sign"}) {
        const QWidget *control = sheet->findChild<QWidget *>(QString::fromLatin1(name));
        if (control->isVisible() && !sheet->rect().contains(QRect(control->mapTo(sheet, QPoint()), control->size())))
            faults << QString::fromLatin1(name);
    }
    const QSize size = sheet->size();
    m_screens.leave();
    QCOMPARE(faults.join(u'\n'), QString());
    QVERIFY(isWhole);
    QVERIFY2(size.height() <= 384 && size.width() <= 683, qPrintable(u"%1 x %2"_s.arg(size.width()).arg(size.height())));
}

int main(int argc, char **argv)
{
    const QTemporaryDir folder;
    QFile config(folder.filePath(u"screen.json"_s));
    if (!config.open(QIODevice::WriteOnly) || config.write(smallScreen) < 0)
        return 1;
    config.close();
    qputenv("QT_QPA_PLATFORM", "offscreen:configfile=" + config.fileName().toUtf8());
    const QApplication app(argc, argv);
    TstSheetRoom test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_sheet_room.moc"
