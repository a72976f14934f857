// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/plain_text.hpp"

#include <QChar>
#include <QList>

#include <algorithm>

namespace core {

namespace {

/// Letters and symbols that are drawn as nothing.
bool isFiller(char32_t c) { return c == 0x115F || c == 0x1160 || c == 0x17B4 || c == 0x17B5 || c == 0x2800 || c == 0x3164 || c == 0xFFA0; }

/// Marks that are drawn as nothing: the grapheme joiner, and what picks another drawing of the letter before it.
bool isHiddenMark(char32_t c) { return c == 0x034F || (c >= 0x180B && c <= 0x180F) || (c >= 0xFE00 && c <= 0xFE0F) || (c >= 0xE0100 && c <= 0xE01EF); }

/// True for a letter, or a mark on one, of a script in which a joiner changes how the word is written.
bool takesJoiner(char32_t c)
{
    switch (QChar::script(c)) {
    case QChar::Script_Unknown:
    case QChar::Script_Inherited:
    case QChar::Script_Common:
    case QChar::Script_Latin:
    case QChar::Script_Greek:
    case QChar::Script_Cyrillic: return false;
    default: return QChar::isLetter(c) || QChar::isMark(c);
    }
}

/// True when `c`, hidden by itself, has its place after `before`: a joiner where the script asks for one, a selector that picks
/// the drawing of a symbol.
bool belongsAfter(char32_t before, char32_t c)
{
    if (c == 0x200C || c == 0x200D)
        return takesJoiner(before);
    return (c == 0xFE0E || c == 0xFE0F) && QChar::category(before) == QChar::Symbol_Other;
}

bool isHidden(char32_t c)
{
    if (isFiller(c) || isHiddenMark(c))
        return true;
    switch (QChar::category(c)) {
    case QChar::Other_Control: return c != U'\t' && c != U'\n';
    case QChar::Other_Format: return true;
    case QChar::Other_Surrogate:
    case QChar::Other_PrivateUse:
    case QChar::Other_NotAssigned: return true;
    default: return false;
    }
}

/// Nearly every text is of these, and each is looked at whenever its entry is: none of them is hidden or combines with another.
bool isPlainAscii(QStringView text)
{
    return std::all_of(text.begin(), text.end(),
                       [](QChar c) { return (c >= u' ' && c <= u'~') || c == u'\t' || c == u'\n'; });
}

} // namespace

bool hasSomethingToSee(QStringView text)
{
    if (isPlainAscii(text))
        return std::any_of(text.begin(), text.end(), [](QChar c) { return c > u' '; });
    const QList<uint> all = text.toUcs4();
    for (const char32_t c : all) {
        const bool isMark = QChar::isMark(c);
        if (!isHidden(c) && !isMark && !QChar::isSpace(c))
            return true;
    }
    return false;
}

std::optional<QString> hiddenCharacterIn(QStringView text)
{
    if (isPlainAscii(text))
        return std::nullopt;
    const QList<uint> all = text.toUcs4();
    char32_t before = 0;
    for (const char32_t c : all) {
        if (isHidden(c) && !belongsAfter(before, c))
            return QStringLiteral("U+") + QString::number(static_cast<uint>(c), 16).toUpper().rightJustified(4, u'0');
        before = c;
    }
    return std::nullopt;
}

bool isPlainlyWritten(QStringView text)
{
    const QList<uint> all = text.toUcs4();
    if (std::any_of(all.begin(), all.end(), [](uint c) { return isHidden(c); }))
        return false;
    const QString own = text.toString();
    return own.normalized(QString::NormalizationForm_KC) == own;
}

} // namespace core
