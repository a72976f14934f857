// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/logging/log.hpp"
#include "app/logging/qt_messages.hpp"
#include "app/logging/state_folder.hpp"

#include <QTemporaryDir>
#include <QtTest>

#include <sys/resource.h>

#include <csignal>
#include <thread>

using namespace logging;

class LogTest : public QObject {
    Q_OBJECT

private slots:
    void aLineNamesThings_data();
    void aLineNamesThings();
    void longValuesAreCut();
    void linesCarryTimeProcessAndLevel();
    void filesAreTheirOwnersAlone();
    void oldFilesGiveWay();
    void aSecondRunAppends();
    void severalThreadsKeepWholeLines();
    void folderCannotBeMade();
    void fileCannotBeOpened();
    void diskIsFull();
    void noneKeepsNothing();
    void messagesOfQtArrive();
    void stateFolderFollowsTheEnvironment_data();
    void stateFolderFollowsTheEnvironment();

private:
    static QByteArray read(const QString &path);
};

QByteArray LogTest::read(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void LogTest::aLineNamesThings_data()
{
    QTest::addColumn<QString>("name");
    QTest::addColumn<QString>("value");
    QTest::addColumn<QString>("expected");

    QTest::newRow("a number") << "seq"
                              << "17"
                              << "entry seq=17";
    QTest::newRow("nothing") << "seq"
                             << ""
                             << "entry seq=\"\"";
    QTest::newRow("blanks") << "file"
                            << "/tmp/my store"
                            << "entry file=\"/tmp/my store\"";
    QTest::newRow("other scripts") << "person"
                                   << "Zoë"
                                   << "entry person=Zoë";
    QTest::newRow("a quote") << "file"
                             << "a\"b"
                             << "entry file=\"a\\\"b\"";
    QTest::newRow("a forged line") << "file"
                                   << "x\n2026-01-01 forged"
                                   << "entry file=\"x\\u000a2026-01-01 forged\"";
    QTest::newRow("a terminal's escape") << "file"
                                         << "\x1b[2J"
                                         << "entry file=\"\\u001b[2J\"";
    QTest::newRow("a PIN") << "pin"
                           << "4711"
                           << "entry pin=(withheld)";
    QTest::newRow("part of a name") << "new_pin"
                                    << "4711"
                                    << "entry new_pin=(withheld)";
    QTest::newRow("a passphrase") << "Passphrase"
                                  << "open sesame"
                                  << "entry Passphrase=(withheld)";
    QTest::newRow("a private key") << "private_key"
                                   << "00ff"
                                   << "entry private_key=(withheld)";
    QTest::newRow("a word that holds pin") << "opinion"
                                           << "7"
                                           << "entry opinion=7";
}

void LogTest::aLineNamesThings()
{
    QFETCH(QString, name);
    QFETCH(QString, value);
    QFETCH(QString, expected);
    QCOMPARE(line(u"entry", {{name, value}}), expected);
}

void LogTest::longValuesAreCut()
{
    QCOMPARE(line(u"e", {{"v", QString(300, u'x')}}), "e v=" + QString(300, u'x'));
    QCOMPARE(line(u"e", {{"v", QString(301, u'x')}}), "e v=\"" + QString(300, u'x') + "…\"");
}

void LogTest::linesCarryTimeProcessAndLevel()
{
    const QTemporaryDir folder;
    const auto log = Log::open({folder.path(), "remate"});
    QVERIFY(log);
    const QDateTime before = QDateTime::currentDateTimeUtc();
    log->info(u"store.opened", {{"file", "a.remate"}});
    log->warning(u"store.busy");
    log->error(u"store.damaged");
    const QDateTime after = QDateTime::currentDateTimeUtc();

    const QStringList lines = QString::fromUtf8(read(folder.filePath("remate.log"))).split(u'\n');
    QCOMPARE(lines.size(), 4);
    const QString pid = QString::number(QCoreApplication::applicationPid());
    QCOMPARE(lines[0].section(u' ', 1), pid + " info store.opened file=a.remate");
    QCOMPARE(lines[1].section(u' ', 1), pid + " warning store.busy");
    QCOMPARE(lines[2].section(u' ', 1), pid + " error store.damaged");
    QCOMPARE(lines[3], QString());
    const QDateTime at = QDateTime::fromString(lines[0].section(u' ', 0, 0), Qt::ISODateWithMs);
    QCOMPARE(at.offsetFromUtc(), 0);
    QVERIFY2(at >= before && at <= after, qPrintable(lines[0]));
}

void LogTest::filesAreTheirOwnersAlone()
{
    const QTemporaryDir outer;
    const QString folder = outer.filePath("state/remate");
    const auto log = Log::open({folder, "remate", 100, 2});
    QVERIFY(log);
    for (int i = 0; i < 5; ++i)
        log->info(u"a.line.of.some.length");
    QCOMPARE(QFileInfo(folder).permission(QFileDevice::ReadGroup | QFileDevice::ExeGroup), false);
    for (const char *name : {"remate.log", "remate.1.log"}) {
        const QFileInfo file(folder + u'/' + name);
        QVERIFY2(file.exists(), name);
        const auto mode = file.permissions() & ~(QFileDevice::ReadUser | QFileDevice::WriteUser | QFileDevice::ExeUser);
        QCOMPARE(mode, QFileDevice::ReadOwner | QFileDevice::WriteOwner);
    }
}

void LogTest::oldFilesGiveWay()
{
    const QTemporaryDir folder;
    const auto log = Log::open({folder.path(), "remate", 1000, 3});
    QVERIFY(log);
    for (int i = 0; i < 500; ++i)
        log->info(u"numbered", {{"n", QString::number(i)}});

    const QFileInfoList files = QDir(folder.path()).entryInfoList(QDir::Files, QDir::Name);
    QCOMPARE(files.size(), 3);
    for (const QFileInfo &file : files)
        QVERIFY2(file.size() <= 1000, qPrintable(file.fileName()));
    QVERIFY(read(folder.filePath("remate.log")).contains("n=499"));
    QVERIFY(!read(folder.filePath("remate.2.log")).contains("n=0\n"));
}

void LogTest::aSecondRunAppends()
{
    const QTemporaryDir folder;
    for (const char *event : {"first", "second"}) {
        const auto log = Log::open({folder.path(), "remate"});
        QVERIFY(log);
        log->info(QString(event));
    }
    const QByteArray text = read(folder.filePath("remate.log"));
    QVERIFY(text.contains("first") && text.contains("second"));
}

void LogTest::severalThreadsKeepWholeLines()
{
    const QTemporaryDir folder;
    const auto log = Log::open({folder.path(), "remate"});
    QVERIFY(log);
    std::vector<std::thread> threads;
    for (int t = 0; t < 4; ++t)
        threads.emplace_back([&] {
            for (int i = 0; i < 200; ++i)
                log->info(u"whole line");
        });
    for (std::thread &thread : threads)
        thread.join();
    const QByteArrayList lines = read(folder.filePath("remate.log")).trimmed().split('\n');
    QCOMPARE(lines.size(), 800);
    for (const QByteArray &text : lines)
        QVERIFY2(text.endsWith(" info whole line"), text.constData());
}

void LogTest::folderCannotBeMade()
{
    const QTemporaryDir folder;
    QFile file(folder.filePath("taken"));
    QVERIFY(file.open(QIODevice::WriteOnly));
    const auto log = Log::open({folder.filePath("taken/remate"), "remate"});
    QVERIFY(!log);
    QCOMPARE(log.error().code, core::ErrorCode::Io);
    QCOMPARE(log.error().where.file, folder.filePath("taken/remate"));
    QVERIFY(!log.error().message.isEmpty());
}

void LogTest::fileCannotBeOpened()
{
    const QTemporaryDir folder;
    QVERIFY(QDir(folder.path()).mkdir("remate.log"));
    const auto log = Log::open({folder.path(), "remate"});
    QVERIFY(!log);
    QCOMPARE(log.error().code, core::ErrorCode::Io);
}

/// A limit on the file's size stands in for a full disk: writing fails the same way, for root as well.
void LogTest::diskIsFull()
{
    const QTemporaryDir folder;
    const auto log = Log::open({folder.path(), "remate"});
    QVERIFY(log);
    log->info(u"before");
    QCOMPARE(log->failures(), 0);

    rlimit limit = {};
    QCOMPARE(getrlimit(RLIMIT_FSIZE, &limit), 0);
    const auto signalBefore = std::signal(SIGXFSZ, SIG_IGN);
    const rlimit narrow = {rlim_t(read(folder.filePath("remate.log")).size()), limit.rlim_max};
    QCOMPARE(setrlimit(RLIMIT_FSIZE, &narrow), 0);
    log->info(u"while full");
    log->info(u"while full");
    const int failures = log->failures();
    setrlimit(RLIMIT_FSIZE, &limit);
    std::signal(SIGXFSZ, signalBefore);

    QVERIFY(failures >= 2);
    log->info(u"afterwards");
    QVERIFY(read(folder.filePath("remate.log")).contains("afterwards"));
}

void LogTest::noneKeepsNothing()
{
    const Log log = Log::none();
    log.error(u"lost");
    QCOMPARE(log.failures(), 0);
}

void LogTest::messagesOfQtArrive()
{
    const QTemporaryDir folder;
    const auto log = Log::open({folder.path(), "remate"});
    QVERIFY(log);
    QTest::ignoreMessage(QtWarningMsg, "inside");
    QTest::ignoreMessage(QtWarningMsg, "outside");
    {
        const QtMessages messages(*log);
        qWarning("inside");
    }
    qWarning("outside");
    const QByteArray text = read(folder.filePath("remate.log"));
    QVERIFY2(text.contains(" warning qt.message category=default text=inside\n"), text.constData());
    QVERIFY(!text.contains("outside"));
}

void LogTest::stateFolderFollowsTheEnvironment_data()
{
    QTest::addColumn<QString>("stated");
    QTest::addColumn<QString>("expected");

    QTest::newRow("stated") << "/var/state"
                            << "/var/state/remate";
    QTest::newRow("not stated") << ""
                                << "/home/ana/.local/state/remate";
    QTest::newRow("relative, to be ignored") << "state"
                                             << "/home/ana/.local/state/remate";
}

void LogTest::stateFolderFollowsTheEnvironment()
{
    QFETCH(QString, stated);
    QFETCH(QString, expected);
    QProcessEnvironment environment;
    environment.insert("HOME", "/home/ana");
    environment.insert("XDG_STATE_HOME", stated);
    QCOMPARE(stateFolder(environment), expected);
}

QTEST_GUILESS_MAIN(LogTest)
#include "tst_log.moc"
