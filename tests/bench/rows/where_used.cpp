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

qint64 entriesOf(db::Store &store, const db::Wanted &wanted)
{
    qint64 count = 0;
    must(store.whereUsed().forEach(wanted, [&](const core::LedgerId &, const db::StoredEntryView &entry) {
        count += entry.bytes.isEmpty() || entry.hash.isEmpty() || entry.signature.isEmpty() ? 0 : 1;
        return db::Walk::On;
    }));
    return count;
}

/// What was torqued with a tool between two dates. The bare side is not asked for the kind: all entries here are of it.
Figure betweenTwoDates(const Settings &settings, const ManyUses &uses, const ManyUses::Tool &tool, db::Store &store, BareStore &bare)
{
    const qint64 hits = uses.hitsInTenth(tool);
    const db::Between tenth = uses.tenth();
    const db::Wanted wanted{u"tool"_s, tool.id, tenth, u"torque.applied"_s};
    if (entriesOf(store, wanted) != hits)
        giveUp(u"%1 entries were found, not %2."_s.arg(entriesOf(store, wanted)).arg(hits));
    return {u"%1 torqued with one tool between two dates among %2 entries"_s.arg(hits).arg(uses.entries), u"ms"_s,
            inTurn(settings.repetitions, [&] { return milliseconds([&] { return entriesOf(store, wanted); }, hits); },
                   [&] {
                       return milliseconds([&] { return bare.between(tool.bareThing, tenth.from.milliseconds(), tenth.until.milliseconds()); }, hits);
                   }),
            atMost(1.5), u"bare join"_s};
}

} // namespace

std::vector<Figure> measureWhereUsed(const Settings &settings)
{
    const ManyUses uses = manyUses(settings.cache, settings.by<qint64>(2000, 100'000, 1'000'000));
    auto store = must(db::Store::open(uses.path, db::Access::ReadWrite));
    BareStore bare(uses.barePath, BareStore::Dates::Yes);
    std::vector<Figure> figures;
    for (const ManyUses::Tool &tool : uses.tools) {
        const QString name = u"%1 uses of a tool among %2 entries"_s.arg(tool.hits).arg(uses.entries);
        figures.push_back({name + u", with the entries"_s, u"ms"_s,
                           inTurn(settings.repetitions, [&] { return milliseconds([&] { return entriesOf(*store, {u"tool"_s, tool.id}); }, tool.hits); },
                                  [&] { return milliseconds([&] { return bare.join(tool.bareThing); }, tool.hits); }),
                           atMost(1.5), u"bare join"_s});
        const auto find = [&] { return static_cast<qint64>(must(store->whereUsed().find({u"tool"_s, tool.id}, tool.hits)).size()); };
        figures.push_back({name + u", their numbers"_s, u"ms"_s,
                           inTurn(settings.repetitions, [&] { return milliseconds(find, tool.hits); },
                                  [&] { return milliseconds([&] { return bare.uses(tool.bareThing); }, tool.hits); }),
                           std::nullopt, u"bare index"_s});
        figures.push_back(betweenTwoDates(settings, uses, tool, *store, bare));
    }
    return figures;
}

} // namespace bench
