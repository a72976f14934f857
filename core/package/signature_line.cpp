// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/package/signature_line.hpp"

#include <QCoreApplication>

#include "core/value/json.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Package", text); }

constexpr qsizetype signatureBytes = 64;

} // namespace

QByteArray signatureLine(const SignatureLine &line)
{
    return json::canonical({{u"hash"_s, line.hash.hex()}, {u"seq"_s, line.seq}, {u"signature"_s, QString::fromLatin1(line.signature.toBase64())}});
}

Result<SignatureLine> parseSignatureLine(QByteArrayView text)
{
    const auto object = json::parseCanonicalObject(text);
    if (!object)
        return failure(object.error());
    const auto hash = Digest::parse(object->text(u"hash"));
    const auto seq = object->integer(u"seq");
    const auto signature = QByteArray::fromBase64Encoding(object->text(u"signature").toLatin1(), QByteArray::AbortOnBase64DecodingErrors);
    if (!hash || !seq || *seq < 1 || !signature || signature.decoded.size() != signatureBytes)
        return failure(ErrorCode::BadInput, tr("The line is not hash, seq and a signature of 64 bytes in base64."));
    SignatureLine line{*hash, *seq, signature.decoded};
    // A fourth member, and base64 whose last digit carries bits that say nothing, would be a second spelling.
    if (signatureLine(line) != text)
        return failure(ErrorCode::BadInput, tr("The line is not in the one form that it has."));
    return line;
}

} // namespace core
