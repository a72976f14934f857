// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>

#include <vector>

namespace fuzz {

/// A reader of bytes that come from elsewhere. Stops the program where it breaks what it promises.
struct Target {
    const char *name; ///< its seeds lie in tests/fuzz/seeds/<name>
    void (*feed)(const QByteArray &bytes);
};

const std::vector<Target> &targets();

} // namespace fuzz
