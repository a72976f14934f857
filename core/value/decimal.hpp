// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringView>

#include <compare>
#include <optional>

namespace core {

/// A decimal number, exact, as typed: `12`, `12.50`, `-0.3`. The point is the only separator; no exponent, no blanks,
/// no grouping, no leading plus. At most 18 significant digits: a longer text is refused rather than rounded.
class Decimal {
public:
    static std::optional<Decimal> parse(QStringView text);

    /// As typed: trailing zeros are kept, since they say how finely the reading was taken.
    const QString &text() const { return m_text; }
    bool isNegative() const { return m_digits < 0; }
    /// The value is digits() / 10^places().
    qint64 digits() const { return m_digits; }
    int places() const { return m_places; }

    /// For drawing alone; never for a comparison.
    double approximate() const;

    /// Exact comparison of value, so 12.5 equals 12.50.
    friend std::strong_ordering operator<=>(const Decimal &a, const Decimal &b);
    friend bool operator==(const Decimal &a, const Decimal &b) { return (a <=> b) == 0; }

    /// Exact comparison of a·scaleA with b·scaleB. Scales are positive decimals of at most 18 digits.
    static std::strong_ordering compareScaled(const Decimal &a, const Decimal &scaleA, const Decimal &b, const Decimal &scaleB);

private:
    Decimal(QString text, qint64 digits, int places) : m_text(std::move(text)), m_digits(digits), m_places(places) {}
    QString m_text;
    qint64 m_digits; ///< value × 10^m_places
    int m_places;
};

} // namespace core
