// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/kinds/kinds.hpp"
#include "core/register/register.hpp"
#include "core/reports/audit_table.hpp"

namespace core {

/// One interface that was drawn.
struct Drawn {
    InterfaceId id;
    Digest rank;                 ///< by which it was drawn
    std::vector<qint64> entries; ///< its evidence, in order: see entriesAbout
    bool operator==(const Drawn &) const = default;
};

/// A sample of a job's interfaces that anybody can draw again.
struct Sample {
    QString seed;
    qsizetype among; ///< so many interfaces stood on the list
    std::vector<Drawn> drawn;
    bool operator==(const Sample &) const = default;
};

/// SHA-256 of the UTF-8 bytes of the seed, a line feed, and the interface's id.
Digest rankOf(const InterfaceId &id, const QString &seed);

/// The `count` interfaces of the job's list with the smallest ranks, the smallest first; all of them where there are fewer. A rank compares as
/// its 64 hex digits do. Each set of that size is as likely as any other, for a seed that was chosen without looking.
Sample sampleOf(const JobState &job, qsizetype count, const QString &seed);

/// Every entry about an interface, by its sequence number: whose subject it is, or a finding on it; whose body names it; and what struck one of
/// these. Struck ones too.
std::vector<qint64> entriesAbout(const JobState &job, const InterfaceId &id);

/// The sample with all its evidence: signer, time, meaning, what was said, standing, hash.
AuditTable sampleTable(const JobState &job, const Register &reg, const Kinds &kinds, const Sample &sample);

} // namespace core
