// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>

#include "tests/fault/rows/round.hpp"
#include "tests/fault/rows/row.hpp"

/// Says what one round proved.
namespace judge {

struct Expectation {
    bool isThere;          ///< the store was there before; else the victim makes it
    qint64 before;         ///< entries that were there, or are made, beside the acknowledged ones
    int expected;          ///< acknowledgements of a run that nothing disturbs
    rounds::Fault fault{};
};

struct Verdict {
    QString failure{}; ///< what must not be
    bool isHurt = false;
    bool isReported = false;
    bool isHarmless = false;
    int acknowledged = 0;
    int lost = 0;
    long counted = 0;
    QStringList said{};
};

/// Opens what the victim left and compares it with what it said.
Verdict judge(const QString &path, const rounds::Told &told, const Expectation &expectation);

/// Adds it to the row.
void count(Row &row, const Verdict &verdict, const QString &fault);

} // namespace judge
