// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/transfer_code.hpp"

#include <QCoreApplication>

#include <sodium.h>

namespace core {

namespace {

constexpr char alphabet[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
constexpr int bitsEach = 5;
constexpr qsizetype letters = transferCodeSize * 8 / bitsEach;

QString tr(const char *text) { return QCoreApplication::translate("Seal", text); }

} // namespace

QString base32(QByteArrayView bytes)
{
    QString text;
    unsigned held = 0;
    int bits = 0;
    for (const char byte : bytes) {
        held = (held << 8 | static_cast<unsigned char>(byte)) & 0xffffU;
        for (bits += 8; bits >= bitsEach; bits -= bitsEach)
            text += QLatin1Char(alphabet[held >> (bits - bitsEach) & 31U]);
    }
    return text;
}

QByteArray newTransferCode()
{
    QByteArray code(transferCodeSize, '\0');
    randombytes_buf(code.data(), static_cast<std::size_t>(code.size()));
    return code;
}

QString spelledCode(QByteArrayView code)
{
    QString text = base32(code);
    constexpr qsizetype group = 4;
    for (qsizetype at = text.size() - group; at > 0; at -= group)
        text.insert(at, u'-');
    return text;
}

Result<QByteArray> typedCode(const QString &text)
{
    QByteArray code;
    unsigned held = 0;
    int bits = 0;
    qsizetype count = 0;
    for (const QChar typed : text) {
        if (typed == u'-' || typed.isSpace())
            continue;
        const auto value = QLatin1String(alphabet).indexOf(typed.toUpper());
        if (value < 0)
            return failure(ErrorCode::BadInput, tr("A transfer code has the letters A to Z and the digits 2 to 7; \"%1\" is none of them.").arg(typed));
        held = (held << bitsEach | static_cast<unsigned>(value)) & 0xffffU;
        bits += bitsEach;
        ++count;
        if (bits >= 8) {
            bits -= 8;
            code += static_cast<char>(held >> bits & 0xffU);
        }
    }
    if (count != letters)
        return failure(ErrorCode::BadInput, tr("A transfer code has %1 letters and digits; %2 were typed.").arg(letters).arg(count));
    return code;
}

} // namespace core
