// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/rows/table.hpp"

#include <algorithm>

namespace table {

namespace {

constexpr qsizetype mostFailures = 40;

void printRow(QTextStream &out, const Row &row)
{
    if (!row.isRun()) {
        out << "| " << row.tool << " | not run: " << row.notRun << " | | | | | |\n";
        return;
    }
    out << "| " << row.tool << " | " << row.rounds << " | " << row.hurt << " | " << row.acknowledged << " | " << row.lost << " | " << row.reported << " | "
        << row.harmless << " |" << (row.isGood() ? "" : " **FAILED**") << '\n';
}

} // namespace

void print(QTextStream &out, const std::vector<Row> &rows)
{
    out << "| tool | rounds | struck | acknowledged | lost | reported | harmless |\n|---|---:|---:|---:|---:|---:|---:|\n";
    for (const Row &row : rows)
        printRow(out, row);
    for (const Row &row : rows) {
        for (const QString &failure : row.failures.first(std::min(row.failures.size(), mostFailures)))
            out << "\nFAILED " << failure;
        if (row.failures.size() > mostFailures)
            out << "\nFAILED " << row.tool << ": " << row.failures.size() - mostFailures << " more";
    }
    out << '\n';
}

void printMessages(QTextStream &out, const std::vector<Row> &rows)
{
    std::map<QString, qint64> all;
    for (const Row &row : rows)
        for (const auto &[message, times] : row.messages)
            all[message] += times;
    for (const auto &[message, times] : all)
        out << times << " x " << message << '\n';
}

bool isGood(const std::vector<Row> &rows)
{
    const auto wasRun = [](const Row &row) { return row.isRun(); };
    const auto isFine = [](const Row &row) { return !row.isRun() || row.isGood(); };
    return std::any_of(rows.begin(), rows.end(), wasRun) && std::all_of(rows.begin(), rows.end(), isFine);
}

} // namespace table
