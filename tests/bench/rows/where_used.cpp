// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/store.hpp"
#include "tests/bench/fixture/many_uses.hpp"
#include "tests/bench/fixture/must.hpp"
#include "tests/bench/rows/row.hpp"

namespace bench {

using namespace Qt::StringLiterals;

namespace {

/// One look-up takes too little time to be timed alone.
constexpr int lookupsEach = 15;

double milliseconds(const std::function<qint64()> &lookUp, qint64 expected)
{
    std::vector<double> times;
    for (int i = 0; i < lookupsEach; ++i) {
        qint64 found = 0;
        times.push_back(1000 * secondsOf([&] { found = lookUp(); }));
        if (found < expected)
            giveUp(u"%1 uses were found, not %2."_s.arg(found).arg(expected));
    }
    return quantile(times, 0.5);
}

qint64 entriesWith(db::Store &store, const ManyUses::Tool &tool)
{
    qint64 count = 0;
    must(store.whereUsed().forEach(u"tool"_s, tool.id, [&](const core::LedgerId &, const db::StoredEntryView &entry) {
        count += entry.bytes.isEmpty() || entry.hash.isEmpty() || entry.signature.isEmpty() ? 0 : 1;
        return db::Walk::On;
    }));
    return count;
}

} // namespace

std::vector<Figure> measureWhereUsed(const Settings &settings)
{
    const ManyUses uses = manyUses(settings.cache, settings.by<qint64>(2000, 100'000, 1'000'000));
    auto store = must(db::Store::open(uses.path, db::Access::ReadWrite));
    BareStore bare(uses.barePath);
    std::vector<Figure> figures;
    for (const ManyUses::Tool &tool : uses.tools) {
        const QString name = u"%1 uses of a tool among %2 entries"_s.arg(tool.hits).arg(uses.entries);
        figures.push_back({name + u", with the entries"_s, u"ms"_s,
                           inTurn(settings.repetitions, [&] { return milliseconds([&] { return entriesWith(*store, tool); }, tool.hits); },
                                  [&] { return milliseconds([&] { return bare.join(tool.bareThing); }, tool.hits); }),
                           atMost(1.5), u"bare join"_s});
        const auto find = [&] { return static_cast<qint64>(must(store->whereUsed().find(u"tool"_s, tool.id, tool.hits)).size()); };
        figures.push_back({name + u", their numbers"_s, u"ms"_s,
                           inTurn(settings.repetitions, [&] { return milliseconds(find, tool.hits); },
                                  [&] { return milliseconds([&] { return bare.uses(tool.bareThing); }, tool.hits); }),
                           std::nullopt, u"bare index"_s});
    }
    return figures;
}

} // namespace bench
