// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/bench/measure/figure.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

double quantile(std::vector<double> values, double q)
{
    std::sort(values.begin(), values.end());
    const auto rank = static_cast<std::size_t>(std::ceil(q * static_cast<double>(values.size())));
    return values[std::clamp<std::size_t>(rank, 1, values.size()) - 1];
}

Spread spreadOf(std::vector<double> values)
{
    const auto [least, most] = std::minmax_element(values.begin(), values.end());
    return {quantile(values, 0.5), *least, *most};
}

Spread spreadOf(const Figure &figure)
{
    std::vector<double> values;
    for (const Repetition &one : figure.repetitions)
        values.push_back(one.value());
    return spreadOf(values);
}

double medianOfProgram(const Figure &figure)
{
    std::vector<double> values;
    for (const Repetition &one : figure.repetitions)
        values.push_back(one.program);
    return quantile(values, 0.5);
}

std::optional<double> medianOfBare(const Figure &figure)
{
    std::vector<double> values;
    for (const Repetition &one : figure.repetitions)
        if (one.bare)
            values.push_back(*one.bare);
    return values.empty() ? std::nullopt : std::optional(quantile(values, 0.5));
}

std::optional<bool> meetsGoal(const Figure &figure)
{
    if (!figure.goal)
        return std::nullopt;
    const double median = spreadOf(figure).median;
    return figure.goal->side == Goal::Side::AtMost ? median <= figure.goal->value : median >= figure.goal->value;
}

std::vector<Repetition> inTurn(int times, const std::function<double()> &program, const std::function<double()> &bare)
{
    std::vector<Repetition> all;
    for (int i = 0; i < times; ++i) {
        const double one = program();
        all.push_back({one, bare()});
    }
    return all;
}

} // namespace bench
