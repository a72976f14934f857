// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>

#include "app/session/verify_store.hpp"

namespace session {

/// The verdict in one sentence, as a screen or a command says it first.
QString verdictSentence(const VerifyReport &report);

/// What the verdict does not say, in sentences: reservations, and what nobody gave to compare with.
QStringList verdictLimits(const VerifyReport &report, const Known &known);

/// Where the fault is: `job, entry 17`, `register, entry 3`, `package`.
QString placeInWords(const core::Fault &fault, const VerifyReport &report);

} // namespace session
