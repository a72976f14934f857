// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/instant.hpp"

#include <QDateTime>
#include <QTime>
#include <QTimeZone>

namespace core {

namespace {

/// `count` ASCII digits at `at`, or -1. QStringView::toInt would also take signs and blanks.
int digits(QStringView text, qsizetype at, int count)
{
    if (at + count > text.size())
        return -1;
    int value = 0;
    for (qsizetype i = at; i < at + count; ++i) {
        const char16_t c = text[i].unicode();
        if (c < u'0' || c > u'9')
            return -1;
        value = value * 10 + (c - u'0');
    }
    return value;
}

/// Writes `value` in `count` decimal digits at `at`.
void putDigits(QString &text, qsizetype at, int count, int value)
{
    for (; count-- > 0; value /= 10)
        text[at + count] = QChar(u'0' + value % 10);
}

bool isAt(QStringView text, qsizetype at, char16_t wanted)
{
    return at < text.size() && text[at].unicode() == wanted;
}

/// Offset in minutes from `Z` or `+hh:mm` at `at`, which must end the text.
std::optional<int> offsetMinutes(QStringView text, qsizetype at)
{
    if ((isAt(text, at, u'Z') || isAt(text, at, u'z')) && at + 1 == text.size())
        return 0;
    const int sign = isAt(text, at, u'+') ? 1 : isAt(text, at, u'-') ? -1 : 0;
    const int hours = digits(text, at + 1, 2);
    const int minutes = digits(text, at + 4, 2);
    if (sign == 0 || hours < 0 || hours > 23 || minutes < 0 || minutes > 59 || !isAt(text, at + 3, u':') ||
        at + 6 != text.size())
        return std::nullopt;
    return sign * (hours * 60 + minutes);
}

std::optional<Instant> assemble(QStringView text, int milliseconds, int offset)
{
    const QDate date(digits(text, 0, 4), digits(text, 5, 2), digits(text, 8, 2));
    const QTime time(digits(text, 11, 2), digits(text, 14, 2), digits(text, 17, 2), milliseconds);
    if (!date.isValid() || !time.isValid())
        return std::nullopt;
    const qint64 day = QDate(1970, 1, 1).daysTo(date);
    const auto instant = Instant::fromMilliseconds(day * 86'400'000 + time.msecsSinceStartOfDay() - qint64{offset} * 60'000);
    // Near either end of the calendar an offset can lead out of it, to a year that has no spelling of four digits.
    const int year = instant.utcDate().year();
    return year >= 1 && year <= 9999 ? std::optional(instant) : std::nullopt;
}

} // namespace

std::optional<Instant> Instant::parse(QStringView text)
{
    const bool separated = isAt(text, 4, u'-') && isAt(text, 7, u'-') && (isAt(text, 10, u'T') || isAt(text, 10, u't')) &&
                           isAt(text, 13, u':') && isAt(text, 16, u':');
    if (!separated)
        return std::nullopt;
    for (const int at : {0, 5, 8, 11, 14, 17}) {
        if (digits(text, at, at == 0 ? 4 : 2) < 0)
            return std::nullopt;
    }
    qsizetype at = 19;
    int milliseconds = 0;
    if (isAt(text, at, u'.')) {
        ++at;
        int places = 0;
        while (digits(text, at, 1) >= 0) {
            if (++places > 3)
                return std::nullopt;
            milliseconds = milliseconds * 10 + digits(text, at++, 1);
        }
        if (places == 0)
            return std::nullopt;
        for (; places < 3; ++places)
            milliseconds *= 10;
    }
    const auto offset = offsetMinutes(text, at);
    return offset ? assemble(text, milliseconds, *offset) : std::nullopt;
}

std::optional<Instant> Instant::parseLedger(QStringView text)
{
    const bool shape = text.size() == 24 && isAt(text, 10, u'T') && isAt(text, 19, u'.') && isAt(text, 23, u'Z');
    return shape ? parse(text) : std::nullopt;
}

QString Instant::text() const
{
    // Each entry holds one, and QDateTime's formatter takes as long as signing does.
    const QDateTime moment = QDateTime::fromMSecsSinceEpoch(m_ms, Qt::UTC);
    const QDate date = moment.date();
    const QTime time = moment.time();
    QString text = QStringLiteral("0000-00-00T00:00:00.000Z");
    putDigits(text, 0, 4, date.year());
    putDigits(text, 5, 2, date.month());
    putDigits(text, 8, 2, date.day());
    putDigits(text, 11, 2, time.hour());
    putDigits(text, 14, 2, time.minute());
    putDigits(text, 17, 2, time.second());
    putDigits(text, 20, 3, time.msec());
    return text;
}

QString Instant::spoken() const
{
    // The ledger's form is fixed: date, T, time with three decimals, Z.
    const QString ledger = text();
    return ledger.left(10) + u' ' + ledger.mid(11, 8) + QStringLiteral(" UTC");
}

QDate Instant::utcDate() const
{
    return QDateTime::fromMSecsSinceEpoch(m_ms, Qt::UTC).date();
}

} // namespace core
