// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDate>
#include <QHash>
#include <QString>

#include <map>
#include <optional>
#include <vector>

#include "core/ledger/entry.hpp"
#include "core/ledger/seal.hpp"
#include "core/value/quantity.hpp"

namespace core {

/// A span in which somebody else may have signed with a person's key. What was signed in it stands, and is to be asked after.
struct KeyDoubt {
    Instant since; ///< suspected
    Instant until; ///< when the key was stopped or replaced
    QString reason;
    bool operator==(const KeyDoubt &) const = default;
};

struct Person {
    PersonId id;
    QString name;
    PublicKey key; ///< the one that signs now
    Instant enrolledAt;
    std::vector<PublicKey> formerKeys; ///< replaced; what they signed stays valid
    std::vector<KeyDoubt> keyDoubts{};
    std::optional<Instant> keyStopped{}; ///< signs nothing more, and has no successor yet
    bool operator==(const Person &) const = default;
};

/// What an authorisation lets a person do. Stable texts, see authorityText().
enum class Authority {
    Administer, ///< enrol people, grant authorisations, look after the tools
    Work,       ///< disconnect, reconnect, torque, measure
    Lead,       ///< open a job, take over a shift, strike the crew's mistakes
    Inspect,    ///< accept or reject what others did
    Overrule,   ///< set aside an inspector's rejection
    Release,    ///< close a job
};

QString authorityText(Authority authority);
std::optional<Authority> parseAuthority(QStringView text);
const std::vector<Authority> &allAuthorities();

struct Authorisation {
    AuthorisationId id;
    PersonId person;
    Authority authority;
    std::vector<QString> kinds;         ///< interface kinds that it covers; empty for all
    std::vector<QString> aircraftTypes; ///< empty for all
    QDate from;                         ///< first day, UTC
    std::optional<QDate> until;         ///< last day, UTC
    std::optional<Instant> withdrawn;
    QString reference; ///< the approval document behind it
    bool operator==(const Authorisation &) const = default;
};

struct Calibration {
    QDate on;
    QDate due; ///< last day on which the tool may be used
    QString certificate;
    std::optional<Decimal> deviation{}; ///< as its certificate states it, in percent of the reading
    bool operator==(const Calibration &) const = default;
};

/// A tool that was found out of tolerance: whatever it measured after it was last known to be right is in doubt.
struct Doubt {
    QDate after; ///< the last day on which it was known to be right
    Instant at;  ///< when that was said
    QString found;
    QString certificate;
    bool operator==(const Doubt &) const = default;
};

/// How a torque tool tells what it gives: ISO 6789 type I and type II.
enum class TorqueToolType {
    Indicating, ///< type I: a scale or display shows what the fastener gets
    Setting,    ///< type II: clicks or slips at what it was set to
};

struct Tool {
    ToolId id;
    QString name;
    std::optional<Quantity> rangeMin; ///< usable range; both or neither
    std::optional<Quantity> rangeMax;
    std::vector<Calibration> calibrations; ///< oldest first
    std::optional<Instant> withdrawn;
    std::optional<Quantity> graduation{}; ///< one step of its scale or display
    std::optional<Decimal> deviation{};   ///< permissible by its class, in percent of the reading
    QString deviationSource{};            ///< the standard and class that say so
    std::optional<Quantity> length{};     ///< of a wrench: middle of the grip to the square drive
    std::optional<TorqueToolType> torqueType{}; ///< of a tool for torque
    std::vector<Doubt> doubts{};
    bool operator==(const Tool &) const = default;
};

/// People, authorisations, tools and calibrations: the fold of the register ledger.
struct Register {
    std::optional<LedgerId> ledger;
    std::optional<PersonId> root;
    QString organisation;
    Digest fingerprint; ///< hash of the first entry: shown, printed, and pinned when verifying
    std::map<PersonId, Person> people;
    std::map<AuthorisationId, Authorisation> authorisations;
    std::map<ToolId, Tool> tools;
    Head head;
    std::optional<Instant> lastAt;
    /// The last entry of any job, as far as whoever signs next can see the jobs. Not in the register's own ledger.
    std::optional<Instant> jobsLastAt{};

    const Person *person(const PersonId &id) const;
    const Tool *tool(const ToolId &id) const;
    /// The printed name, or the id where nobody of that id is enrolled.
    QString nameOf(const PersonId &id) const;
    bool operator==(const Register &) const = default;
};

/// Takes one more entry into the register. The entry was admitted, or stands in a ledger under verification: anything that
/// makes no sense in this state is passed over, and the rules say so when they are asked.
void fold(Register &reg, const Statement &said, const Digest &hash);

/// Everything an authorisation is asked for.
struct Need {
    Authority authority;
    std::optional<QString> kind{};         ///< of interface
    std::optional<QString> aircraftType{}; ///< of the job
    Instant at;
};

/// The authorisation by which the person may, at that moment; or nullptr. The root person may administer without one.
const Authorisation *authorisationFor(const Register &reg, const PersonId &person, const Need &need);
bool mayAdminister(const Register &reg, const PersonId &person, Instant at);

/// Why not, in words: none granted, out of scope, not yet valid, run out, withdrawn.
QString whyNotAuthorised(const Register &reg, const PersonId &person, const Need &need);

/// As it stands in entries: `indicating`, `setting`.
QString torqueToolTypeText(TorqueToolType type);
std::optional<TorqueToolType> parseTorqueToolType(QStringView text);

/// The doubt that covers a signature of that moment, or nullptr. The moment is the signer's clock's.
const KeyDoubt *keyDoubtAt(const Person &person, const Instant &at);

/// The calibration that covers the day, or nullptr.
const Calibration *calibrationOn(const Tool &tool, QDate day);
/// The doubt that covers the day, or nullptr: after the day on which the tool was last known to be right, up to when it was found out.
const Doubt *doubtOn(const Tool &tool, QDate day);
/// The last doubt of a tool that has not been calibrated since, or nullptr.
const Doubt *openDoubt(const Tool &tool);
/// What the tool may be off, in percent of the reading: as the certificate that covers the day states it, else by its class.
std::optional<Decimal> deviationOn(const Tool &tool, QDate day);

} // namespace core
