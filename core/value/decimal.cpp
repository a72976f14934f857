// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/decimal.hpp"

#include <cmath>
#include <string>

namespace core {

namespace {

/// A product of two digit strings and its decimal places, kept as text so that no width of integer limits the comparison.
struct Product {
    bool negative = false;
    std::string whole;    ///< without leading zeros
    std::string fraction; ///< without trailing zeros
    bool isZero() const { return whole.empty() && fraction.empty(); }
};

__extension__ using Wide = __int128;

Product multiply(qint64 a, int placesA, qint64 b, int placesB)
{
    // Two factors below 10^18 give less than 10^36, and 2^127 is about 1.7·10^38.
    Wide product = Wide{a} * Wide{b};
    Product result;
    result.negative = product < 0;
    if (product < 0)
        product = -product;
    std::string digits;
    for (; product > 0; product /= 10)
        digits.insert(digits.begin(), static_cast<char>('0' + static_cast<int>(product % 10)));
    const auto places = static_cast<std::size_t>(placesA) + static_cast<std::size_t>(placesB);
    if (digits.size() < places)
        digits.insert(0, places - digits.size(), '0');
    result.whole = digits.substr(0, digits.size() - places);
    result.fraction = digits.substr(digits.size() - places);
    result.whole.erase(0, result.whole.find_first_not_of('0'));
    result.fraction.erase(result.fraction.find_last_not_of('0') + 1);
    return result;
}

std::strong_ordering compareMagnitude(const Product &a, const Product &b)
{
    if (a.whole.size() != b.whole.size())
        return a.whole.size() <=> b.whole.size();
    if (const int whole = a.whole.compare(b.whole); whole != 0)
        return whole <=> 0;
    return a.fraction.compare(b.fraction) <=> 0;
}

} // namespace

std::optional<Decimal> Decimal::parse(QStringView text)
{
    constexpr int mostDigits = 18;
    qsizetype at = text.startsWith(u'-') ? 1 : 0;
    const bool negative = at == 1;
    qint64 digits = 0;
    int significant = 0;
    int places = 0;
    int wholeDigits = 0;
    bool afterPoint = false;
    for (; at < text.size(); ++at) {
        const char16_t c = text[at].unicode();
        if (c == u'.' && !afterPoint && wholeDigits > 0) {
            afterPoint = true;
            continue;
        }
        if (c < u'0' || c > u'9')
            return std::nullopt;
        if (significant > 0 || c != u'0')
            ++significant;
        afterPoint ? ++places : ++wholeDigits;
        if (significant > mostDigits || places > mostDigits)
            return std::nullopt;
        digits = digits * 10 + (c - u'0');
    }
    if (wholeDigits == 0 || (afterPoint && places == 0))
        return std::nullopt;
    return Decimal(text.toString(), negative ? -digits : digits, places);
}

double Decimal::approximate() const
{
    return static_cast<double>(m_digits) / std::pow(10.0, m_places);
}

std::strong_ordering Decimal::compareScaled(const Decimal &a, const Decimal &scaleA, const Decimal &b, const Decimal &scaleB)
{
    const Product left = multiply(a.m_digits, a.m_places, scaleA.m_digits, scaleA.m_places);
    const Product right = multiply(b.m_digits, b.m_places, scaleB.m_digits, scaleB.m_places);
    if (left.isZero() && right.isZero())
        return std::strong_ordering::equal;
    if (left.negative != right.negative)
        return left.negative ? std::strong_ordering::less : std::strong_ordering::greater;
    return left.negative ? compareMagnitude(right, left) : compareMagnitude(left, right);
}

std::strong_ordering operator<=>(const Decimal &a, const Decimal &b)
{
    const Decimal one(QStringLiteral("1"), 1, 0);
    return Decimal::compareScaled(a, one, b, one);
}

} // namespace core
