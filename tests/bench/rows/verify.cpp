// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "app/session/session.hpp"
#include "app/session/verify_store.hpp"
#include "tests/bench/fixture/must.hpp"
#include "tests/bench/rows/row.hpp"
#include "tests/bench/rows/signatures.hpp"

namespace bench {

using namespace Qt::StringLiterals;

namespace {

struct Verified {
    double seconds;
    session::VerifyReport report;
};

Verified verify(const BigJob &job, const session::VerifiedBefore *before = nullptr)
{
    auto store = must(db::Store::open(job.path, db::Access::ReadOnly));
    Verified done{};
    done.seconds = secondsOf([&] { done.report = must(session::verifyStore(*store, {}, {}, before)); });
    if (!done.report.faults.empty())
        giveUp(done.report.faults.front().sentence);
    return done;
}

/// The whole store, all over again, and after it was remembered what was good.
std::vector<Figure> figuresOf(const BigJob &job, int entries, int repetitions)
{
    const std::vector<Signature> signatures = signaturesOf(*must(db::Store::open(job.path, db::Access::ReadOnly)));
    Figure full{u"verify %1 entries"_s.arg(entries), u"s"_s, {}, atMost(1.15), u"signature checks on 2 threads"_s};
    Figure again{u"the same, verified before"_s, u"s"_s, {}, atMost(0.06), u"verifying all"_s};
    for (int i = 0; i < repetitions; ++i) {
        const Verified all = verify(job);
        full.repetitions.push_back({all.seconds, checkAll(signatures)});
        session::VerifiedBefore before = session::VerifiedBefore::load(job.path + u"-verified"_s); // nothing yet
        session::remember(before, all.report, session::systemClock()());
        const Verified second = verify(job, &before);
        if (second.report.entriesTakenFromBefore() == 0)
            giveUp(u"Nothing was remembered."_s);
        again.repetitions.push_back({second.seconds, all.seconds});
    }
    return {full, again};
}

} // namespace

std::vector<Figure> measureVerify(const Settings &settings)
{
    std::vector<JobShape> shapes{settings.shape()};
    if (settings.size == Size::Full)
        shapes.push_back({16'000, 100'000});
    std::vector<Figure> figures;
    for (const JobShape &shape : shapes) {
        const BigJob job = copyOf(bigJob(settings.cache, shape), settings.scratch);
        must(must(db::Store::open(job.path, db::Access::ReadWrite))->close());
        const std::vector<Figure> some = figuresOf(job, shape.entries, settings.repetitions);
        figures.insert(figures.end(), some.begin(), some.end());
    }
    return figures;
}

} // namespace bench
