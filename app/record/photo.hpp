// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QSize>

#include <vector>

#include "core/job/state.hpp"
#include "core/value/result.hpp"

namespace record {

/// A photo as the record carries it.
struct Shown {
    QByteArray jpeg; ///< upright, opaque on white, in sRGB
    QSize pixels;
};

/// Reads a JPEG or PNG, turned as its camera was held, and makes it no larger than `most`, so that hundreds of them leave the record small.
/// `marks` are drawn on it; the numbers need a QGuiApplication.
/// BadInput, in words that go under the place where the photo would be: no such picture, too large, cannot be decoded.
core::Result<Shown> shown(const QByteArray &bytes, QSize most, const std::vector<core::PhotoMark> &marks = {});

} // namespace record
