// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFileInfo>

#include "app/session/read_on.hpp"
#include "tests/bench/fixture/bare_store.hpp"
#include "tests/bench/fixture/must.hpp"
#include "tests/bench/fixture/work.hpp"
#include "tests/bench/rows/row.hpp"

namespace bench {

using namespace Qt::StringLiterals;

std::vector<Figure> measureSize(const Settings &settings)
{
    // Once: a size does not vary.
    const BigJob job = copyOf(bigJob(settings.cache, settings.shape()), settings.scratch);
    qint64 entries = 0;
    {
        auto store = must(db::Store::open(job.path, db::Access::ReadWrite));
        BareStore bare(job.path + u"-bare"_s);
        BareNumbers numbers;
        for (const db::StoredLedger &ledger : must(store->ledgers())) {
            std::vector<BareEntry> same;
            for (const core::Entry &entry : must(session::readEntries(*store, *ledger.id())))
                same.push_back(numbers.of(entry));
            // In batches, as the program's were: how full pages are depends on it.
            constexpr std::size_t batch = 50;
            for (std::size_t at = 0; at < same.size(); at += batch)
                bare.append(std::span(same).subspan(at, std::min(batch, same.size() - at)));
            entries += static_cast<qint64>(same.size());
        }
        bare.checkpoint();
        must(store->close());
    }
    const auto bytesEach = [&](const QString &path) { return static_cast<double>(QFileInfo(path).size()) / static_cast<double>(entries); };
    return {{u"store of %1 entries, each"_s.arg(entries), u"B"_s, {{bytesEach(job.path), bytesEach(job.path + u"-bare"_s)}}, atMost(1.10), u"bare layout"_s}};
}

} // namespace bench
