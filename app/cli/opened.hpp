// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <memory>

#include "app/cli/command.hpp"
#include "app/session/session.hpp"
#include "db/store.hpp"

namespace cli {

/// The store that the arguments name, and a session on it that has read what is there.
struct Opened {
    std::unique_ptr<db::Store> store;
    std::unique_ptr<session::Session> session;
};

core::Result<Opened> openStore(const Arguments &arguments, const Context &context, db::Access access);

/// Whether a command has a use for what is sound of a damaged job.
enum class IfDamaged { Refuse, Show };

/// The same with the named job opened, or the only one. BadInput when it is not clear which one is meant; Damaged when it is
/// and the command refuses that.
core::Result<Opened> openJob(const Arguments &arguments, const Context &context, db::Access access, IfDamaged ifDamaged = IfDamaged::Refuse);

/// Opens the job that `named` means: a ledger or a work order; or the only one when nothing is named.
core::Result<void> openNamedJob(session::Session &session, const std::optional<QString> &named);

/// The person that an option names. BadInput when the text cannot be an id.
core::Result<core::PersonId> personIn(const Arguments &arguments, const QString &option);

} // namespace cli
