// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "app/session/read_on.hpp"
#include "tests/bench/fixture/bare_store.hpp"
#include "tests/bench/fixture/must.hpp"
#include "tests/bench/fixture/work.hpp"
#include "tests/bench/rows/row.hpp"

namespace bench {

namespace {

using namespace Qt::StringLiterals;

/// So many acts of the program, then as many of the bare side, and again: both meet the same machine.
constexpr std::size_t block = 25;

/// The program and the bare store side by side, holding the same entries.
class SideBySide {
public:
    explicit SideBySide(const QString &storePath)
        : m_store(must(db::Store::open(storePath, db::Access::ReadWrite))), m_session(*m_store, session::systemClock(), core::leastCost),
          m_crew(m_session), m_bare(storePath + u"-bare"_s)
    {
    }

    session::Session &session() { return m_session; }
    const Crew &crew() const { return m_crew; }

    void copyToBare(const core::LedgerId &ledger)
    {
        std::vector<BareEntry> all;
        for (const core::Entry &entry : must(session::readEntries(*m_store, ledger)))
            all.push_back(m_numbers.of(entry));
        m_bare.append(all);
        m_bare.checkpoint();
        must(m_store->checkpoint());
    }

    /// How long each act takes, signed one by one by the program and inserted one by one by the bare side.
    Times time(const core::LedgerId &ledger, const std::vector<core::Draft> &acts)
    {
        Times times;
        for (std::size_t at = 0; at < acts.size(); at += block) {
            std::vector<BareEntry> same;
            for (std::size_t i = at; i < std::min(at + block, acts.size()); ++i) {
                const std::vector<core::Draft> one{acts[i]};
                std::vector<core::Entry> entries;
                times.program.push_back(1000 * secondsOf([&] { entries = m_crew.sign(m_session, ledger, one); }));
                same.push_back(m_numbers.of(entries.front()));
            }
            for (const BareEntry &entry : same)
                times.bare.push_back(1000 * secondsOf([&] { m_bare.append({&entry, 1}); }));
        }
        return times;
    }

private:
    std::unique_ptr<db::Store> m_store;
    session::Session m_session;
    Crew m_crew;
    BareNumbers m_numbers;
    BareStore m_bare;
};

/// The next `acts` acts or a few more, whole lives; `item` is the next interface that nobody touched.
std::vector<core::Draft> nextLives(int &item, std::size_t acts)
{
    std::vector<core::Draft> all;
    while (all.size() < acts) {
        const std::vector<core::Draft> life = lifeOf(item++);
        all.insert(all.end(), life.begin(), life.end());
    }
    return all;
}

std::vector<Figure> figuresOf(const QString &where, const std::vector<Times> &all)
{
    Figure p50{where + u", p50"_s, u"ms"_s, {}, atMost(1.30), u"bare insert"_s};
    Figure p99{where + u", p99"_s, u"ms"_s, {}, atMost(1.5), u"bare insert"_s};
    for (const Times &times : all) {
        p50.repetitions.push_back(times.at(0.50));
        p99.repetitions.push_back(times.at(0.99));
    }
    return {p50, p99};
}

/// Each repetition works a fresh job of 90 interfaces from its first act to its last acceptance.
std::vector<Figure> inSmallJobs(const Settings &settings)
{
    const int interfaces = settings.by(8, 90, 90);
    const BigJob base = copyOf(bigJob(settings.cache, {2, 4}), settings.scratch);
    SideBySide both(base.path);
    std::vector<Times> all;
    for (int i = 0; i < settings.repetitions; ++i) {
        const core::LedgerId ledger = both.crew().openJob(both.session());
        std::vector<core::Draft> list;
        std::vector<core::Draft> acts;
        for (int item = 0; item < interfaces; ++item) {
            list.push_back(listing(item));
            const std::vector<core::Draft> life = lifeOf(item);
            acts.insert(acts.end(), life.begin(), life.end());
        }
        both.crew().sign(both.session(), ledger, list);
        both.copyToBare(ledger);
        all.push_back(both.time(ledger, acts));
    }
    return figuresOf(u"act in a job of %1 interfaces"_s.arg(interfaces), all);
}

/// All repetitions go on in one job, on interfaces that were untouched.
std::vector<Figure> inBigJob(const Settings &settings)
{
    const auto actsEach = settings.by<std::size_t>(30, 600, 900);
    const BigJob job = copyOf(bigJob(settings.cache, settings.shape()), settings.scratch);
    SideBySide both(job.path);
    must(both.session().openJob(job.job));
    both.copyToBare(job.job);
    const auto &items = both.session().state()->items;
    const auto untouched = std::find_if(items.begin(), items.end(), [](const core::InterfaceState &item) { return !item.removal; });
    int item = static_cast<int>(untouched - items.begin());
    std::vector<Times> all;
    for (int i = 0; i < settings.repetitions; ++i)
        all.push_back(both.time(job.job, nextLives(item, actsEach)));
    const JobShape shape = settings.shape();
    return figuresOf(u"act in a job of %1 interfaces, %2 entries"_s.arg(shape.interfaces).arg(shape.entries), all);
}

} // namespace

std::vector<Figure> measureAppend(const Settings &settings)
{
    std::vector<Figure> figures = inSmallJobs(settings);
    const std::vector<Figure> big = inBigJob(settings);
    figures.insert(figures.end(), big.begin(), big.end());
    return figures;
}

} // namespace bench
