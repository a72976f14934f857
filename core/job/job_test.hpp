// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>
#include <QString>

#include <array>
#include <optional>
#include <vector>

#include "core/job/mark.hpp"
#include "core/value/quantity.hpp"

namespace core {

/// One value that was read in a test, against its limits.
struct TestValue {
    QString name;
    Quantity read;
    std::optional<Quantity> least;
    std::optional<Quantity> most;
    bool isWithin() const { return (!least || read >= *least) && (!most || read <= *most); }
    bool operator==(const TestValue &) const = default;
};

/// Runs, functional checks and leak checks of a system, as they stand in entries.
inline constexpr std::array testSorts = {QLatin1String("ground run"), QLatin1String("functional test"), QLatin1String("leak check")};

/// A test of what was restored.
struct JobTest {
    TestId id;
    Mark mark;
    QString what; ///< of testSorts
    QString name;
    std::vector<InterfaceId> covers; ///< empty: every interface of the list
    std::vector<TestValue> values;
    bool hasPassed;
    std::vector<InterfaceId> reopens{}; ///< failed: what has to be worked on again
    bool operator==(const JobTest &) const = default;
};

struct JobState;

/// Why a test that was passed no longer says anything, or nothing: an interface that it covered was opened, disturbed or listed since.
/// Source: a test covers the state that it was made in: common practice.
std::optional<QString> whyVoid(const JobState &job, const JobTest &test);

/// The last test of each name; earlier ones are history.
std::vector<const JobTest *> lastTests(const JobState &job);

} // namespace core
