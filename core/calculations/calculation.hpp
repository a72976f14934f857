// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>
#include <QString>
#include <QStringList>

#include <vector>

#include "core/acts/act.hpp"
#include "core/measure/working.hpp"
#include "core/tables/look_up_tables.hpp"

namespace core {

enum class Verdict {
    Answered,
    Refused, ///< no limit is met, or there is no answer at all; then the working's answer says why
};

/// What a calculation came to.
struct Calculated {
    Verdict verdict;
    measure::Working working; ///< as on the sheet of a job
    QStringList forRecord;    ///< lines to be copied into a record; mostly none
};

struct ExampleValue {
    QLatin1String field;
    const char *text; ///< as somebody types it, UTF-8
};

/// One calculation outside any job, by the functions of core/measure that the rules of a job ask. What a rule holds against besides, it does not know.
struct Calculation {
    QLatin1String name;  ///< stable
    const char *title;   ///< marked for translation in context "Calculation", as is `summary`
    const char *summary;
    std::vector<Field> fields;
    std::vector<FromTable> tables;
    std::vector<ExampleValue> example; ///< gives an answer
    QStringList (*cautions)();         ///< what to mind at the work; may give none
    /// Asked with sound fields only. The error, BadInput, names the fields that do not go together.
    Result<Calculated> (*work)(const json::Object &, const LookUpTables &);
};

/// Every calculation, in the order in which they are shown.
const std::vector<Calculation> &calculations();
/// The calculation of that name, or nullptr.
const Calculation *findCalculation(QStringView name);

/// What stands in the way before anything is worked out, a sentence each, naming the field: missing, of another form, unknown.
QStringList faultsOfForm(const Calculation &calculation, const json::Object &body);

/// Works it out. BadInput, in whole sentences, when the form has faults or fields do not go together. A limit that is not met is no
/// error, it is an answer: Verdict::Refused.
Result<Calculated> calculate(const Calculation &calculation, const json::Object &body, const LookUpTables &tables);

/// One field as it was typed: `least=50 lbf.in`.
struct TypedField {
    QString name;
    QString text;
};

/// A body from typed fields, quantities in the form of records. Refuses a field that the calculation does not have or that is given
/// twice. What cannot be read stays as it is, and calculate() says so.
Result<json::Object> bodyOf(const Calculation &calculation, const std::vector<TypedField> &typed);

/// What was put in, as a person reads it.
struct Given {
    QString label;
    QString text;
};

/// The filled fields of a body, in the order of the form.
std::vector<Given> givenIn(const Calculation &calculation, const json::Object &body);

// Rows of the catalogue, one function a file of this folder.
std::vector<Calculation> unitCalculations();
std::vector<Calculation> torqueCalculations();
std::vector<Calculation> tighteningCalculations();
std::vector<Calculation> bondingCalculations();
std::vector<Calculation> leakCalculations();
std::vector<Calculation> figureCalculations();

} // namespace core
