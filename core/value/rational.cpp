// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/rational.hpp"

#include <boost/multiprecision/cpp_dec_float.hpp>
#include <boost/multiprecision/cpp_int.hpp>

namespace core {

namespace {

using Whole = boost::multiprecision::cpp_int;
using Fraction = boost::multiprecision::cpp_rational;
using Float = boost::multiprecision::cpp_dec_float_100;

Whole powerOfTen(int exponent) { return boost::multiprecision::pow(Whole(10), static_cast<unsigned>(exponent)); }

/// Rounded down, also below zero.
Whole floorOf(const Fraction &value)
{
    Whole quotient;
    Whole remainder;
    boost::multiprecision::divide_qr(Whole(numerator(value)), Whole(denominator(value)), quotient, remainder);
    if (remainder < 0)
        --quotient;
    return quotient;
}

/// Rounded half away from zero.
Whole roundedOf(const Fraction &value)
{
    const Fraction half(1, 2);
    return value < 0 ? Whole(-floorOf(-value + half)) : floorOf(value + half);
}

constexpr int placesKept = 40;

/// A number that is no fraction, to the places that are kept.
Fraction keptOf(const Float &value)
{
    const Float scaled = boost::multiprecision::round(value * boost::multiprecision::pow(Float(10), placesKept));
    return Fraction(scaled.convert_to<Whole>(), powerOfTen(placesKept));
}

Fraction cosineOf(const Fraction &degrees)
{
    // Into [0°, 180°], since the cosine is even: only few angles have to be told apart.
    const Fraction whole = degrees - 360 * floorOf(degrees / 360);
    const Fraction turn = whole > 180 ? Fraction(360 - whole) : whole;
    if (turn == 0)
        return 1;
    if (turn == 60)
        return Fraction(1, 2);
    if (turn == 90)
        return 0;
    if (turn == 120)
        return Fraction(-1, 2);
    if (turn == 180)
        return -1;
    const Float radians = Float(numerator(turn)) / Float(denominator(turn)) * boost::math::constants::pi<Float>() / 180;
    return keptOf(boost::multiprecision::cos(radians));
}

Fraction squareRootOf(const Fraction &value)
{
    const Whole top = boost::multiprecision::sqrt(Whole(numerator(value)));
    const Whole bottom = boost::multiprecision::sqrt(Whole(denominator(value)));
    const Fraction root(top, bottom);
    if (root * root == value)
        return root;
    return keptOf(boost::multiprecision::sqrt(Float(numerator(value)) / Float(denominator(value))));
}

} // namespace

struct Rational::Number {
    Fraction value;
};

Rational::Rational(Number number) : m_number(std::make_shared<const Number>(std::move(number))) {}
Rational::Rational(qint64 whole) : Rational(Number{Fraction(whole)}) {}
Rational::Rational(const Decimal &decimal) : Rational(Number{Fraction(Whole(decimal.digits()), powerOfTen(decimal.places()))}) {}

Rational operator+(const Rational &a, const Rational &b) { return Rational(Rational::Number{a.m_number->value + b.m_number->value}); }
Rational operator-(const Rational &a, const Rational &b) { return Rational(Rational::Number{a.m_number->value - b.m_number->value}); }
Rational operator*(const Rational &a, const Rational &b) { return Rational(Rational::Number{a.m_number->value * b.m_number->value}); }

Rational operator/(const Rational &a, const Rational &b)
{
    Q_ASSERT(b.m_number->value != 0);
    return Rational(Rational::Number{a.m_number->value / b.m_number->value});
}

std::strong_ordering operator<=>(const Rational &a, const Rational &b)
{
    return a.m_number->value.compare(b.m_number->value) <=> 0;
}

Rational Rational::stepsBelow(const Rational &step) const
{
    Q_ASSERT(step > Rational(0));
    return Rational(Number{Fraction(floorOf(m_number->value / step.m_number->value))});
}

Rational Rational::stepsAbove(const Rational &step) const { return -((-*this).stepsBelow(step)); }

QString Rational::text(int mostPlaces) const
{
    const Whole scaled = roundedOf(m_number->value * powerOfTen(mostPlaces));
    QString digits = QString::fromStdString(Whole(abs(scaled)).str());
    if (digits.size() <= mostPlaces)
        digits.prepend(QString(mostPlaces + 1 - digits.size(), u'0'));
    if (mostPlaces > 0) {
        digits.insert(digits.size() - mostPlaces, u'.');
        while (digits.endsWith(u'0'))
            digits.chop(1);
        if (digits.endsWith(u'.'))
            digits.chop(1);
    }
    return scaled < 0 ? u'-' + digits : digits;
}

bool Rational::isExactIn(int places) const { return denominator(Fraction(m_number->value * powerOfTen(places))) == 1; }

double Rational::approximate() const { return m_number->value.convert_to<double>(); }

Rational cosine(const Rational &degrees) { return Rational(Rational::Number{cosineOf(degrees.m_number->value)}); }

Rational sine(const Rational &degrees) { return cosine(degrees - 90); }

Rational squareRoot(const Rational &value)
{
    Q_ASSERT(value >= 0);
    return Rational(Rational::Number{squareRootOf(value.m_number->value)});
}

} // namespace core
