// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/job/state.hpp"
#include "core/register/register.hpp"
#include "core/reports/audit_table.hpp"

namespace core {

/// What a signature stands for, as far as a picture tells them apart.
enum class SignedAs {
    Work,    ///< did it
    Look,    ///< looked at it: inspected, confirmed, walked round, passed a hold point
    Record,  ///< wrote it down
    Release, ///< released
};

/// From the meaning of an entry, `performed`; whatever is none of the others is Record.
SignedAs signedAs(QStringView meaning);
/// In words, translated.
QString signedAsWord(SignedAs as);

/// One signature.
struct SigningMark {
    qint64 seq;
    Instant at;
    SignedAs as;
    bool counts;  ///< neither struck nor fallen
    bool inBurst; ///< one of many in a short time, see burstsOfSigning
    bool operator==(const SigningMark &) const = default;
};

/// Everything that one person signed in a job.
struct SigningLane {
    PersonId person;
    QString name;
    std::vector<SigningMark> marks; ///< in order
};

/// A shift begins with the job, and with each handover that was accepted and counts. Ends with the next one, the last with the last entry.
struct Shift {
    qint64 first; ///< entry
    Instant from;
    Instant until;
    bool operator==(const Shift &) const = default;
};

/// Who signed what when: a lane a person, in the order in which they signed first.
struct Signings {
    std::vector<SigningLane> lanes;
    std::vector<Shift> shifts;
};

Signings signingsOf(const JobState &job, const Register &reg);

/// The same as a table: a row a person and shift, with how many signatures of each sort and when the first and the last.
AuditTable signingsTable(const JobState &job, const Register &reg);

} // namespace core
