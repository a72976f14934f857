// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDate>

#include <map>

#include "app/demo/cast.hpp"
#include "app/demo/day_clock.hpp"
#include "app/session/session.hpp"
#include "core/kinds/kinds.hpp"

namespace demo {

/// The scenario while it is played. Everything goes the way that screens and commands go: draft, admitted, signed, appended.
struct Play {
    session::Session &session;
    DayClock &clock;
    QDate day;
    const core::Kinds &kinds;
    std::map<core::PersonId, core::SigningKey> keys; ///< unlocked once
    std::optional<core::LedgerId> job{};         ///< of which the story tells at the moment
    QString named{};                             ///< and its name in the story
    std::map<QString, core::LedgerId> jobs{};    ///< all that were opened, by their names

    const core::JobState &state() const { return *session.state(); }
};

/// Goes on to tell of the job of that name, when it was opened already.
core::Result<void> turnTo(Play &play, const QString &job);

/// Signs drafts of one person in a ledger. The error of a refusal names the rules, since a refused story is a mistake in it.
core::Result<void> say(Play &play, const core::LedgerId &ledger, const std::vector<core::Draft> &drafts);

/// The same in the job.
core::Result<void> say(Play &play, const std::vector<core::Draft> &drafts);

/// A draft about something in the job; its moment is set when it is signed.
core::Draft draft(const QString &who, const QString &kind, const std::optional<QString> &subject, core::json::Object body);

} // namespace demo
