// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringView>

#include <optional>

namespace core {

/// So many UTF-16 units one text of an entry holds at most.
constexpr qsizetype longestText = 10'000;

/// True when somebody who reads the text sees something: one letter, number, punctuation mark or symbol at least that is no filler.
bool hasSomethingToSee(QStringView text);

/// The first character that nobody sees and that may change what is read (controls but tab and line feed, directions, joiners of no
/// script, fillers, private use), as `U+200B`; nothing where there is none. The joiners U+200C and U+200D are letters of some scripts.
/// Source: Unicode, UAX #44, general categories Cc, Cf, Co and Cn; UTS #55, on what hides in text.
std::optional<QString> hiddenCharacterIn(QStringView text);

/// True when the text is written the plain way: its own compatibility composition, so that no two look alike by their encoding alone.
/// Source: Unicode, UAX #15, normalization form KC.
bool isPlainlyWritten(QStringView text);

} // namespace core
