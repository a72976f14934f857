// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <array>
#include <vector>

#include "core/job/state.hpp"
#include "core/register/register.hpp"
#include "core/reports/audit_table.hpp"

namespace core {

/// One thing that a sheet tells of. Things that follow each other and stand alike under the same heading share a line.
struct SheetThing {
    QString under; ///< the zone, the hold point, who has it
    QString state; ///< told in a word, so that a copier without colours loses nothing
    QString what;
    bool operator==(const SheetThing &) const = default;
};

/// Whether each way of standing has a line of its own, or all under one heading share one and begin a row of text in it: less room for many.
enum class SheetSetting { LineAState, LineAHeading };

struct SheetPart {
    QString title; ///< over what things are under: short, it stands in a column
    std::array<QString, 2> columns; ///< over how they stand, and over what they are
    std::vector<SheetThing> things;
    QString whenEmpty;
    SheetSetting setting = SheetSetting::LineAState;
};

/// A sheet that has to fit one printed page: what it says, and not yet how much of it there is room for.
struct OnePage {
    QString title;
    std::vector<AuditFact> facts;
    std::vector<SheetPart> parts;
    QString foot; ///< entry and hash that fix what is said
};

enum class SheetSort {
    Wall,     ///< what is open now, for everybody who walks past it
    Handover, ///< what the person who comes reads
};

/// What is open now, zone by zone; hold points not passed; what is on for the job and must come off; who leads.
OnePage wallSheet(const JobState &job, const Register &reg, Instant printed);

/// The words of the last handover, work that was stopped half done, what is loose by zone, what is on for the job, who has tools and tags,
/// findings, and whatever else a handover names.
OnePage handoverSheet(const JobState &job, const Register &reg, Instant printed);

OnePage sheetOf(SheetSort sort, const JobState &job, const Register &reg, Instant printed);

/// A line of a part as it is printed.
struct SheetLine {
    QString under;
    QString state; ///< empty where a heading has one line
    QString what; ///< joined by semicolons; after each way of standing, where a heading has one line
    bool operator==(const SheetLine &) const = default;
};

/// The first `most` things of a part in lines.
std::vector<SheetLine> linesOf(const SheetPart &part, qsizetype most);

/// What stands in place of the things that are left out: `and 7 more; see the program`. Empty where none is.
QString leftOutInWords(const SheetPart &part, qsizetype most);

/// A free text in at most `most` characters; of a longer one, its beginning, and that it goes on.
QString shortened(const QString &text, qsizetype most);

} // namespace core
