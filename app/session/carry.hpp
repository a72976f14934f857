// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <chrono>

#include "app/session/session.hpp"

namespace session {

/// How long a transfer is open unless somebody says otherwise, and at most.
constexpr std::chrono::hours usualTransfer{24};
constexpr std::chrono::hours longestTransfer{24 * 7};

/// What is shown once and typed at the other station.
struct TransferOffer {
    QString code;
    core::Instant until;
};

/// Leaves a copy of a person's key in the store for another station, sealed with their PIN and a code that is in no file. Late transfers
/// of the store are removed on the way. Errors as of Session::unlock; BadInput for a time that is not between a minute and `longestTransfer`.
core::Result<TransferOffer> offerTransfer(Session &session, const Signer &person, std::chrono::minutes open = usualTransfer);

/// Takes a key over at this station. The code works once. NotFound when no transfer of this code is open, or its key was replaced or stopped
/// since; BadInput when the code is mistyped; else as Session::unlock.
core::Result<core::PersonId> takeTransfer(Session &session, const QString &code, const QString &secret);

} // namespace session
