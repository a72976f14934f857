// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/crash_vfs/states.hpp"

#include <QHash>
#include <QSet>

#include <algorithm>

namespace crash {

namespace {

using Fate = Disk::Fate;
using Fates = std::vector<Fate>;

size_t fingerprint(const Files &files, int acknowledged)
{
    auto print = static_cast<size_t>(acknowledged);
    for (const auto &[name, bytes] : files)
        print = qHash(bytes, qHash(name, print));
    return print;
}

/// Every way that follows from a single decision.
std::vector<Fates> everyFate(std::size_t count)
{
    std::vector<Fates> all = {Fates(count, Fate::Dropped), Fates(count, Fate::Kept)};
    for (std::size_t one = 0; one < count; ++one) {
        Fates until(count, Fate::Dropped);
        std::fill_n(until.begin(), one, Fate::Kept);
        all.push_back(until);
        for (const Fate fate : {Fate::Torn, Fate::Damaged}) {
            until[one] = fate;
            all.push_back(until);
        }
        Fates survivor(count, Fate::Dropped);
        survivor[one] = Fate::Kept;
        all.push_back(survivor);
        for (const Fate fate : {Fate::Dropped, Fate::Torn, Fate::Damaged}) {
            Fates loss(count, Fate::Kept);
            loss[one] = fate;
            all.push_back(loss);
        }
    }
    return all;
}

Fates byChance(std::size_t count, std::mt19937_64 &chance)
{
    // Half of the time most are kept: a state that lost nearly everything is much like any other of that sort.
    const bool isMostlyKept = (chance() & 1) != 0;
    Fates fates(count);
    for (Fate &fate : fates)
        fate = isMostlyKept && chance() % 4 != 0 ? Fate::Kept : static_cast<Fate>(chance() % 4);
    return fates;
}

} // namespace

void eachState(const std::vector<Event> &events, const Thoroughness &how, const std::function<bool(State)> &take)
{
    Disk disk;
    int acknowledged = 0;
    bool goesOn = true;
    std::mt19937_64 chance(how.seed);
    QSet<size_t> given;
    const auto give = [&](const Fates &fates, std::size_t names) {
        Files files = disk.after(fates, names, chance);
        const auto print = fingerprint(files, acknowledged);
        if (!goesOn || given.contains(print))
            return;
        given.insert(print);
        goesOn = take({std::move(files), acknowledged});
    };
    for (const Event &event : events) {
        disk.take(event);
        acknowledged += event.what == Event::What::Acknowledge;
        if (event.what == Event::What::Begin || !goesOn)
            continue;
        const std::size_t count = disk.uncertain();
        if (how.isEvery)
            for (const Fates &fates : everyFate(count))
                for (std::size_t names = 0; names <= disk.uncertainNames(); ++names)
                    give(fates, names);
        for (int i = 0; i < how.byChance; ++i)
            give(byChance(count, chance), chance() % (disk.uncertainNames() + 1));
    }
}

} // namespace crash
