// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/language/words.hpp"

#include "app/language/in_record_words.hpp"

namespace language {

Words::Words(Language language, QObject *parent) : QTranslator(parent)
{
    [[maybe_unused]] const bool isPart = load(QStringLiteral(":/translations/remate_%1.qm").arg(QLatin1String(lineOf(language).code)));
    Q_ASSERT(isPart);
}

QString Words::translate(const char *, const char *source, const char *disambiguation, int n) const
{
    return InRecordWords::now() ? QString() : QTranslator::translate("Remate", source, disambiguation, n);
}

} // namespace language
