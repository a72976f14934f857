// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/rows/sweep.hpp"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <cerrno>
#include <mutex>
#include <thread>

#include "tests/fault/rows/judge.hpp"
#include "tests/fault/rows/scratch.hpp"

namespace sweep {

namespace {

constexpr int entriesToSign = 5;
/// What making people and the job takes in Script::Life.
constexpr qint64 entriesOfLife = 5;

/// One round in a folder of its own.
judge::Verdict oneRound(const Ready &ready, Script script, const rounds::Fault &fault)
{
    const QTemporaryDir folder(scratch::pattern());
    const QString path = folder.filePath(QStringLiteral("a.remate"));
    const bool isAppend = script == Script::Append;
    if (isAppend && !QFile::copy(ready.path, path))
        return {.failure = QStringLiteral("the store could not be copied")};
    const QString act = isAppend ? QStringLiteral("append") : QStringLiteral("life");
    const auto told = rounds::run({act, path, QString::number(entriesToSign)}, folder.path(), fault);
    auto verdict = judge::judge(path, told, {.isThere = isAppend,
                                             .before = isAppend ? ready.entries : entriesOfLife,
                                             .expected = isAppend ? entriesToSign + 1 : entriesToSign + 3,
                                             .fault = fault});
    for (const char *beside : {".report", ".errors"})
        QFile::remove(folder.path() + QLatin1String(beside));
    return verdict;
}

QString describe(const rounds::Fault &fault) { return QStringLiteral("%1 %2 %3 (%4)").arg(fault.does, fault.calls).arg(fault.nth).arg(fault.error); }

/// Two at a time: a round waits for its process most of the time.
Row manyRounds(const QString &tool, const Ready &ready, Script script, const std::vector<rounds::Fault> &faults)
{
    Row row{.tool = tool};
    std::mutex both;
    std::size_t next = 0;
    const auto work = [&] {
        for (;;) {
            std::unique_lock lock(both);
            if (next == faults.size())
                return;
            const rounds::Fault fault = faults[next++];
            lock.unlock();
            const auto verdict = oneRound(ready, script, fault);
            lock.lock();
            judge::count(row, verdict, describe(fault));
        }
    };
    std::thread other(work);
    work();
    other.join();
    return row;
}

} // namespace

Row control(const Ready &ready, const Sweep &sweep, int rounds)
{
    Row row = manyRounds(sweep.tool, ready, sweep.script, std::vector<rounds::Fault>(static_cast<std::size_t>(rounds)));
    if (row.hurt != 0)
        row.failures += sweep.tool + QStringLiteral(": a fault struck");
    if (row.harmless != row.rounds)
        row.failures += sweep.tool + QStringLiteral(": not every round went through");
    row.hurt = row.rounds;
    return row;
}

Row run(const Ready &ready, const Sweep &sweep, const Extent &extent)
{
    rounds::Fault counting = sweep.fault;
    counting.nth = 0;
    const long all = oneRound(ready, sweep.script, counting).counted;
    const long number = extent.rounds(all, sweep.shortForm);
    std::vector<rounds::Fault> faults;
    for (long round = 0; round < number; ++round) {
        faults.push_back(sweep.fault);
        faults.back().nth = Extent::nth(round, number, all);
    }
    return manyRounds(sweep.tool, ready, sweep.script, faults);
}

} // namespace sweep
