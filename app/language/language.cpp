// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/language/language.hpp"

#include <QStringList>

#include <algorithm>

namespace language {

const std::vector<LanguageLine> &languages()
{
    static const std::vector<LanguageLine> all = {
        {Language::English, "en", u"English"},
        {Language::German, "de", u"Deutsch"},
        {Language::French, "fr", u"Français"},
    };
    return all;
}

const LanguageLine &lineOf(Language language)
{
    return *std::find_if(languages().begin(), languages().end(), [&](const LanguageLine &line) { return line.language == language; });
}

std::optional<Language> languageOf(const QString &code)
{
    const auto at = std::find_if(languages().begin(), languages().end(), [&](const LanguageLine &line) { return code == QLatin1String(line.code); });
    return at == languages().end() ? std::nullopt : std::optional(at->language);
}

Language languageFor(const QLocale &locale)
{
    for (const QString &wanted : locale.uiLanguages()) {
        if (const auto known = languageOf(wanted.section(u'-', 0, 0)))
            return *known;
    }
    return Language::English;
}

QLocale localeFor(Language language, const QLocale &ofSystem)
{
    const QLocale plain(QString::fromLatin1(lineOf(language).code));
    return ofSystem.language() == plain.language() ? ofSystem : plain;
}

} // namespace language
