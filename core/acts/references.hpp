// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/ledger/entry.hpp"

namespace core {

/// Something an entry mentions and that somebody may ask for later, over all jobs.
struct Reference {
    QString sort; ///< `person`, `tool`, `part`, `batch`, `serial`, `certificate`
    QString value;
    bool operator==(const Reference &) const = default;
};

/// What a statement mentions: its author, its tool when it is about one, and every field of its act that refers to
/// something. Each reference once.
std::vector<Reference> referencesOf(const Statement &said);

/// Moves when referencesOf changes, so that an index built from it is rebuilt.
constexpr int referencesVersion = 1;

} // namespace core
