// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

/// Conditions and gates mean something, and it holds something back.
std::optional<Refusal> holdIsSound(const Case &c);
/// Set or changed only before it matters: never once it was passed, nor once something behind it was done.
std::optional<Refusal> holdIsSetInTime(const Case &c);
/// A hold point that is set already is set anew with less by somebody who has the authority to pass it.
std::optional<Refusal> holdIsLessenedByWhoPasses(const Case &c);
std::optional<Refusal> holdIsSet(const Case &c);
std::optional<Refusal> holdIsNotPassed(const Case &c);
std::optional<Refusal> holdConditionsAreMet(const Case &c);
/// Each statement of the hold point is confirmed, and nothing else.
std::optional<Refusal> holdStatementsAreConfirmed(const Case &c);
std::optional<Refusal> signerMayPass(const Case &c);
/// Where the hold point asks for it: no hand in any interface that its conditions are about.
std::optional<Refusal> signerHadNoHand(const Case &c);
/// Asked of every entry: it waits for no hold point.
std::optional<Refusal> noHoldIsBefore(const Case &c);

extern const Rule holdSound, holdInTime, holdLess, holdKnown, holdOnce, holdConditions, holdStatements, holdAuthority, holdIndependent, holdGate;

} // namespace core::rules
