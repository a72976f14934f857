// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QFileInfo>

#include "app/package/package_evidence.hpp"
#include "app/package/package_writer.hpp"
#include "app/session/verify_store.hpp"
#include "resources/resources.hpp"
#include "tests/bench/fixture/must.hpp"
#include "tests/bench/rows/row.hpp"
#include "tests/bench/rows/signatures.hpp"

namespace bench {

using namespace Qt::StringLiterals;

namespace {

core::LedgerId jobIn(db::Store &store)
{
    for (const db::StoredLedger &ledger : must(store.ledgers())) {
        if (ledger.role == db::LedgerRole::Job)
            return *ledger.id();
    }
    giveUp(u"The bench's own store has no job."_s);
    return *core::LedgerId::parse(u"-");
}

/// The same bytes, written and flushed.
double copyBare(const QString &from, const QString &to)
{
    QFile source(from);
    if (!source.open(QIODevice::ReadOnly))
        giveUp(source.errorString());
    const QByteArray bytes = source.readAll();
    return secondsOf([&] {
        QFile target(to);
        if (!target.open(QIODevice::WriteOnly) || target.write(bytes) != bytes.size() || !target.flush())
            giveUp(target.errorString());
    });
}

} // namespace

std::vector<Figure> measurePackage(const Settings &settings)
{
    const JobShape shape = settings.shape();
    const BigJob job = copyOf(bigJob(settings.cache, shape), settings.scratch);
    auto store = must(db::Store::open(job.path, db::Access::ReadWrite));
    const core::LedgerId ledger = jobIn(*store);
    const std::vector<Signature> signatures = signaturesOf(*store);
    const core::Kinds kinds = must(resources::loadKinds());
    const QString path = job.path + u".zip"_s;
    Figure exported{u"export %1 interfaces, %2 entries"_s.arg(shape.interfaces).arg(shape.entries), u"s"_s, {}, std::nullopt, u"writing the same bytes"_s};
    Figure opened{u"read its bag: digests, names, pairs"_s, u"s"_s, {}, std::nullopt, u"signature checks on 2 threads"_s};
    Figure verified{u"verify its entries"_s, u"s"_s, {}, atMost(1.11), u"signature checks on 2 threads"_s}; // 0.9 of the bare rate
    for (int i = 0; i < settings.repetitions; ++i) {
        QFile::remove(path);
        const double writing = secondsOf([&] { must(package::writePackage(*store, ledger, kinds, path, {.whenOpen = record::WhenOpen::MarkAsDraft})); });
        exported.repetitions.push_back({writing, copyBare(path, path + u"-bare"_s)});
        std::unique_ptr<package::PackageEvidence> evidence;
        const double opening = secondsOf([&] { evidence = must(package::PackageEvidence::open(path)); });
        session::VerifyReport report;
        const double verifying = secondsOf([&] { report = must(session::verify(*evidence, {})); });
        if (!report.faults.empty())
            giveUp(report.faults.front().sentence);
        const double bare = checkAll(signatures);
        opened.repetitions.push_back({opening, bare});
        verified.repetitions.push_back({verifying, bare});
    }
    return {exported, opened, verified};
}

} // namespace bench
