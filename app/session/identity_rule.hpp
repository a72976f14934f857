// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <chrono>
#include <optional>

#include "app/session/clock.hpp"
#include "core/value/id.hpp"

namespace session {

/// What a person must type to sign.
enum class Asks {
    IdentityAndSecret, ///< who they are, and the secret
    SecretAlone,       ///< they signed last, and have not been away
};

/// Several people share one computer, so who is signing must never be guessed. The first signature of a sitting takes
/// identity and secret, later ones of the same person the secret alone; another person, a lock, or a computer left alone for
/// too long takes both again.
class IdentityRule {
public:
    using Span = std::chrono::milliseconds;
    static constexpr Span usualIdleLimit = std::chrono::minutes(5);

    explicit IdentityRule(Clock clock, Span idleLimit = usualIdleLimit);

    /// Who may sign with the secret alone, or nothing.
    std::optional<core::PersonId> currentSigner() const;
    Asks asksOf(const core::PersonId &person) const;

    /// This person has just signed.
    void signedBy(const core::PersonId &person);
    /// Somebody is at the computer: a key or the mouse. Wakes nobody who is locked out already.
    void touch();
    /// The sitting is over.
    void lock();

    /// How much of the sitting is left when nobody touches anything; zero when there is none.
    Span timeLeft() const;
    Span idleLimit() const { return m_idleLimit; }
    void setIdleLimit(Span limit) { m_idleLimit = limit; }

private:
    Clock m_clock;
    Span m_idleLimit;
    std::optional<core::PersonId> m_signer;
    core::Instant m_touched;
};

} // namespace session
