// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <functional>
#include <utility>
#include <vector>

#include "core/ledger/entry.hpp"
#include "core/ledger/seal.hpp"
#include "core/rules/refusal.hpp"
#include "core/value/result.hpp"

namespace session {

/// Why nothing was signed.
struct NotSigned {
    core::Error error; ///< Refused when rules said no
    /// What the rules said, each with the index of the draft that it is about. Empty unless the error is Refused.
    std::vector<std::pair<std::size_t, core::Refusals>> refusals;
};

/// The entries of one signature, in order; or nothing at all was written.
using Signed = tl::expected<std::vector<core::Entry>, NotSigned>;

/// Who signs, and the secret that shows it.
struct Signer {
    core::PersonId person;
    QString secret;
};

/// Unlocks a private key. Called once and only after every draft has been admitted.
using KeySource = std::function<core::Result<core::SigningKey>()>;

} // namespace session
