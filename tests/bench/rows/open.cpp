// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/session.hpp"
#include "tests/bench/fixture/bare_store.hpp"
#include "tests/bench/fixture/must.hpp"
#include "tests/bench/rows/row.hpp"

namespace bench {

using namespace Qt::StringLiterals;

namespace {

/// From the closed file to the folded state that a screen shows. Nobody waits for its end, so that is not timed.
double openAndFold(const BigJob &job, int entries)
{
    std::unique_ptr<db::Store> store;
    std::optional<session::Session> session;
    const double seconds = secondsOf([&] {
        store = must(db::Store::open(job.path, db::Access::ReadOnly));
        session.emplace(*store, session::systemClock());
        must(session->refresh());
        must(session->openJob(job.job));
    });
    if (session->fold()->head().seq < entries)
        giveUp(u"The job was not read to its end."_s);
    return 1000 * seconds;
}

double select(const BigJob &job, ReadBy order)
{
    return 1000 * secondsOf([&] {
               if (selectAll(job.path, job.job.text(), order) == 0)
                   giveUp(u"The job has no rows."_s);
           });
}

} // namespace

std::vector<Figure> measureOpen(const Settings &settings)
{
    const JobShape shape = settings.shape();
    const BigJob job = copyOf(bigJob(settings.cache, shape), settings.scratch);
    must(must(db::Store::open(job.path, db::Access::ReadWrite))->close()); // brought up to this version, and in memory
    Figure byIndex{u"open and fold %1 entries"_s.arg(shape.entries), u"ms"_s, {}, atMost(2.5), u"SELECT by job index"_s};
    Figure byRowid{byIndex.name, u"ms"_s, {}, std::nullopt, u"SELECT by rowid"_s};
    select(job, ReadBy::JobIndex);
    for (int i = 0; i < settings.repetitions; ++i) {
        const double program = openAndFold(job, shape.entries);
        byIndex.repetitions.push_back({program, select(job, ReadBy::JobIndex)});
        byRowid.repetitions.push_back({program, select(job, ReadBy::Rowid)});
    }
    return {byIndex, byRowid};
}

} // namespace bench
