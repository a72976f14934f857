// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLocale>
#include <QString>

namespace desktop {

/// A name of a thing, such as a label or a requirement, as it is written within a sentence: small, but for German, which writes what names
/// a thing with a capital wherever it stands.
inline QString midSentence(const QString &name) { return QLocale().language() == QLocale::German ? name : name.toLower(); }

} // namespace desktop
