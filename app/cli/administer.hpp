// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/cli/opened.hpp"
#include "app/cli/secrets.hpp"

namespace cli {

/// A store open for writing, and the administrator who signs, as the arguments name them.
struct Administration {
    Opened opened;
    Secrets secrets;
    session::Signer administrator;

    session::Session &session() { return *opened.session; }
};

core::Result<Administration> administer(const Arguments &arguments, const Context &context);

/// Signs drafts on the register.
session::Signed signOnRegister(Administration &administration, const std::vector<core::Draft> &drafts);

/// Reads a moment such as 2026-03-02T08:14:00Z, with any offset.
core::Result<core::Instant> momentIn(const QString &text);

/// Reads a day such as 2026-03-02.
core::Result<QDate> dayIn(const QString &text);

} // namespace cli
