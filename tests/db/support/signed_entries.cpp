// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/db/support/signed_entries.hpp"

namespace entries {

using core::Entry;
using core::Head;
using core::LedgerId;
using core::Result;

Hand hand(const QString &name)
{
    if (!core::readyCryptography())
        qFatal("no cryptography");
    return {*core::PersonId::parse(name), *core::SigningKey::fromSeed(core::Digest::of(name.toUtf8()).bytes())};
}

core::SecondKey station(const QString &name)
{
    if (!core::readyCryptography())
        qFatal("no cryptography");
    return *core::SecondKey::ofStation(core::Digest::of("station " + name.toUtf8()).bytes());
}

LedgerId ledger(const QString &name) { return *LedgerId::parse(name); }

core::Instant firstMoment() { return core::Instant::fromMilliseconds(1'772'439'271'120); }

Entry after(const Head &head, const LedgerId &ledger, const std::optional<Head> &reg, const Hand &hand, const Act &act)
{
    const core::Statement said{.ledger = ledger,
                               .seq = head.seq + 1,
                               .at = act.at.value_or(core::Instant::fromMilliseconds(firstMoment().milliseconds() + 1000 * head.seq)),
                               .author = hand.person,
                               .key = hand.key.publicKey().fingerprint(),
                               .meaning = QStringLiteral("recorded"),
                               .kind = act.kind,
                               .subject = act.subject,
                               .body = act.body,
                               .reg = reg,
                               .prev = head.hash};
    return *core::seal(said, hand.key);
}

std::vector<Entry> chain(int count, const Head &head, const LedgerId &ledger, const std::optional<Head> &reg, const Hand &hand,
                         const Act &act)
{
    std::vector<Entry> all;
    Head last = head;
    for (int i = 0; i < count; ++i) {
        all.push_back(after(last, ledger, reg, hand, act));
        last = all.back().head();
    }
    return all;
}

Result<void> appendOne(db::Store &store, const LedgerId &ledger, const Hand &hand, const Act &act)
{
    for (;;) {
        const auto turn = store.takeTurn();
        const auto reg = store.registerLedger();
        if (!turn || !reg)
            return core::failure(turn ? reg.error() : turn.error());
        const auto head = store.head(ledger);
        const auto pinned = *reg ? store.head(**reg) : Result<Head>(Head{});
        if (!head || !pinned)
            return core::failure(head ? pinned.error() : head.error());
        const Entry entry = after(*head, ledger, *pinned, hand, act);
        auto done = store.append({&entry, 1}, *head);
        if (done || done.error().code != core::ErrorCode::HeadMoved)
            return done;
    }
}

Head beginRegister(db::Store &store, int count)
{
    const auto made = chain(count, {}, ledger(QStringLiteral("register")), {}, hand(QStringLiteral("Root")),
                            {.kind = QStringLiteral("person.enrolled"), .subject = QStringLiteral("Root")});
    if (const auto done = store.append(made, {}); !done)
        qFatal("%s", qPrintable(done.error().message));
    return made.back().head();
}

} // namespace entries
