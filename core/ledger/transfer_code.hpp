// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>
#include <QString>

#include "core/value/result.hpp"

namespace core {

/// Base 32 without padding. Source: RFC 4648 section 6. Only whole groups of five bytes, which need no padding.
QString base32(QByteArrayView bytes);

/// A transfer code: 160 random bits, shown once, typed at another station.
constexpr qsizetype transferCodeSize = 20;

/// A new one. The caller wipes it.
QByteArray newTransferCode();

/// As it is shown: 32 letters and digits in groups of four, `ABCD-EFGH-…`.
QString spelledCode(QByteArrayView code);

/// As it was typed: capitals or not, with or without dashes and blanks. BadInput, with what to look for.
Result<QByteArray> typedCode(const QString &text);

} // namespace core
