// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/plain_text.hpp"

#include <QChar>
#include <QList>

namespace core {

namespace {

/// Letters and symbols that are drawn as nothing.
bool isFiller(char32_t c) { return c == 0x115F || c == 0x1160 || c == 0x17B4 || c == 0x17B5 || c == 0x2800 || c == 0x3164 || c == 0xFFA0; }

bool isHidden(char32_t c)
{
    if (isFiller(c))
        return true;
    switch (QChar::category(c)) {
    case QChar::Other_Control: return c != U'\t' && c != U'\n';
    case QChar::Other_Format: return c != 0x200C && c != 0x200D;
    case QChar::Other_Surrogate:
    case QChar::Other_PrivateUse:
    case QChar::Other_NotAssigned: return true;
    default: return false;
    }
}

} // namespace

bool hasSomethingToSee(QStringView text)
{
    const QList<uint> all = text.toUcs4();
    for (const char32_t c : all) {
        const bool isMark = QChar::isMark(c);
        if (!isHidden(c) && !isMark && !QChar::isSpace(c) && QChar::category(c) != QChar::Other_Format)
            return true;
    }
    return false;
}

std::optional<QString> hiddenCharacterIn(QStringView text)
{
    const QList<uint> all = text.toUcs4();
    for (const char32_t c : all) {
        if (isHidden(c))
            return QStringLiteral("U+") + QString::number(static_cast<uint>(c), 16).toUpper().rightJustified(4, u'0');
    }
    return std::nullopt;
}

bool isPlainlyWritten(QStringView text)
{
    const QString own = text.toString();
    return own.normalized(QString::NormalizationForm_KC) == own;
}

} // namespace core
