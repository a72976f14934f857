// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/labels/qr_code.hpp"

#include <QCoreApplication>

#include <cmath>
#include <memory>
#include <optional>

#include <qrencode.h>

#include "app/record/typeface.hpp"

namespace labels {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Labels", text); }

std::optional<QrCode> encode(const QByteArray &text, Correction correction)
{
    const QRecLevel level = correction == Correction::Q ? QR_ECLEVEL_Q : QR_ECLEVEL_M;
    constexpr int smallestVersion = 0; // that holds the text
    constexpr int asTyped = 1;         // small letters stay small
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> made(QRcode_encodeString(text.constData(), smallestVersion, level, QR_MODE_8, asTyped), &QRcode_free);
    if (!made)
        return std::nullopt;
    QrCode code{made->width, {}, correction};
    const std::size_t modules = static_cast<std::size_t>(made->width) * static_cast<std::size_t>(made->width);
    code.dark.reserve(modules);
    for (std::size_t i = 0; i < modules; ++i)
        code.dark.push_back((made->data[i] & 1U) != 0); // the other bits say what the module is for
    return code;
}

} // namespace

double moduleOf(const QrCode &code, double room) { return std::floor(room / (code.side + 2 * quietModules)); }

core::Result<QrCode> qrCodeFor(const QString &text, double room)
{
    for (const Correction correction : {Correction::Q, Correction::M}) {
        auto code = encode(text.toUtf8(), correction);
        if (code && moduleOf(*code, room) >= leastModule * record::millimetre)
            return *std::move(code);
    }
    return core::failure(core::ErrorCode::BadInput, tr("The code \"%1\" is too long for a label of this size. Choose a larger one.").arg(text));
}

QPainterPath pathOf(const QrCode &code, double module)
{
    QPainterPath path;
    for (int row = 0; row < code.side; ++row) {
        for (int column = 0; column < code.side; ++column) {
            const int from = column;
            while (column < code.side && code.isDark(column, row))
                ++column;
            if (column > from)
                path.addRect(from * module, row * module, (column - from) * module, module);
        }
    }
    path.setFillRule(Qt::WindingFill);
    return path;
}

} // namespace labels
