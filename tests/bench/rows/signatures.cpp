// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/bench/rows/signatures.hpp"

#include <sodium.h>

#include <atomic>
#include <span>
#include <thread>

#include "app/session/read_on.hpp"
#include "app/session/session.hpp"
#include "tests/bench/fixture/must.hpp"
#include "tests/bench/rows/row.hpp"

namespace bench {

using namespace Qt::StringLiterals;

namespace {

void checkSome(std::span<const Signature> some, std::atomic_int &bad)
{
    const auto unsignedOf = [](const QByteArray &bytes) { return reinterpret_cast<const unsigned char *>(bytes.constData()); };
    for (const Signature &one : some) {
        if (crypto_sign_ed25519_verify_detached(unsignedOf(one.signature), unsignedOf(one.bytes), static_cast<unsigned long long>(one.bytes.size()), unsignedOf(one.key)) != 0)
            ++bad;
    }
}

} // namespace

std::vector<Signature> signaturesOf(db::Store &store)
{
    session::Session session(store, session::systemClock());
    must(session.refresh());
    std::vector<Signature> all;
    for (const db::StoredLedger &ledger : must(store.ledgers()))
        for (const core::Entry &entry : must(session::readEntries(store, *ledger.id())))
            all.push_back({session.reg().person(entry.said.author)->key.bytes(), entry.bytes, entry.signature});
    return all;
}

double checkAll(const std::vector<Signature> &all)
{
    std::atomic_int bad = 0;
    const double seconds = secondsOf([&] {
        const std::span<const Signature> whole(all);
        std::thread second([&] { checkSome(whole.subspan(whole.size() / 2), bad); });
        checkSome(whole.first(whole.size() / 2), bad);
        second.join();
    });
    if (bad > 0)
        giveUp(u"%1 signatures of the bench's own store do not hold."_s.arg(bad));
    return seconds;
}

} // namespace bench
