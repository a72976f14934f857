// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/rows/rows.hpp"

#include <QDir>
#include <QFile>

#include "tests/fault/rows/judge.hpp"
#include "tests/fault/rows/mounted.hpp"

namespace rows {

namespace {

using namespace Qt::StringLiterals;

constexpr qint64 page = 4096;
constexpr int entriesToSign = 12;

/// One round: so many pages are free when the victim begins.
judge::Verdict oneRound(const Mounted &disk, const QString &readyStore, qint64 freePages, bool isLife)
{
    const QString path = disk.path() + u"/a.remate"_s;
    const QString ballast = disk.path() + u"/ballast"_s;
    if (!isLife && !QFile::copy(readyStore, path))
        return {.failure = u"the store could not be copied"_s};
    if (!disk.fill(ballast, freePages * page))
        return {.failure = u"the disk could not be filled"_s};
    const QString count = QString::number(entriesToSign);
    const auto told = rounds::run(isLife ? QStringList{u"life"_s, path, count} : QStringList{u"refill"_s, path, count, ballast}, disk.path(), {.calls = {}});
    QFile::remove(ballast); // what comes now needs room
    judge::Expectation expectation{.isThere = !isLife, .before = 5, .expected = isLife ? entriesToSign + 3 : entriesToSign + 1, .fault = {.calls = {}}};
    auto verdict = judge::judge(path, told, expectation);
    verdict.isHurt = verdict.isReported;
    const QString all = told.said.join(u' ');
    if (verdict.isReported && !all.contains(u"room"_s))
        verdict.failure = u"a full disk was called something else: "_s + all;
    // One entry was refused, and the same session went on once there was room.
    if (told.madeRoom && (verdict.acknowledged != entriesToSign || !told.isClosed))
        verdict.failure = u"there was room again, and %1 entries were recorded: "_s.arg(verdict.acknowledged) + all;
    for (const QString &name : QDir(disk.path()).entryList(QDir::Files | QDir::Hidden))
        QFile::remove(disk.path() + u'/' + name);
    return verdict;
}

Row fill(const Mounted &disk, const QString &readyStore, const QString &tool, long most, long shortForm, bool isLife, const Extent &extent)
{
    Row row{.tool = tool};
    const long number = extent.rounds(most, shortForm);
    for (long round = 0; round < number; ++round) {
        const long freePages = Extent::nth(round, number, most) - 1;
        judge::count(row, oneRound(disk, readyStore, freePages, isLife), u"%1 pages free"_s.arg(freePages));
    }
    return row;
}

} // namespace

std::vector<Row> fullDisk(const QString &readyStore, const Extent &extent)
{
    const QString signing = u"full disk (tmpfs) while signing, then room"_s;
    const QString life = u"full disk (tmpfs), whole life"_s;
    const Mounted disk = Mounted::memory(u"size=4m"_s);
    if (!disk.isThere())
        return {{.tool = signing, .notRun = disk.whyNot()}, {.tool = life, .notRun = disk.whyNot()}};
    return {fill(disk, readyStore, signing, 120, 12, false, extent), fill(disk, readyStore, life, 260, 10, true, extent)};
}

} // namespace rows
