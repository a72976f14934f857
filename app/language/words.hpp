// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QTranslator>

#include "app/language/language.hpp"

namespace language {

/// All that the program says, in one language. The texts stand in one catalogue without contexts of their own, so that the same English
/// has one translation everywhere; a rule, its button and its line on a page say the same word. Says nothing, so that the English of the
/// source stands, where a thread speaks the record's words, and for a text that it does not know.
class Words final : public QTranslator {
    Q_OBJECT

public:
    explicit Words(Language language, QObject *parent = nullptr);

    QString translate(const char *context, const char *source, const char *disambiguation, int n) const override;
};

} // namespace language
