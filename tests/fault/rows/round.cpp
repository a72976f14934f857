// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/rows/round.hpp"

#include <QCoreApplication>
#include <QFile>
#include <QProcess>

#include <csignal>

namespace rounds {

namespace {

/// SQLite tries for ten seconds to get a lock that the system does not give, once for each thing that is asked of it.
constexpr int longestRun = 240'000; // ms

QProcessEnvironment environment(const QString &folder, const Fault &fault, const QString &report)
{
    auto all = QProcessEnvironment::systemEnvironment();
    if (!mayUseShim())
        return all;
    all.insert(QStringLiteral("LD_PRELOAD"), built("libfault_shim.so"));
    all.insert(QStringLiteral("FAULT_FOLDER"), folder);
    all.insert(QStringLiteral("FAULT_CALLS"), fault.calls);
    all.insert(QStringLiteral("FAULT_NTH"), QString::number(fault.nth));
    all.insert(QStringLiteral("FAULT_DOES"), fault.does);
    all.insert(QStringLiteral("FAULT_ERRNO"), QString::number(fault.error));
    all.insert(QStringLiteral("FAULT_STICKY"), QString::number(fault.isSticky));
    all.insert(QStringLiteral("FAULT_STICK"), QString::number(fault.isStick));
    all.insert(QStringLiteral("FAULT_REPORT"), report);
    return all;
}

void take(Told &told, const QString &line)
{
    const QString rest = line.section(u' ', 1);
    if (line.startsWith(QStringLiteral("acked ")))
        told.acknowledged.push_back(core::Digest::parse(rest).value_or(core::Digest()));
    else if (line.startsWith(QStringLiteral("attached ")))
        told.attached += rest;
    else if (line.startsWith(QStringLiteral("said ")))
        told.said += rest;
    told.isReady |= line == QStringLiteral("ready");
    told.isClosed |= line == QStringLiteral("closed");
    told.madeRoom |= line == QStringLiteral("room");
    if (line == QStringLiteral("copied")) {
        told.isCopied = true;
        told.acknowledgedAtBackup = told.acknowledged.size();
    }
}

void readReport(Told &told, const QString &path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return;
    for (const QByteArray &line : file.readAll().split('\n')) {
        told.isHurt |= line == "hurt";
        if (line.startsWith("counted "))
            told.counted = line.mid(8).toLong();
    }
    file.remove();
}

} // namespace

QString built(const char *name) { return QCoreApplication::applicationDirPath() + u'/' + QLatin1String(name); }

bool mayUseShim()
{
#ifdef FAULT_WITHOUT_SHIM
    return false;
#else
    return true;
#endif
}

Told run(const QStringList &arguments, const QString &folder, const Fault &fault)
{
    Told told;
    const QString report = folder + QStringLiteral(".report");
    QProcess process;
    process.setProcessEnvironment(environment(folder, fault, report));
    process.setStandardErrorFile(folder + QStringLiteral(".errors"));
    process.start(built("fault_victim"), arguments);
    told.hangs = !process.waitForFinished(longestRun);
    if (told.hangs) {
        process.kill();
        process.waitForFinished();
    }
    // QProcess gives the number of the signal as the exit code of a program that crashed.
    if (process.exitStatus() == QProcess::CrashExit && !told.hangs) {
        told.isKilled = process.exitCode() == SIGKILL;
        told.isAborted = process.exitCode() == SIGABRT;
        told.otherSignal = told.isKilled || told.isAborted ? 0 : process.exitCode();
    }
    for (const QByteArray &line : process.readAllStandardOutput().split('\n'))
        take(told, QString::fromUtf8(line));
    readReport(told, report);
    QFile::remove(folder + QStringLiteral(".errors"));
    return told;
}

} // namespace rounds
