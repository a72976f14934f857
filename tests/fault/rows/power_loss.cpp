// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/rows/rows.hpp"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QTemporaryDir>

#include <algorithm>
#include <mutex>
#include <thread>

#include "tests/db/support/files.hpp"
#include "tests/fault/crash_vfs/states.hpp"
#include "tests/fault/rows/scratch.hpp"
#include "tests/fault/support/check.hpp"
#include "tests/fault/support/crew.hpp"

namespace rows {

namespace {

using namespace Qt::StringLiterals;

/// What happened while it was recorded, and what the job held in the end.
struct Story {
    std::vector<crash::Event> events{};
    std::vector<db::StoredEntry> entries{};
    qint64 before = 0; ///< entries of the job before the recording
    QString trouble{};
};

/// Signs some entries between two openings, with a write-back in the middle and an attachment. False: something went wrong.
bool signSome(const QString &path, crash::Recording &recording, int first, int count)
{
    auto store = db::Store::open(path, db::Access::ReadWrite);
    if (!store)
        return false;
    session::Session session(**store, crew::clock(), core::leastCost);
    const auto job = crew::jobOf(**store);
    if (!job || !session.refresh())
        return false;
    for (int number = first; number < first + count; ++number) {
        if (!crew::listOne(session, *job, number))
            return false;
        recording.acknowledge();
        if (number % 4 == 3 && !(*store)->checkpoint())
            return false;
    }
    return (*store)->attachments().put(QByteArray(20'000, static_cast<char>('a' + first)), u"image/jpeg"_s) && (*store)->close();
}

Story record(const QString &readyStore, crash::Trust trust)
{
    const QTemporaryDir folder(scratch::pattern());
    const QString path = folder.filePath(u"a.remate"_s);
    Story story;
    if (!QFile::copy(readyStore, path))
        return {.trouble = u"the store could not be copied"_s};
    {
        crash::Recording recording(QFile::encodeName(folder.path()), trust);
        if (!signSome(path, recording, 1, 7) || !signSome(path, recording, 8, 7))
            return {.trouble = u"the recorded run did not go through"_s};
        story.events = recording.events();
    }
    auto store = db::Store::open(path, db::Access::ReadOnly);
    const auto job = store ? crew::jobOf(**store) : std::nullopt;
    const auto entries = job ? (*store)->read(*job) : core::Result<std::vector<db::StoredEntry>>();
    if (!job || !entries)
        return {.trouble = u"what was recorded could not be read"_s};
    story.entries = *entries;
    const auto acknowledged = std::count_if(story.events.begin(), story.events.end(), [](const crash::Event &event) { return event.what == crash::Event::What::Acknowledge; });
    story.before = static_cast<qint64>(story.entries.size()) - acknowledged;
    return story;
}

/// How many acknowledged entries are missing, or why the store is not sound.
struct Found {
    qint64 lost = 0;
    QString trouble{};
};

Found lookAt(const QString &path, const Story &story, int acknowledged)
{
    auto store = db::Store::open(path, db::Access::ReadWrite, std::chrono::milliseconds(100));
    if (!store)
        return {acknowledged, u"does not open: "_s + store.error().message};
    const auto job = crew::jobOf(**store);
    const auto entries = job ? (*store)->read(*job) : core::Result<std::vector<db::StoredEntry>>(core::failure(core::ErrorCode::NotFound, u"no job"_s));
    if (!entries)
        return {acknowledged, entries.error().message};
    // The whole run was verified once; what is the same byte for byte needs no more.
    const bool isPrefix = entries->size() <= story.entries.size() && std::equal(entries->begin(), entries->end(), story.entries.begin());
    const qint64 there = static_cast<qint64>(entries->size()) - story.before;
    Found found{std::max<qint64>(0, acknowledged - there), {}};
    if (!isPrefix || there > acknowledged + 1)
        found.trouble = u"the job holds what was never signed"_s;
    else if (files::rawNumber(path, "SELECT count(*) FROM pragma_integrity_check WHERE integrity_check <> 'ok'") != 0)
        found.trouble = u"its pages do not hold together"_s;
    return found;
}

/// Puts the files of a state into a folder and looks at them.
Found lookAt(const QString &folder, const Story &story, const crash::State &state)
{
    QDir dir(folder);
    for (const QString &name : dir.entryList(QDir::Files | QDir::Hidden))
        dir.remove(name);
    for (const auto &[name, bytes] : state.files)
        files::write(dir.filePath(QFile::decodeName(name)), bytes);
    return lookAt(dir.filePath(u"a.remate"_s), story, state.acknowledged);
}

/// Looks at every state, half of them on each core, until the time is over.
void lookAtAll(Row &row, const Story &story, const crash::Thoroughness &how, const QElapsedTimer &time, qint64 until)
{
    std::mutex both;
    const auto work = [&](qint64 half) {
        const QTemporaryDir folder(scratch::pattern());
        qint64 number = 0;
        crash::eachState(story.events, how, [&](const crash::State &state) {
            if (number++ % 2 != half)
                return true;
            const Found found = lookAt(folder.path(), story, state);
            const std::scoped_lock lock(both);
            ++row.rounds;
            row.acknowledged += state.acknowledged;
            row.lost += found.lost;
            row.harmless += found.lost == 0 && found.trouble.isEmpty();
            if (!found.trouble.isEmpty() && !row.mustLose)
                row.failures += u"%1, state %2 of seed %3: %4"_s.arg(row.tool).arg(number).arg(how.seed).arg(found.trouble);
            return time.elapsed() < until;
        });
    };
    std::thread other(work, 1);
    work(0);
    other.join();
}

Row powerLossRow(const QString &tool, const QString &readyStore, crash::Trust trust, const crash::Thoroughness &how, qint64 milliseconds)
{
    Row row{.tool = tool, .mustLose = trust != crash::Trust::AsProgrammed};
    const Story story = record(readyStore, trust);
    if (!story.trouble.isEmpty()) {
        row.failures += tool + u": "_s + story.trouble;
        return row;
    }
    QElapsedTimer time;
    time.start();
    // Each seed brings other states by chance; with the first one every single fate is tried as well.
    crash::Thoroughness next = how;
    do {
        lookAtAll(row, story, next, time, milliseconds);
        ++next.seed;
        next.isEvery = false;
        next.byChance = 20;
    } while (how.isEvery && time.elapsed() < milliseconds);
    row.hurt = row.rounds;
    row.tool += u", %1 states/s"_s.arg(row.rounds * 1000 / std::max<qint64>(1, time.elapsed()));
    return row;
}

} // namespace

std::vector<Row> powerLoss(const QString &readyStore, const Extent &extent)
{
    const crash::Thoroughness how{.isEvery = extent.isFull, .byChance = extent.isFull ? 10 : 12};
    constexpr qint64 minute = 60'000;
    const qint64 time = extent.isFull ? 4 * minute : minute / 4;
    const qint64 less = extent.isFull ? minute / 2 : minute / 6;
    return {powerLossRow(u"power loss, as programmed"_s, readyStore, crash::Trust::AsProgrammed, how, time),
            powerLossRow(u"power loss, synchronous NORMAL (must lose)"_s, readyStore, crash::Trust::Normal, {.isEvery = false, .byChance = 1}, less),
            powerLossRow(u"power loss, synchronous OFF (must lose)"_s, readyStore, crash::Trust::Off, {.isEvery = false, .byChance = 1}, less)};
}

} // namespace rows
