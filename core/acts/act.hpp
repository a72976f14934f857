// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>
#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

#include "core/job/state.hpp"
#include "core/ledger/entry.hpp"
#include "core/tables/from_table.hpp"

namespace core {

/// What may stand in one member of an entry's body.
enum class FieldType {
    Text,
    Integer, ///< 0 or more
    Flag,
    Date,    ///< `2026-03-02`
    Moment,  ///< RFC 3339, in the ledger's form
    Decimal, ///< a text, as typed
    Unit,
    Quantity, ///< a decimal and its unit in one text, `117 lbf·in`, of the field's dimension
    Choice, ///< one of `choices`
    Person,
    Interface,
    Tool,
    Job,    ///< another job, by its ledger
    Digest,         ///< of an attachment, which the store keeps
    DigestElsewhere, ///< of a file that the store does not keep
    PublicKey,
    Texts,
    Statements, ///< texts that a person ticks one by one, from those that the thing in question asks for
    People,
    Interfaces,
    Records, ///< an array of objects: of the columns of the field, or checked by the act's own rules where it names none
};

enum class Needed { Always, IfKnown };

/// One member of an entry's body. Forms, the check of form, the where-used index and the record all read this.
struct Field {
    QLatin1String name;
    FieldType type;
    Needed needed;
    const char *label;                  ///< for screens, marked for translation in context "Field"
    std::vector<QLatin1String> choices; ///< for Choice
    QLatin1String refersTo;             ///< sort of where-used reference: `person`, `tool`, `part`, `batch`, `serial`, `certificate`; or empty
    std::optional<Dimension> dimension{}; ///< of a Quantity, and of a Unit that measures one thing alone
    /// Of Records: one line's members, each of type Text, Integer or Flag. The check of form, the table on a sheet, the list's cell, the
    /// timeline and the where-used index read them here.
    std::vector<Field> columns{};
};

enum class LedgerSort { Job, Register };

/// What the entry's subject must name.
enum class SubjectSort { Nothing, NewInterface, Interface, NewFinding, Finding, Person, NewPerson, NewAuthorisation, Authorisation, NewTool, Tool, NewTemporary, Temporary, HoldPoint, NewTest, NewAccessory, Accessory, NewJobTool, JobTool };

/// One kind of entry: its form, and what it does to a job. Its rules stand in rules/rulebook.cpp.
struct Act {
    QLatin1String kind;
    LedgerSort ledger;
    QLatin1String meaning; ///< of the signature: `performed`, `inspected`, `reinspected`, `confirmed`, `seen`, `passed`, `recorded`, `released`
    SubjectSort subject;
    const char *verb; ///< on a button: "Disconnect"
    const char *done; ///< in a timeline: "Disconnected"
    std::vector<Field> fields;
    /// Takes the entry into the job. False when the state that it rests on is not there (it was struck): the entry falls.
    /// Null for the register's acts, which register/fold.cpp takes.
    bool (*take)(JobState &, const Statement &);
    QStringList (*cautions)(); ///< what to mind at the work, whatever the kind of interface
    /// To be read while the form is filled in. No column is named: what is signed comes from the work and the maintenance data.
    std::vector<FromTable> tables;
};

/// Every act, grouped by file.
const std::vector<Act> &acts();
const Act *findAct(QStringView kind);

/// The signature's meaning in words for the person who signs: "I performed this work", translated.
QString meaningInWords(QStringView meaning);


// Rows of the catalogue, one function a file of this folder.
std::vector<Act> jobActs();
std::vector<Act> interfaceActs();
std::vector<Act> photoActs();
std::vector<Act> conditionActs();
std::vector<Act> breakPointActs();
std::vector<Act> unlistedActs();
std::vector<Act> untouchedActs();
std::vector<Act> measuringActs();
std::vector<Act> figureActs();
std::vector<Act> temporaryActs();
std::vector<Act> holdActs();
std::vector<Act> walkRoundActs();
std::vector<Act> unitActs();
std::vector<Act> testActs();
std::vector<Act> accessoryActs();
std::vector<Act> tagActs();
std::vector<Act> toolActs();
std::vector<Act> twinActs();
std::vector<Act> inspectionActs();
std::vector<Act> reinspectionActs();
std::vector<Act> revisionActs();
std::vector<Act> blankActs();
std::vector<Act> followUpActs();
std::vector<Act> findingActs();
std::vector<Act> handoverActs();
std::vector<Act> linkActs();
std::vector<Act> registerActs();

/// Shorthand for rows: a field without choices or reference.
Field field(QLatin1String name, FieldType type, Needed needed, const char *label, QLatin1String refersTo = {});
Field unitField(QLatin1String name, Dimension dimension, Needed needed, const char *label);
Field quantity(QLatin1String name, Dimension dimension, Needed needed, const char *label);
Field records(QLatin1String name, Needed needed, const char *label, std::vector<Field> columns);
Field choice(QLatin1String name, Needed needed, const char *label, std::vector<QLatin1String> choices);

/// For an act that can hurt nobody, or whose kind of interface says what to mind.
QStringList noCautions();

/// What an interface list says of an interface, for the acts that list one.
std::vector<Field> listingFields();
/// How an interface was when it was undone.
Field asFoundField(Needed needed);
/// Blanks over what stands open, one number an end.
Field blanksFittedField(Needed needed);
Field unitBlanksFittedField();
/// The hardware that came off with it.
Field hardwareRemovedField();

/// The mark of an entry.
Mark markOf(const Statement &said);
/// The item that an entry is about, or nullptr.
InterfaceState *itemOf(JobState &job, const Statement &said);
/// Adds the author and everybody named in `helpers` to the item's actor set. Hands on the item void its acceptances.
void addActors(InterfaceState &item, const Statement &said);
/// The units that a field of type Unit or Quantity takes.
std::vector<const Unit *> unitsFor(const Field &field);
/// The quantity in a member, or nothing.
std::optional<core::Quantity> quantityIn(const json::Object &body, QStringView name, Dimension dimension);
/// The people named in a member; what is no id is passed over.
std::vector<PersonId> peopleIn(const json::Object &body, QStringView name);
/// The interfaces named in a member; what is no id is passed over.
std::vector<InterfaceId> interfacesIn(const json::Object &body, QStringView name);

} // namespace core
