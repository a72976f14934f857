// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <functional>
#include <vector>

#include "tests/fault/rows/round.hpp"
#include "tests/fault/rows/row.hpp"

/// Sweeps: the same run of the victim again and again, with another call hurt each time.
namespace sweep {

/// What the victim does.
enum class Script {
    Append, ///< signs entries in a store that is there
    Life,   ///< makes the store, signs, attaches, backs up, closes
};

struct Sweep {
    QString tool;
    Script script;
    rounds::Fault fault; ///< its nth is what is swept
    long shortForm;      ///< rounds in the short form
};

/// The store that each round of Script::Append begins with, and how many entries it has.
struct Ready {
    QString path;
    qint64 entries = 0;
};

Row control(const Ready &ready, const Sweep &sweep, int rounds);
Row run(const Ready &ready, const Sweep &sweep, const Extent &extent);

/// All of them whose name has the words `only`.
std::vector<Row> all(const Ready &ready, const Extent &extent, const QString &only);

} // namespace sweep
