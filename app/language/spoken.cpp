// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/language/spoken.hpp"

#include <QCoreApplication>
#include <QLibraryInfo>

#include "app/language/words.hpp"

namespace language {

Spoken::Spoken(const QLocale &ofSystem) : m_ofSystem(ofSystem) {}
Spoken::~Spoken() = default;

void Spoken::speak(Language language)
{
    // Ours goes in last, so that it is asked first.
    auto ofQt = std::make_unique<QTranslator>();
    m_ofQt = ofQt->load(QStringLiteral("qtbase_%1").arg(QLatin1String(lineOf(language).code)), QLibraryInfo::path(QLibraryInfo::TranslationsPath)) ? std::move(ofQt) : nullptr;
    if (m_ofQt)
        QCoreApplication::installTranslator(m_ofQt.get());
    m_words = std::make_unique<Words>(language);
    QCoreApplication::installTranslator(m_words.get());
    QLocale::setDefault(localeFor(language, m_ofSystem));
}

} // namespace language
