// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/reports/job_record.hpp"

namespace core {

/// All that one person signed in a job, and what they were allowed when they did.
struct PersonSigned {
    PersonId person;
    QString name;                       ///< as the register had it when they signed last
    std::vector<Digest> keys;           ///< fingerprints, in the order in which they were used
    std::vector<Authorisation> held;    ///< each that was in force when one of the entries was signed, as it stood then first
    bool isRoot;                        ///< looks after the register without an authorisation
    std::vector<const Entry *> entries; ///< in order, also those that were struck
};

/// Everybody who signed, in the order of their first entries. The entries are those of `record`, and last as long as it does.
std::vector<PersonSigned> signatures(const JobRecord &record);

/// Why the entry's signature is in doubt, or nullptr: somebody else may have had its author's key at that moment, as the register had it when the
/// job's last entry was signed. What the register came to say later belongs into no record of before.
const KeyDoubt *signatureDoubt(const JobRecord &record, const Entry &entry);

/// The same as one register has it.
const KeyDoubt *signatureDoubt(const Register &reg, const Statement &said);
/// The numbers of the entries whose signatures are in doubt, in order.
std::vector<qint64> entriesInDoubt(const JobRecord &record);

/// The people by their names, then by their ids.
std::vector<PersonSigned> byName(std::vector<PersonSigned> people);

} // namespace core
