// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>

#include "core/register/register.hpp"
#include "core/value/result.hpp"
#include "db/where_used.hpp"

namespace session {

/// What somebody asks of the store, as they typed it.
struct UsesQuestion {
    QString sort;                   ///< one of wantedSorts()
    QString value;                  ///< its id or number; of a person the name as well
    std::optional<QString> kind{};  ///< of entries, `torque.applied`; nothing: all
    std::optional<QString> from{};  ///< first day, `2026-03-02`, UTC
    std::optional<QString> until{}; ///< last day
};

/// The question as the index takes it: whole days, and the id of who is known by that name.
/// BadInput where nothing found would look like an answer and is none: no name at all, a kind that no entry has, days that are none or run
/// backwards, a name that several people have.
core::Result<db::Wanted> wantedBy(const UsesQuestion &question, const core::Register &reg);

/// A tool or a person; the other sorts stand in no register.
bool isOfRegister(QStringView sort);
/// Whether the register knows the tool or person.
bool isRegistered(const db::Wanted &wanted, const core::Register &reg);

/// The sort, translated: `Tool`. And within a sentence: `tool`.
QString sortInWords(QStringView sort);
QString sortInSentence(QStringView sort);
/// What is looked for, with the name that the register has for it: `TW-15 (Torque wrench 1/2 in)`.
QString thingInWords(const db::Wanted &wanted, const core::Register &reg);
/// The days that were asked for: `from 2026-03-02 00:00:00 UTC to …`, `up to …`, `of all its time`.
QString daysInWords(const std::optional<db::Between> &between);

} // namespace session
