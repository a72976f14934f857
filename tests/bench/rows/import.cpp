// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/bench/fixture/bare_store.hpp"
#include "tests/bench/fixture/must.hpp"
#include "tests/bench/fixture/work.hpp"
#include "tests/bench/rows/row.hpp"

namespace bench {

using namespace Qt::StringLiterals;

std::vector<Figure> measureImport(const Settings &settings)
{
    constexpr int batch = 50;
    const int interfaces = settings.by(100, 1000, 5000);
    const BigJob base = copyOf(bigJob(settings.cache, {2, 4}), settings.scratch);
    auto store = must(db::Store::open(base.path, db::Access::ReadWrite));
    session::Session session(*store, session::systemClock(), core::leastCost);
    const Crew crew(session);
    BareStore bare(base.path + u"-bare"_s);
    BareNumbers numbers;

    Figure figure{u"list of %1 interfaces in batches of %2"_s.arg(interfaces).arg(batch), u"entries/s"_s, {}, atLeast(0.5), u"bare batched insert"_s};
    for (int i = 0; i < settings.repetitions; ++i) {
        const core::LedgerId ledger = crew.openJob(session);
        must(store->checkpoint());
        bare.checkpoint();
        double program = 0;
        double inserted = 0;
        // A batch of the program, then the same of the bare side.
        for (int item = 0; item < interfaces; item += batch) {
            std::vector<core::Draft> drafts;
            for (int one = item; one < item + batch; ++one)
                drafts.push_back(listing(one));
            std::vector<core::Entry> entries;
            program += secondsOf([&] { entries = crew.sign(session, ledger, drafts); });
            std::vector<BareEntry> same;
            for (const core::Entry &entry : entries)
                same.push_back(numbers.of(entry));
            inserted += secondsOf([&] { bare.append(same); });
        }
        figure.repetitions.push_back({interfaces / program, interfaces / inserted});
    }
    return {figure};
}

} // namespace bench
