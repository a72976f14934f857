// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/calculations/calculation.hpp"
#include "core/measure/torque_wrench.hpp"

/// What several calculations are made of.
namespace core::calculation {

/// A field of an act, under the same name and label, so that a figure is called alike in a job and outside.
Field ofAct(QStringView act, QLatin1String name);
Field ofAct(QStringView act, QLatin1String name, Needed needed);

/// `"Least" (least): ` and the sentence.
tl::unexpected<Error> badField(const Field &field, const QString &sentence);

Calculated answered(const measure::Working &working, const QStringList &forRecord = {});
Calculated refused(const measure::Working &working);
/// There is no answer, and this is why.
Calculated refused(const QString &why);
/// An answer, or why there is none.
Calculated answeredOr(const measure::Measured<measure::Working> &working);
/// An answer that says yes or no.
Calculated judged(const measure::Measured<measure::Working> &working, bool isMet);

/// Fields `least`, `most` and `prevailing` of a torque.
std::vector<Field> bandFields();
/// What they ask for. BadInput: a least above the most, a most that is not above 0, a least or a drag below 0.
Result<measure::AskedTorque> bandIn(const json::Object &body);

/// Fields of an adapter, as in a torque entry.
std::vector<Field> adapterFields();
/// BadInput when it is told by half.
Result<std::optional<measure::Lever>> adapterIn(const json::Object &body);

/// What a tool may be off, in percent of the reading.
Field deviationField(Needed needed);
/// BadInput as measure::whyNoDeviation.
Result<std::optional<Decimal>> deviationIn(const json::Object &body);

template <class T>
std::vector<T> joined(std::vector<T> first, const std::vector<T> &second)
{
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

} // namespace core::calculation
