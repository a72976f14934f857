// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

#include "core/value/quantity.hpp"

namespace core::measure {

/// What a calculation came to, or a sentence that says why it has no answer and what to do.
template <class T>
using Measured = tl::expected<T, QString>;

/// One line of the working.
struct WorkingStep {
    QString what;    ///< "Setting, middle of the band"
    QString formula; ///< in letters: "Y = T · L / (L + E · cos a)"; may be empty
    QString numbers; ///< the same with the numbers in it; may be empty
    QString result;  ///< with its unit: "117.39 lbf·in"
    bool operator==(const WorkingStep &) const = default;
};

/// A figure that a form may take over into one of its fields.
struct Offer {
    QString field;
    QString value;
    bool operator==(const Offer &) const = default;
};

/// A calculation shown so that somebody can check it with a pencil. What to mind at the work, and dataGoverns(), are not among its
/// notes: whoever shows a working shows those too, from the start and once.
struct Working {
    std::vector<WorkingStep> steps;
    QString answer;      ///< the one line that matters: "Set the wrench to 117 lbf·in."
    QStringList notes;   ///< warnings and what to mind; shown, never a refusal
    QStringList sources; ///< of the formulas
    std::optional<Offer> offer{};
    bool operator==(const Working &) const = default;
};

/// A value as shown in a unit: with at most so many places, and "≈" before it when it says less than all.
QString shown(const Rational &value, const QString &unit, int places = 4);
/// A coherent value shown in a unit of its dimension.
QString shownIn(const Rational &coherent, const Unit &unit, int places = 4);

/// A text as it is laid out in lines for reading: none ends between a number and its unit, inside a unit (`US gal`), or after "≈". Those
/// blanks become no-break spaces, so the text keeps its length and looks the same. Only for laying out: never for what is signed,
/// exported or searched.
QString unbroken(QString text);

/// Each step as a line of plain text.
QStringList stepsOf(const Working &working);
/// The working as lines of plain text: each step, then the answer, then the notes.
QStringList linesOf(const Working &working);

/// The sentence that every screen and print of a calculation carries.
QString dataGoverns();

} // namespace core::measure
