// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>

#include <vector>

#include "db/store.hpp"

namespace bench {

/// What the bare side of verifying checks: the library's own call over the same bytes, in memory.
struct Signature {
    QByteArray key;
    QByteArray bytes;
    QByteArray signature;
};

/// Those of all entries of a store.
std::vector<Signature> signaturesOf(db::Store &store);

/// Checks them all, the work halved between two threads. In seconds.
double checkAll(const std::vector<Signature> &all);

} // namespace bench
