// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/reports/one_page.hpp"
#include "core/value/in_words.hpp"

/// What the sheets of one page share in being made.
namespace core::sheets {

/// Free texts have no limit of their own; a page has.
constexpr qsizetype mostOfAName = 60;
constexpr qsizetype mostOfATitle = 120;
constexpr qsizetype mostOfAThing = 200;

/// Job, aircraft, who leads, a handover that waits, the last entry, and when this was printed.
std::vector<AuditFact> factsOf(const JobState &job, const Register &reg, Instant printed);

/// `Entry 41  <hash>`; empty for a job without entries.
QString footOf(const JobState &job);

/// Zone by zone in the order of the job; what is of no zone last.
void sortByZone(std::vector<SheetThing> &things, const JobState &job);

/// The zone for a line; in words where there is none.
QString zoneText(const QString &zone);

/// Everything that was put on for the job and is still on, zone by zone; a lockout with whose it is.
SheetPart appliedPart(const JobState &job, const Register &reg);

} // namespace core::sheets
