// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/job/state.hpp"
#include "core/kinds/kind.hpp"
#include "core/ledger/entry.hpp"
#include "core/register/register.hpp"

namespace core {

/// One entry in one sentence, translated: `Disconnected E12. Tag: 17; Blanks fitted: 2; As found: sound.` Built from the
/// act's words and the labels of its fields, so a new act needs nothing here. With the kind of the interface at hand, its own
/// verb is used: `Released M1.`
QString describe(const Statement &said, const Register &reg, const Kind *kind = nullptr);

/// A moment as people read it, to the second, always with its zone: `2026-03-02 08:14:31 UTC`.
QString momentText(Instant at);
/// The moment of an entry, and that somebody called it in doubt: `2026-03-02 08:14:31 UTC, in doubt (entry 52)`. What was signed stays what it is.
QString momentText(const JobState &job, qint64 seq, Instant at);

} // namespace core
