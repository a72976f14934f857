// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/support/check.hpp"

#include "app/session/verify_store.hpp"
#include "tests/db/support/files.hpp"
#include "tests/fault/support/crew.hpp"

namespace check {

namespace {

/// What verifying says, but for the entries that are missing, which are counted.
QString faultsOf(const session::VerifyReport &report, int &lost)
{
    QString first;
    for (const core::Fault &fault : report.faults) {
        if (fault.rule == QStringLiteral("ledger.missing"))
            ++lost;
        else if (first.isEmpty())
            first = QStringLiteral("%1 %2: %3 %4").arg(fault.ledger.text()).arg(fault.seq).arg(fault.rule, fault.sentence);
    }
    return first;
}

QString goesOn(db::Store &store)
{
    const auto job = crew::jobOf(store);
    if (!job)
        return {}; // killed before there was one
    session::Session session(store, crew::clock(), core::leastCost);
    if (const auto read = session.refresh(); !read)
        return QStringLiteral("not read again: ") + read.error().message;
    constexpr int ofItsOwn = 999'999;
    const auto done = crew::listOne(session, *job, ofItsOwn);
    return done ? QString() : QStringLiteral("takes no more: ") + done.error().error.message;
}

} // namespace

Outcome store(const QString &path, const std::vector<core::Digest> &acknowledged, qint64 before)
{
    Outcome outcome;
    auto opened = db::Store::open(path, db::Access::ReadWrite);
    if (!opened) {
        outcome.lost = static_cast<int>(acknowledged.size());
        outcome.trouble = QStringLiteral("does not open: ") + opened.error().message;
        return outcome;
    }
    const auto report = session::verifyStore(**opened, {{}, acknowledged});
    if (!report) {
        outcome.lost = static_cast<int>(acknowledged.size());
        outcome.trouble = QStringLiteral("cannot be verified: ") + report.error().message;
        return outcome;
    }
    outcome.trouble = faultsOf(*report, outcome.lost);
    outcome.entries = report->entries();
    outcome.unclaimed = static_cast<int>(outcome.entries - before) - static_cast<int>(acknowledged.size()) + outcome.lost;
    if (outcome.trouble.isEmpty() && files::rawNumber(path, "SELECT count(*) FROM pragma_integrity_check WHERE integrity_check <> 'ok'") != 0)
        outcome.trouble = QStringLiteral("its pages do not hold together");
    if (outcome.trouble.isEmpty())
        outcome.trouble = goesOn(**opened);
    return outcome;
}

} // namespace check
