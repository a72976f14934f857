// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/language/marked_words.hpp"

#include <QCoreApplication>

#include "app/language/in_record_words.hpp"

namespace {

/// Contexts of the toolkit are its classes: QShortcut, QDialogButtonBox.
bool isOfQt(const char *context) { return context && context[0] == 'Q' && context[1] >= 'A' && context[1] <= 'Z'; }

} // namespace

MarkedWords::MarkedWords() { QCoreApplication::installTranslator(this); }
MarkedWords::~MarkedWords() { QCoreApplication::removeTranslator(this); }

QString MarkedWords::translate(const char *context, const char *source, const char *, int) const
{
    if (language::InRecordWords::now() || isOfQt(context) || !source || !*source)
        return {};
    const QString text = QString::fromUtf8(source);
    const QMutexLocker held(&m_lock);
    m_said.insert(text);
    return u'⟦' + text + u'⟧';
}

std::set<QString> MarkedWords::said() const
{
    const QMutexLocker held(&m_lock);
    return m_said;
}
