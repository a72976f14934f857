// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLocale>
#include <QString>

#include <optional>
#include <vector>

namespace language {

/// What the screens can speak.
enum class Language { English, German, French };

/// One of them, as it is offered and kept.
struct LanguageLine {
    Language language;
    const char *code;    ///< ISO 639-1, of its files and of the preferences
    const char16_t *own; ///< its name in itself, which is never translated: whoever looks for it reads it
};

/// All of them, in the order of the menu.
const std::vector<LanguageLine> &languages();
const LanguageLine &lineOf(Language language);
/// The language of that code; nothing for another.
std::optional<Language> languageOf(const QString &code);
/// The first of the languages that a person's system asks for which the screens can speak; English where they speak none.
Language languageFor(const QLocale &locale);
/// How dates and figures are written in that language: as the system has it where it speaks the same, so that a Swiss sees a Swiss date.
QLocale localeFor(Language language, const QLocale &ofSystem);

} // namespace language
