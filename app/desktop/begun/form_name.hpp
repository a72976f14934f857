// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/begun/begun_forms.hpp"
#include "app/session/session.hpp"

namespace desktop {

/// The form of that act in the session's store; nothing while the store has no register yet.
inline std::optional<FormName> formName(const session::Session &session, const std::optional<core::LedgerId> &job, QLatin1String act, const QStringList &subjects = {})
{
    const auto &store = session.reg().ledger;
    return store ? std::optional(FormName{store->text(), job ? job->text() : QString(), QString(act), subjects}) : std::nullopt;
}

} // namespace desktop
