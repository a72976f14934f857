// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>

#include "core/value/digest.hpp"
#include "core/value/result.hpp"

namespace core {

/// One line of a package's signatures: which entry, and its author's signature over its bytes.
struct SignatureLine {
    Digest hash;
    qint64 seq;
    QByteArray signature; ///< 64 bytes
    bool operator==(const SignatureLine &) const = default;
};

/// The line without its end: RFC 8785 JSON `{"hash":"…","seq":…,"signature":"…"}`, the signature in base64 (RFC 4648 section 4) with its padding.
QByteArray signatureLine(const SignatureLine &line);

/// Reads what signatureLine wrote, and nothing else: one spelling. BadInput otherwise.
Result<SignatureLine> parseSignatureLine(QByteArrayView text);

} // namespace core
