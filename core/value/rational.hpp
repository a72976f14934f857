// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <compare>
#include <memory>

#include "core/value/decimal.hpp"

namespace core {

/// An exact fraction of any size, for working with what was typed: nothing is rounded until a result is shown.
class Rational {
public:
    Rational() : Rational(0) {}
    /// Implicit, so that a formula reads like one: `1 + x / 2`.
    Rational(qint64 whole); // NOLINT(google-explicit-constructor)
    explicit Rational(const Decimal &decimal);

    friend Rational operator+(const Rational &a, const Rational &b);
    friend Rational operator-(const Rational &a, const Rational &b);
    friend Rational operator*(const Rational &a, const Rational &b);
    /// b is not zero: a bug otherwise.
    friend Rational operator/(const Rational &a, const Rational &b);
    Rational operator-() const { return Rational(0) - *this; }

    friend std::strong_ordering operator<=>(const Rational &a, const Rational &b);
    friend bool operator==(const Rational &a, const Rational &b) { return (a <=> b) == 0; }

    /// The greatest multiple of a step above 0 that is not above this value, and the least that is not below it, as a number of
    /// steps.
    Rational stepsBelow(const Rational &step) const;
    Rational stepsAbove(const Rational &step) const;

    /// As a decimal with at most so many places, rounded half away from zero; zeros at its end are left out.
    QString text(int mostPlaces) const;
    /// True when text(places) says all of it.
    bool isExactIn(int places) const;

    /// For drawing alone; never for a comparison.
    double approximate() const;

private:
    struct Number;
    explicit Rational(Number number);
    std::shared_ptr<const Number> m_number; ///< never changed, so copies share it

    friend Rational cosine(const Rational &degrees);
    friend Rational squareRoot(const Rational &value);
};

/// The cosine of an angle in degrees: exact where it is a fraction (multiples of 60° and 90°), else to 40 decimal places.
Rational cosine(const Rational &degrees);
/// The sine, in the same way.
Rational sine(const Rational &degrees);
/// The square root of a value that is not negative: exact where it is a fraction, else to 40 decimal places.
Rational squareRoot(const Rational &value);

} // namespace core
