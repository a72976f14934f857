// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QCoreApplication>
#include <QString>

namespace core {

/// A sentence marked by QT_TRANSLATE_NOOP, in the language of the reader. Which context it was marked in is the same: the
/// catalogue has none.
inline QString inWords(const char *sentence) { return QCoreApplication::translate("Core", sentence); }

} // namespace core
