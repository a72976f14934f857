// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QJsonObject>
#include <QString>

#include <vector>

#include "tests/bench/measure/figure.hpp"
#include "tests/bench/measure/machine.hpp"

namespace bench {

/// The figures of one row, with the machine's load before and after.
struct RowReport {
    QString row;
    std::vector<Figure> figures;
    double loadBefore;
    double loadAfter;
};

/// What the machine is, and what a reader must know before believing the table.
QString headOf(const Machine &machine);
/// Two lines of a Markdown table.
QString tableHead();
/// One line a figure.
QString tableOf(const RowReport &report);

QJsonObject jsonOf(const Machine &machine, const std::vector<RowReport> &reports);

} // namespace bench
