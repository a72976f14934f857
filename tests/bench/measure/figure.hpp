// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <chrono>
#include <functional>
#include <optional>
#include <vector>

namespace bench {

/// One repetition: the program, and in the same breath what it is measured against.
struct Repetition {
    double program;
    std::optional<double> bare; ///< nothing where the figure itself is what counts
    /// program / bare, or the figure itself.
    double value() const { return bare ? program / *bare : program; }
};

/// What a figure's value may be.
struct Goal {
    enum class Side { AtMost, AtLeast };
    Side side;
    double value;
};
constexpr Goal atMost(double value) { return {Goal::Side::AtMost, value}; }
constexpr Goal atLeast(double value) { return {Goal::Side::AtLeast, value}; }

/// One line of the table.
struct Figure {
    QString name;
    QString unit; ///< of both sides
    std::vector<Repetition> repetitions;
    std::optional<Goal> goal; ///< nothing: told for its own sake
    QString bareIs;           ///< what the other side is, in few words
};

/// The middle of some values and how far they lie apart.
struct Spread {
    double median;
    double least;
    double most;
};
Spread spreadOf(std::vector<double> values);
/// Of the repetitions' values.
Spread spreadOf(const Figure &figure);
double medianOfProgram(const Figure &figure);
std::optional<double> medianOfBare(const Figure &figure);
/// Whether the median meets the goal; nothing without one.
std::optional<bool> meetsGoal(const Figure &figure);

/// The value below which the share `q` of all lies (nearest rank). `values` must not be empty.
double quantile(std::vector<double> values, double q);

/// How long one call takes, in seconds of the monotonic clock.
template <class Work>
double secondsOf(Work work)
{
    const auto began = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
}

/// Runs both sides in turn, `times` each: program, bare, program, bare. Each returns its own figure.
std::vector<Repetition> inTurn(int times, const std::function<double()> &program, const std::function<double()> &bare);

/// How long single acts took, on both sides, within one repetition.
struct Times {
    std::vector<double> program;
    std::vector<double> bare;
    Repetition at(double q) const { return {quantile(program, q), quantile(bare, q)}; }
};

} // namespace bench
