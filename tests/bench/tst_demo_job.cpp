// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <memory>
#include <optional>

#include "app/demo/scenario.hpp"
#include "app/session/read_on.hpp"
#include "core/job/admit.hpp"
#include "core/job/fold.hpp"
#include "core/job/loose_ends.hpp"
#include "core/ledger/verify.hpp"
#include "db/store.hpp"
#include "resources/resources.hpp"

using namespace Qt::StringLiterals;

/// How long the daily steps take on the demo's job. Without -callgrind or -tickcounter the figures are wall time of this
/// machine, so nothing here fails for being slow; compare runs of one machine with `-minimumvalue 100`.
class DemoJobBench : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void foldsTheJob();
    void listsLooseEnds();
    void admitsADraft();
    void verifiesBothLedgers();

private:
    core::Register regOf() const;

    QTemporaryDir m_folder;
    std::optional<demo::Played> m_played;
    std::vector<core::Entry> m_reg;
    std::vector<core::Entry> m_job;
    std::vector<core::Entry> m_shop; ///< the job that it is linked with
};

void DemoJobBench::initTestCase()
{
    const auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    auto store = db::Store::create(m_folder.filePath(u"demo.remate"_s));
    QVERIFY(store);
    const auto played = demo::play(**store, *kinds, QDate(2026, 3, 2), demo::Until::SecondShift, core::leastCost);
    QVERIFY2(played, played ? "" : qPrintable(played.error().message));
    m_played = *played;

    const auto reg = session::readEntries(**store, m_played->reg);
    const auto job = session::readEntries(**store, m_played->job);
    const auto shop = session::readEntries(**store, m_played->shop);
    QVERIFY(reg && job && shop);
    m_shop = *shop;
    m_reg = *reg;
    m_job = *job;
    QVERIFY2(m_job.size() > 100, "a job this small measures nothing");
    qInfo("job: %d entries, register: %d entries", int(m_job.size()), int(m_reg.size()));
}

core::Register DemoJobBench::regOf() const
{
    core::RegisterVerifier reg(m_played->reg);
    for (const core::Entry &entry : m_reg)
        reg.take(core::FoundEntry{entry.said.seq, entry.bytes, entry.hash.bytes(), entry.signature});
    return reg.reg();
}

void DemoJobBench::foldsTheJob()
{
    core::Head head;
    QBENCHMARK
    {
        core::JobFold fold;
        for (const core::Entry &entry : m_job)
            fold.take(entry.said, entry.hash);
        head = fold.head();
    }
    QCOMPARE(head, m_played->head);
}

void DemoJobBench::listsLooseEnds()
{
    core::JobFold fold;
    for (const core::Entry &entry : m_job)
        fold.take(entry.said, entry.hash);
    const core::Register reg = regOf();
    core::LooseEnds ends;
    QBENCHMARK { ends = core::looseEnds(fold.state(), reg); }
    QVERIFY(!ends.empty());
}

void DemoJobBench::admitsADraft()
{
    core::JobFold fold;
    for (const core::Entry &entry : m_job)
        fold.take(entry.said, entry.hash);
    const core::Register reg = regOf();
    // What was already said once: every rule of its kind is asked, and some say no.
    const auto inspected = std::find_if(m_job.rbegin(), m_job.rend(), [](const core::Entry &entry) {
        return entry.said.kind == u"inspection.accepted"_s;
    });
    QVERIFY(inspected != m_job.rend());
    core::Draft draft = core::draftOf(inspected->said);
    draft.at = m_played->endedAt;
    core::Refusals refusals;
    QBENCHMARK { refusals = core::admit(fold.state(), reg, draft); }
    QVERIFY(!refusals.empty());
}

void DemoJobBench::verifiesBothLedgers()
{
    std::size_t faults = 1;
    QBENCHMARK
    {
        core::RegisterVerifier reg(m_played->reg);
        for (const core::Entry &entry : m_reg)
            reg.take(core::FoundEntry{entry.said.seq, entry.bytes, entry.hash.bytes(), entry.signature});
        core::JobFold shop;
        const auto along = [&](const core::LinkedHead &to) {
            while (shop.head().seq < to.head.seq)
                shop.take(m_shop[static_cast<std::size_t>(shop.head().seq)].said, m_shop[static_cast<std::size_t>(shop.head().seq)].hash);
            return std::make_shared<const core::JobState>(shop.state());
        };
        core::JobVerifier job(m_played->job, reg, {}, along);
        for (const core::Entry &entry : m_job)
            job.take(core::FoundEntry{entry.said.seq, entry.bytes, entry.hash.bytes(), entry.signature});
        faults = reg.faults().size() + job.faults().size();
    }
    QCOMPARE(faults, std::size_t(0));
}

QTEST_GUILESS_MAIN(DemoJobBench)
#include "tst_demo_job.moc"
