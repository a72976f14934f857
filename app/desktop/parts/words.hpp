// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/acts/act.hpp"
#include "core/job/state.hpp"
#include "core/ledger/entry.hpp"
#include "core/register/register.hpp"
#include "core/rules/refusal.hpp"

namespace desktop {

/// What an act, a field or an item is called on a screen, translated.
QString verbOf(const core::Act &act);
QString doneOf(const core::Act &act);
QString labelOf(const core::Field &field);
/// A choice of a form as a cell or a line begins with it.
QString choiceInWords(QStringView choice);
/// The same within a sentence, as each language writes it there.
QString choiceMidSentence(QStringView choice);
QString itemInWords(const core::InterfaceState &item);

/// `2 Mar 2026, 08:14 UTC`. Records are kept in UTC, so screens show it too.
QString momentInWords(const core::Instant &at);
/// The same of an entry, and whether somebody called it in doubt.
QString momentInWords(const core::JobState &job, qint64 seq, const core::Instant &at);
/// `Ana Sol, 2 Mar 2026, 08:14 UTC`
QString markInWords(const core::Mark &mark, const core::JobState &job, const core::Register &reg);

/// One member of a body as a person reads it: names for ids of people and tools, words for choices. Empty for what only a
/// machine reads.
QString valueInWords(const core::Field &field, const core::json::Value &value, const core::Register &reg);

/// All members of a body that are filled, as `Tag: 14 · Blanks fitted: 1`.
QString bodyInWords(const core::Act &act, const core::json::Object &body, const core::Register &reg);

/// Whom or what an entry of an act of that sort is about: `E12 Bleed duct, forward`; the subject itself where the job knows no such thing.
QString subjectInWords(core::SubjectSort sort, const std::optional<QString> &subject, const core::JobState &job);

/// What the walk-round found since the item was undone: `still attached: one bolt behind it`, `confirmed free`; empty before anybody looked.
QString walkRoundInWords(const core::InterfaceState &item);

/// `3 × BOLT-6, 1 × SEAL-28 (always new)`
QString hardwareInWords(const std::vector<core::HardwareLine> &listed);
QString hardwareInWords(const std::vector<core::HardwareRemoved> &removed);
/// `BOLT-6: 3 reused, 1 renewed of L-8; SEAL-28: 1 renewed of L-7, 1 scrapped`
QString hardwareInWords(const std::vector<core::HardwareUse> &used);

/// A column as spreadsheets name it: 1 is A, 27 is AA.
QString spreadsheetColumn(qint64 column);

/// The sentences of refusals, each once, and who can clear them.
QString refusalsInWords(const core::Refusals &refusals);

} // namespace desktop
