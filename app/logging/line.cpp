// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/logging/line.hpp"

#include <QStringList>

#include <algorithm>

namespace logging {

namespace {

constexpr qsizetype longestValue = 300;

bool isSecret(const QString &name)
{
    static const QStringList words = {"pin", "passphrase", "password", "secret", "seed", "private"};
    const QStringList parts = name.toLower().split(u'_');
    return std::any_of(words.begin(), words.end(), [&](const QString &word) { return parts.contains(word); });
}

QString escaped(QStringView text)
{
    QString result;
    for (const QChar c : text) {
        if (c == u'"' || c == u'\\')
            result += u'\\';
        if (c.isPrint() || c.isSurrogate())
            result += c;
        else
            result += QStringLiteral("\\u%1").arg(uint(c.unicode()), 4, 16, QLatin1Char('0'));
    }
    return result;
}

QString shown(const Field &field)
{
    if (isSecret(field.name))
        return QStringLiteral("(withheld)");
    QString value = escaped(QStringView(field.value).left(longestValue));
    if (field.value.size() > longestValue)
        value += u'…';
    const bool plain = !value.isEmpty() && !value.contains(u' ') && value == field.value;
    return plain ? value : u'"' + value + u'"';
}

} // namespace

QString line(QStringView event, const std::vector<Field> &fields)
{
    QString text = escaped(event);
    for (const Field &field : fields)
        text += u' ' + escaped(field.name) + u'=' + shown(field);
    return text;
}

} // namespace logging
