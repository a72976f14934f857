// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/labels/label_text.hpp"

#include <QByteArray>
#include <QStringDecoder>
#include <QStringList>

namespace core {

namespace {

constexpr QLatin1String scheme("remate:");

QString encoded(const QString &segment) { return QString::fromLatin1(segment.toUtf8().toPercentEncoding()); }

/// RFC 3986 section 2.3.
bool isUnreserved(QChar c)
{
    const char16_t code = c.unicode();
    return (code >= u'A' && code <= u'Z') || (code >= u'a' && code <= u'z') || (code >= u'0' && code <= u'9') || code == u'-' || code == u'.' || code == u'_' || code == u'~';
}

bool isHexDigit(QChar c)
{
    const char16_t code = c.unicode();
    return (code >= u'0' && code <= u'9') || (code >= u'A' && code <= u'F') || (code >= u'a' && code <= u'f');
}

bool isWellEncoded(const QString &segment)
{
    for (qsizetype i = 0; i < segment.size(); ++i) {
        if (isUnreserved(segment[i]))
            continue;
        if (segment[i] != u'%' || i + 2 >= segment.size() || !isHexDigit(segment[i + 1]) || !isHexDigit(segment[i + 2]))
            return false;
        i += 2;
    }
    return true;
}

/// Nothing for bytes that are no UTF-8: Qt would put a mark in their place.
std::optional<QString> decoded(const QString &segment)
{
    if (!isWellEncoded(segment))
        return std::nullopt;
    QStringDecoder decoder(QStringDecoder::Utf8, QStringDecoder::Flag::Stateless);
    QString text = decoder(QByteArray::fromPercentEncoding(segment.toLatin1()));
    return decoder.hasError() ? std::nullopt : std::optional(std::move(text));
}

} // namespace

QString writeLabelText(const LabelText &label) { return scheme + encoded(label.workOrder) + u'/' + encoded(label.item.text()); }

std::optional<LabelText> readLabelText(const QString &text)
{
    if (!text.startsWith(scheme, Qt::CaseInsensitive))
        return std::nullopt;
    const QStringList segments = text.mid(scheme.size()).split(u'/');
    if (segments.size() != 2)
        return std::nullopt;
    auto workOrder = decoded(segments[0]);
    const auto name = decoded(segments[1]);
    const auto item = name ? InterfaceId::parse(*name) : std::nullopt;
    if (!workOrder || workOrder->isEmpty() || !item)
        return std::nullopt;
    return LabelText{*std::move(workOrder), *item};
}

} // namespace core
