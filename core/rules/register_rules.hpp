// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// What may stand in the register.

std::optional<Refusal> registerIsNotFounded(const Register &reg, const Draft &draft);
std::optional<Refusal> founderFoundsForThemselves(const Register &reg, const Draft &draft);
std::optional<Refusal> registerIsFounded(const Register &reg, const Draft &draft);
std::optional<Refusal> registerClockDoesNotRunBack(const Register &reg, const Draft &draft);
std::optional<Refusal> authorAdministers(const Register &reg, const Draft &draft);
/// An id is never used again, not even after somebody left.
std::optional<Refusal> personIsNew(const Register &reg, const Draft &draft);
std::optional<Refusal> personIsEnrolled(const Register &reg, const Draft &draft);
/// One key, one person: a second identity of the same hands would break independence.
std::optional<Refusal> keyIsNobodysYet(const Register &reg, const Draft &draft);
/// A stopped key signs nothing, whatever its owner may.
std::optional<Refusal> authorsKeyStands(const Register &reg, const Draft &draft);
std::optional<Refusal> keyIsStoppedOnce(const Register &reg, const Draft &draft);
/// Nobody stops their own key: they replace it.
std::optional<Refusal> ownKeyIsReplaced(const Register &reg, const Draft &draft);
std::optional<Refusal> doubtOfKeyIsPast(const Register &reg, const Draft &draft);
std::optional<Refusal> authorisationIsNew(const Register &reg, const Draft &draft);
std::optional<Refusal> granteeIsEnrolled(const Register &reg, const Draft &draft);
std::optional<Refusal> datesRunForward(const Register &reg, const Draft &draft);
std::optional<Refusal> authorisationStands(const Register &reg, const Draft &draft);
std::optional<Refusal> toolIsNew(const Register &reg, const Draft &draft);
std::optional<Refusal> toolIsInUse(const Register &reg, const Draft &draft);
std::optional<Refusal> toolRangeIsSound(const Register &reg, const Draft &draft);
/// Graduation, deviation and length can be what they are said to be.
std::optional<Refusal> toolFiguresAreSound(const Register &reg, const Draft &draft);

/// A torque tool says of which type it is, and one that is set has marks.
std::optional<Refusal> torqueToolIsTold(const Register &reg, const Draft &draft);

/// A tool is doubted from a day that is past.
std::optional<Refusal> doubtIsAboutThePast(const Register &reg, const Draft &draft);

extern const RegisterRule notFounded, founder, founded, registerClock, administers, personNew, personKnown, keyNew, authorisationNew, granteeKnown, dates,
    keyStands, keyStoppedOnce, keyNotOwn, keyDoubtPast, authorisationOpen, toolNew, toolKnown, toolRangeSound, toolFiguresSound, torqueToolTold, doubtPast;

} // namespace core::rules
