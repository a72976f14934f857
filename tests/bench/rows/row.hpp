// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>
#include <QString>

#include <vector>

#include "tests/bench/fixture/big_job.hpp"
#include "tests/bench/measure/figure.hpp"

namespace bench {

enum class Size {
    Smoke, ///< a few seconds in all: shows that a row runs, its figures mean nothing
    Usual,
    Full, ///< with what takes minutes to make
};

struct Settings {
    Size size;
    int repetitions;
    QString cache;   ///< big stores are made here once and kept
    QString scratch; ///< on the same file system; emptied at the end
    /// One of three numbers.
    template <class T>
    T by(T smoke, T usual, T full) const
    {
        return size == Size::Smoke ? smoke : size == Size::Usual ? usual : full;
    }
    /// The big job of the goals: 5,000 interfaces and 30,000 entries.
    JobShape shape() const { return by(JobShape{60, 200}, JobShape{5000, 30'000}, JobShape{5000, 30'000}); }
};

struct Row {
    QLatin1String name;
    const char *about; ///< what is measured, and against what
    std::vector<Figure> (*measure)(const Settings &);
};

/// Every row, in the order of the table.
const std::vector<Row> &rows();

std::vector<Figure> measureAppend(const Settings &settings);
std::vector<Figure> measureImport(const Settings &settings);
std::vector<Figure> measureOpen(const Settings &settings);
std::vector<Figure> measureVerify(const Settings &settings);
std::vector<Figure> measurePackage(const Settings &settings);
std::vector<Figure> measureFilter(const Settings &settings);
std::vector<Figure> measureStart(const Settings &settings);
std::vector<Figure> measureWhereUsed(const Settings &settings);
std::vector<Figure> measureSize(const Settings &settings);
std::vector<Figure> measureFairness(const Settings &settings);

} // namespace bench
