// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/ledger/entry.hpp"
#include "core/ledger/seal.hpp"
#include "db/store.hpp"

/// Entries made by hand, as the session would make them, but with no rule asked: the store holds what it is given.
namespace entries {

/// One person with a key.
struct Hand {
    core::PersonId person;
    core::SigningKey key;
};
/// The same name gives the same key, in every program.
Hand hand(const QString &name);
/// The second key of a station; the same in every program.
core::SecondKey station(const QString &name = QStringLiteral("here"));

core::LedgerId ledger(const QString &name);

struct Act {
    QString kind = QStringLiteral("interface.listed");
    std::optional<QString> subject = QStringLiteral("W3J1");
    core::json::Object body{};
    std::optional<core::Instant> at{}; ///< else a second for each entry that came before
};
/// When the first entry of every ledger is made, unless it says otherwise.
core::Instant firstMoment();

/// The entry that follows `head` in `ledger`. `reg` is the pinned register head; nothing for the register's own.
core::Entry after(const core::Head &head, const core::LedgerId &ledger, const std::optional<core::Head> &reg, const Hand &hand,
                  const Act &act = {});

/// So many of them, one after another.
std::vector<core::Entry> chain(int count, const core::Head &head, const core::LedgerId &ledger,
                               const std::optional<core::Head> &reg, const Hand &hand, const Act &act = {});

/// Appends one entry at the ledger's present head, the register's present head pinned; made again when the head moved.
core::Result<void> appendOne(db::Store &store, const core::LedgerId &ledger, const Hand &hand, const Act &act = {});

/// Begins the register `register` with `count` entries and returns its head.
core::Head beginRegister(db::Store &store, int count = 1);

} // namespace entries
