// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/support/crew.hpp"

#include <ctime>

#include "app/session/people.hpp"
#include "tests/app/session/hangar.hpp"

using namespace Qt::StringLiterals;

namespace crew {

namespace {

QString whyNot(const session::Signed &done) { return done ? QString() : done.error().error.message; }

QString grant(session::Session &session, core::Authority authority)
{
    const session::Grant what{.id = session::nextAuthorisation(session.reg()), .person = person("lead"), .authority = authority, .kinds = {}, .aircraftTypes = {},
                              .from = QDate(2026, 1, 1), .until = {}, .reference = u"Letter"_s};
    return whyNot(session.sign(*session.reg().ledger, {session::grantDraft(person("root"), what)}, signer("root")));
}

} // namespace

core::Instant now()
{
    timespec passed{};
    clock_gettime(CLOCK_MONOTONIC, &passed);
    const auto begin = core::Instant::parseLedger(u"2026-03-02T08:00:00.000Z");
    return core::Instant::fromMilliseconds(begin->milliseconds() + passed.tv_sec * 1000 + passed.tv_nsec / 1'000'000);
}

session::Clock clock() { return &now; }

QString enrol(session::Session &session)
{
    const auto founded = session::found(session, u"Hangar"_s, {person("root"), u"ROOT"_s, u"root-secret"_s, {}});
    if (!founded)
        return whyNot(founded);
    const auto enrolled = session::enrol(session, {person("lead"), u"LEAD"_s, u"lead-secret"_s, u"Seen"_s}, signer("root"));
    if (!enrolled)
        return whyNot(enrolled);
    const QString lead = grant(session, core::Authority::Lead);
    return lead.isEmpty() ? grant(session, core::Authority::Work) : lead;
}

QString beginJob(session::Session &session)
{
    core::Draft opened = openedBy("lead");
    opened.body.set(u"crew"_s, core::json::arrayOf({u"lead"_s}));
    return whyNot(session.newJob(opened, signer("lead")));
}

QString makeStore(const QString &path)
{
    auto store = db::Store::create(path);
    if (!store)
        return store.error().message;
    session::Session session(**store, clock(), core::leastCost);
    if (const QString trouble = enrol(session); !trouble.isEmpty())
        return trouble;
    if (const QString trouble = beginJob(session); !trouble.isEmpty())
        return trouble;
    const auto closed = (*store)->close();
    return closed ? QString() : closed.error().message;
}

std::optional<core::LedgerId> jobOf(db::Store &store)
{
    const auto ledgers = store.ledgers();
    if (!ledgers)
        return std::nullopt;
    for (const db::StoredLedger &ledger : *ledgers)
        if (ledger.role == db::LedgerRole::Job)
            return ledger.id();
    return std::nullopt;
}

session::Signed listOne(session::Session &session, const core::LedgerId &job, int number)
{
    return session.sign(job, {draft("lead", u"interface.listed"_s, u"E%1"_s.arg(number), {{u"name"_s, u"Clamp %1 of the left-hand bleed duct"_s.arg(number)}, {u"kind"_s, u"clamp"_s}, {u"zone"_s, u"Left"_s}})},
                        signer("lead"));
}

} // namespace crew
