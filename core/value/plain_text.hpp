// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringView>

#include <cstddef>
#include <optional>

namespace core {

/// So many UTF-16 units one text of an entry holds at most.
constexpr qsizetype longestText = 10'000;

/// So many elements one list of an entry holds at most.
constexpr std::size_t longestList = 20'000;

/// True when somebody who reads the text sees something: one letter, number, punctuation mark or symbol at least that is no filler.
bool hasSomethingToSee(QStringView text);

/// The first character that nobody sees and that may change what is read (controls but tab and line feed, directions, joiners of no
/// script, fillers, selectors of a variant, private use), as `U+200B`; nothing where there is none. The joiners U+200C and U+200D may
/// follow a letter of a script that is spelled with them, not a Latin, Greek or Cyrillic one, U+FE0E and U+FE0F a symbol.
/// Source: Unicode, UAX #44, general categories Cc, Cf, Co and Cn and the property Default_Ignorable_Code_Point; UTS #55, on what hides in text.
std::optional<QString> hiddenCharacterIn(QStringView text);

/// True when the text is written the plain way: its own compatibility composition and without anything hidden, so that no two look
/// alike by their encoding alone. Letters of other scripts that look like Latin ones are other letters, and stay.
/// Source: Unicode, UAX #15, normalization form KC; UAX #31, 2.3, leaves joiners out of names by default.
bool isPlainlyWritten(QStringView text);

} // namespace core
