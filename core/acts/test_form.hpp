// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/job_test.hpp"
#include "core/value/json.hpp"

namespace core {

/// The values of a test entry: objects with `name`, `read`, and `least`, `most` where there are limits, each quantity with its unit.
/// What cannot be read is passed over; faultOfTestValues says so.
std::vector<TestValue> testValuesIn(const json::Object &body);

/// A sentence for a value that has another form, no limit at all, or limits of another dimension; else nothing.
std::optional<QString> faultOfTestValues(const json::Object &body);

} // namespace core
