// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <set>

#include "core/reports/report.hpp"
#include "core/reports/timeline.hpp"
#include "core/value/in_words.hpp"

/// What the reports of this folder share in making their rows.
namespace core::reporting {

/// The name and id of a person as the register of that entry had them: `Ben Ortiz (ben)`.
QString personText(const Register &reg, const PersonId &id);

/// Who made the entry, by the name pinned with it.
QString signerOf(const JobRecord &record, const Mark &mark);
/// What the signature means, in one word: `performed`, `inspected`. A meaning that this version does not know stands as it is.
QString meaningWord(QStringView meaning);
/// That of the entry, or nothing where the job has no such entry.
QString meaningOf(const JobRecord &record, const Mark &mark);
/// Who, with which meaning, and when: `Ben Ortiz, performed 2026-03-02 07:03:00 UTC`.
QString signedText(const JobRecord &record, const Mark &mark);

/// Whether an entry stands, in words: empty when it does, else what struck it and why, or that it fell.
QString standingText(const JobRecord &record, const Line &line);

/// Values that the entries mention, of one sort of reference: `person`, `tool`.
std::set<QString> mentioned(const JobRecord &record, const QString &sort);

/// One row for each entry of that kind, in the order of the list and then of the ledger; entries on the job as a whole last.
struct EntryOnItem {
    const Entry *entry;
    const Line *line;
    const InterfaceState *item; ///< nullptr where the job does not list it any more
};
std::vector<EntryOnItem> entriesOfKind(const JobRecord &record, QStringView kind);

/// Whether what an entry says is still so, as far as the entry itself stands.
enum class Counts { Yes, No };

/// What a row about a signed fact ends with: `by`, `meaning`, `at`, `entry`, `worth`. A fact that does not count any more is struck through.
std::vector<ReportColumn> withClosing(std::vector<ReportColumn> first);
ReportRow closedRow(const JobRecord &record, const EntryOnItem &on, std::vector<QString> first, Counts counts);

/// `E12 Bleed duct, forward`
QString itemText(const InterfaceState *item, const Entry &entry);

} // namespace core::reporting
