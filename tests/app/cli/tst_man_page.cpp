// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/man_page.hpp"

#include <QFile>
#include <QRegularExpression>
#include <QTest>

#include "tests/app/record/programs.hpp"

using namespace Qt::StringLiterals;

namespace {

QString pathOf(const char *page) { return QStringLiteral(MAN_FOLDER "/") + QString::fromLatin1(page); }

/// The page as mandoc shows it: without what it does for bold letters, and all blanks as one.
QString shown(const QString &path)
{
    QString text = programs::run(u"mandoc"_s, {u"-Tutf8"_s, u"-Owidth=200"_s, path}).output;
    text.remove(QRegularExpression(u".\\x08"_s));
    return text.replace(QRegularExpression(u"[ \\n]+"_s), u" "_s);
}

} // namespace

/// The manual pages, as a manual reads them.
class TstManPage : public QObject {
    Q_OBJECT

private slots:
    void isSound_data();
    void isSound();
    void tellsOfEveryCommand_data();
    void tellsOfEveryCommand();
    void tellsOfEveryExit();
    void nothingIsTakenForARequest();
};

void TstManPage::isSound_data()
{
    QTest::addColumn<QString>("page");
    for (const char *page : {"remate.1", "remate-cli.1"})
        QTest::addRow("%s", page) << pathOf(page);
}

void TstManPage::isSound()
{
    QFETCH(QString, page);
    QVERIFY2(QFile::exists(page), qPrintable(page));
    const programs::Ran ran = programs::run(u"mandoc"_s, {u"-Tlint"_s, u"-Wwarning"_s, page});
    QCOMPARE(ran.output, QString());
    QCOMPARE(ran.code, 0);
}

void TstManPage::tellsOfEveryCommand_data()
{
    QTest::addColumn<QString>("name");
    for (const cli::Command &command : cli::commands())
        QTest::addRow("%s", command.name.data()) << QString(command.name);
}

void TstManPage::tellsOfEveryCommand()
{
    QFETCH(QString, name);
    static const QString text = shown(pathOf("remate-cli.1"));
    const cli::Command &command = *cli::findCommand(name);
    const qsizetype from = text.indexOf(u" %1 %2 "_s.arg(name, QString::fromUtf8(command.summary).section(u' ', 0, 3)));
    QVERIFY(from > 0);
    const QString told = text.mid(from);
    QVERIFY(told.contains(QString::fromUtf8(command.summary)));
    QVERIFY(told.contains(u"remate-cli "_s + name + u' '));
    for (const cli::Option &option : command.options) {
        const QString placeholder = QString::fromLatin1(option.placeholder);
        const bool isPosition = option.sort == cli::OptionSort::Position || option.sort == cli::OptionSort::Positions;
        const QString tag = isPosition ? placeholder : (u"--"_s + option.name + u' ' + placeholder).trimmed();
        QVERIFY2(told.contains(tag + u' ' + QString::fromUtf8(option.help)), qPrintable(tag));
    }
}

void TstManPage::tellsOfEveryExit()
{
    const QString text = shown(pathOf("remate-cli.1"));
    const QString told = text.mid(text.indexOf(u"EXIT STATUS"_s));
    QCOMPARE(cli::exitRows().size(), 5U);
    for (const cli::ExitRow &row : cli::exitRows())
        QVERIFY(told.contains(u" %1 %2 "_s.arg(static_cast<int>(row.exit)).arg(QString::fromUtf8(row.meaning))));
}

/// groff(7): a dot or an apostrophe at the beginning of a line is a request, a backslash an escape.
void TstManPage::nothingIsTakenForARequest()
{
    const cli::Command odd{QLatin1String("odd"), ".sh is read, and C:\\n stays", {cli::flag(QLatin1String("dry-run"), "'twas so - not \\fBbold")}, cli::Fonts::NotNeeded, nullptr};
    QFile file(qEnvironmentVariable("TMPDIR") + u"/odd.1"_s);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(cli::manPage({odd}, u"1"_s, u"2026-03-02"_s));
    file.close();
    const QString text = shown(file.fileName());
    QVERIFY2(text.contains(u" .sh is read, and C:\\n stays "_s), qPrintable(text));
    QVERIFY2(text.contains(u" --dry-run 'twas so - not \\fBbold "_s), qPrintable(text));
    QCOMPARE(programs::run(u"mandoc"_s, {u"-Tlint"_s, u"-Wwarning"_s, file.fileName()}).output, QString());
}

QTEST_GUILESS_MAIN(TstManPage)
#include "tst_man_page.moc"
