// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/rows/rows.hpp"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <algorithm>

#include "app/session/verify_store.hpp"
#include "tests/fault/rows/scratch.hpp"
#include "tests/fault/support/check.hpp"
#include "tests/fault/support/crew.hpp"

namespace rows {

namespace {

using namespace Qt::StringLiterals;

/// The store and its session, and what was acknowledged.
struct Open {
    std::unique_ptr<db::Store> store{};
    std::unique_ptr<session::Session> session{};
    std::optional<core::LedgerId> job{};
    std::vector<core::Digest> acknowledged{};
};

std::optional<Open> open(const QString &path, const session::Clock &clock)
{
    auto store = db::Store::open(path, db::Access::ReadWrite);
    if (!store)
        return std::nullopt;
    Open opened{.store = *std::move(store)};
    opened.session = std::make_unique<session::Session>(*opened.store, clock, core::leastCost);
    opened.job = crew::jobOf(*opened.store);
    if (!opened.job || !opened.session->refresh())
        return std::nullopt;
    return opened;
}

bool sign(Open &at, int first, int count)
{
    for (int number = first; number < first + count; ++number) {
        const auto entries = crew::listOne(*at.session, *at.job, number);
        if (!entries)
            return false;
        at.acknowledged.push_back(entries->front().hash);
    }
    return true;
}

/// A copy by another program: this one must not touch a file that SQLite has open.
bool copyStoreAlone(const QString &from, const QString &to) { return QProcess::execute(u"cp"_s, {from, to}) == 0; }

/// The entries that verifying calls missing, each by the end of its sentence; nothing when there is any other fault.
std::optional<qsizetype> missing(const QString &path, const std::vector<core::Digest> &known)
{
    const auto store = db::Store::open(path, db::Access::ReadOnly);
    const auto report = store ? session::verifyStore(**store, {{}, known}) : core::Result<session::VerifyReport>(core::failure(store.error()));
    if (!report)
        return std::nullopt;
    const bool isAllMissing = std::all_of(report->faults.begin(), report->faults.end(), [](const core::Fault &fault) { return fault.rule == u"ledger.missing"_s; });
    return isAllMissing ? std::optional(static_cast<qsizetype>(report->faults.size())) : std::nullopt;
}

/// `kept` entries reach the store itself, `newest` only its side file.
QString copyRound(Row &row, const QString &readyStore, int kept, int newest)
{
    const QTemporaryDir folder(scratch::pattern());
    const QString path = folder.filePath(u"a.remate"_s);
    const QString copy = folder.filePath(u"copy.remate"_s);
    auto at = QFile::copy(readyStore, path) ? open(path, crew::clock()) : std::nullopt;
    if (!at || !sign(*at, 1, kept) || !at->store->checkpoint() || !sign(*at, kept + 1, newest) || !copyStoreAlone(path, copy))
        return u"the run did not go through"_s;
    row.acknowledged += kept + newest;
    if (missing(copy, {}) != 0)
        return u"the copy is not sound"_s;
    const std::vector<core::Digest> older(at->acknowledged.begin(), at->acknowledged.begin() + kept);
    if (missing(copy, older) != 0)
        return u"an entry that reached the store itself is not in the copy"_s;
    if (missing(copy, at->acknowledged) != newest)
        return u"verifying does not say which entries the copy lacks"_s;
    row.reported += newest > 0;
    at->session.reset();
    if (!at->store->close())
        return u"the store did not close"_s;
    const auto left = check::store(path, at->acknowledged, 5);
    row.lost += left.lost;
    return left.trouble;
}

struct Setting {
    qint64 back; ///< milliseconds
    bool isTaken;
};

/// Signs, sets the clock back, signs again, sets it right, signs again.
QString clockRound(Row &row, const QString &readyStore, const Setting &setting)
{
    const QTemporaryDir folder(scratch::pattern());
    const QString path = folder.filePath(u"a.remate"_s);
    core::Instant now = crew::now();
    auto at = QFile::copy(readyStore, path) ? open(path, [&now] { return now; }) : std::nullopt;
    if (!at || !sign(*at, 1, 1))
        return u"the run did not go through"_s;
    const core::Instant right = now;
    now = core::Instant::fromMilliseconds(now.milliseconds() - setting.back);
    const auto entries = crew::listOne(*at->session, *at->job, 2);
    if (entries)
        at->acknowledged.push_back(entries->front().hash);
    if (entries.has_value() != setting.isTaken)
        return setting.isTaken ? u"refused within the slack"_s : u"taken"_s;
    if (!entries) {
        const auto &refusals = entries.error().refusals;
        if (refusals.empty() || refusals.front().second.front().rule != u"ledger.clock"_s || !isOfUse(entries.error().error.message))
            return u"refused for another reason: "_s + entries.error().error.message;
        ++row.reported;
        ++row.messages[u"sign "_s + entries.error().error.message];
    }
    now = core::Instant::fromMilliseconds(right.milliseconds() + 1);
    if (!sign(*at, 3, 1))
        return u"nothing could be signed once the clock was right"_s;
    row.acknowledged += static_cast<qint64>(at->acknowledged.size());
    row.harmless += setting.isTaken;
    if (!at->store->close())
        return u"the store did not close"_s;
    const auto left = check::store(path, at->acknowledged, 5);
    row.lost += left.lost;
    return left.trouble;
}

} // namespace

Row copiedWithoutSideFile(const QString &readyStore, const Extent &)
{
    Row row{.tool = u"copied without its side file"_s};
    for (const auto &[kept, newest] : {std::pair(4, 4), std::pair(1, 9), std::pair(6, 1)}) {
        ++row.rounds;
        if (const QString trouble = copyRound(row, readyStore, kept, newest); !trouble.isEmpty())
            row.failures += u"%1, %2 and %3: %4"_s.arg(row.tool).arg(kept).arg(newest).arg(trouble);
    }
    row.hurt = row.rounds;
    return row;
}

Row clockSetBack(const QString &readyStore, const Extent &)
{
    constexpr qint64 day = 86'400'000;
    Row row{.tool = u"clock set back"_s};
    for (const Setting &setting : {Setting{0, true}, Setting{1'999, true}, Setting{2'000, true}, Setting{2'001, false}, Setting{day, false}, Setting{3650 * day, false}}) {
        ++row.rounds;
        row.hurt += setting.back > 0;
        if (const QString trouble = clockRound(row, readyStore, setting); !trouble.isEmpty())
            row.failures += u"%1 by %2 ms: %3"_s.arg(row.tool).arg(setting.back).arg(trouble);
    }
    return row;
}

} // namespace rows
