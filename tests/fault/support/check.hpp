// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/value/digest.hpp"

/// What is left of a store after it was hurt, seen by opening it anew.
namespace check {

struct Outcome {
    int lost = 0;          ///< acknowledged entries that are not there
    int unclaimed = 0;     ///< entries that are there and that nobody acknowledged
    qint64 entries = 0;    ///< of all ledgers
    QString trouble{};     ///< why it is not sound; empty: it opened, verified wholly, and took one more entry
    bool isGood() const { return lost == 0 && trouble.isEmpty(); }
};

/// Opens the store for writing as after a crash, verifies all of it, compares with what was acknowledged, asks SQLite whether
/// its pages hold together, and signs one more entry. `before` is how many entries it had when the run began.
Outcome store(const QString &path, const std::vector<core::Digest> &acknowledged, qint64 before);

} // namespace check
