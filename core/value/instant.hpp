// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDate>
#include <QString>
#include <QStringView>

#include <compare>
#include <optional>

namespace core {

/// A moment, in whole milliseconds since 1970-01-01T00:00:00Z. Years 0001 to 9999.
class Instant {
public:
    static Instant fromMilliseconds(qint64 sinceEpoch) { return Instant(sinceEpoch); }

    /// Reads the one form that a ledger holds: `2026-03-02T08:14:31.120Z`, capitals, three decimals, UTC.
    static std::optional<Instant> parseLedger(QStringView text);

    /// Reads any date-time of RFC 3339 section 5.6, with any offset. Second 60 is refused: a leap second has no place
    /// of its own in milliseconds since 1970. More than three decimals are refused rather than rounded.
    static std::optional<Instant> parse(QStringView text);

    /// The ledger's form.
    QString text() const;

    /// For a sentence, in no language: `2026-03-02 08:14:31 UTC`.
    QString spoken() const;

    /// The calendar day in UTC; dates of validity in the register are compared with it.
    QDate utcDate() const;

    qint64 milliseconds() const { return m_ms; }
    auto operator<=>(const Instant &) const = default;

private:
    explicit Instant(qint64 ms) : m_ms(ms) {}
    qint64 m_ms;
};

} // namespace core
