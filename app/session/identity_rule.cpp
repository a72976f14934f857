// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/identity_rule.hpp"

namespace session {

IdentityRule::IdentityRule(Clock clock, Span idleLimit)
    : m_clock(std::move(clock)), m_idleLimit(idleLimit), m_touched(m_clock())
{
}

std::optional<core::PersonId> IdentityRule::currentSigner() const
{
    return timeLeft() > Span::zero() ? m_signer : std::nullopt;
}

Asks IdentityRule::asksOf(const core::PersonId &person) const
{
    return currentSigner() == person ? Asks::SecretAlone : Asks::IdentityAndSecret;
}

void IdentityRule::signedBy(const core::PersonId &person)
{
    m_signer = person;
    m_touched = m_clock();
}

void IdentityRule::touch()
{
    if (timeLeft() > Span::zero())
        m_touched = m_clock();
    else
        lock();
}

void IdentityRule::lock() { m_signer.reset(); }

IdentityRule::Span IdentityRule::timeLeft() const
{
    const Span away(m_clock().milliseconds() - m_touched.milliseconds());
    // A clock that was set back says nothing about how long nobody was there.
    if (!m_signer || away < Span::zero() || away >= m_idleLimit)
        return Span::zero();
    return m_idleLimit - away;
}

} // namespace session
