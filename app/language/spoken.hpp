// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLocale>

#include <memory>

#include "app/language/language.hpp"

class QTranslator;

namespace language {

/// The language that the application speaks: made once, in main, beside the application.
class Spoken {
public:
    /// Dates and figures are as that locale has them where it speaks the same language.
    explicit Spoken(const QLocale &ofSystem);
    ~Spoken();

    /// Says everything in that language from now on: what is on the screen already has to be made again. Dates and figures that the
    /// program writes for a screen follow; what is stored, signed or exported does not ask for a locale.
    void speak(Language language);

private:
    QLocale m_ofSystem;
    std::unique_ptr<QTranslator> m_words;
    std::unique_ptr<QTranslator> m_ofQt; ///< buttons of the toolkit's own windows; nothing where the machine has no such file
};

} // namespace language
