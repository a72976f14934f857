// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/package/verify_package.hpp"
#include "db/packages.hpp"

namespace package {

/// How a package stands to what the store has of the same job.
enum class Kinship {
    Older,   ///< the other one goes on where this one ends
    Newer,   ///< this one goes on where the other one ends
    Fork,    ///< both go on from a common entry, or from none: one of the two was made up
};

struct Relation {
    Kinship kinship;
    std::optional<qint64> number; ///< of the imported package; nothing: the store's own job
    qint64 firstDifference = 0;   ///< of a fork: the first entry that is not the same
};

/// A relation in a sentence.
QString inWords(const Relation &relation);

struct Imported {
    qint64 number; ///< in the store
    About about;
    core::Digest root;
    bool isOwnRoot; ///< the same root as the store's own
    std::vector<Relation> relations; ///< to the store's own job, and to packages of it that came before
};

/// Verifies a package and keeps it in the store, whole, read-only and under its own root: never among the store's own ledgers.
/// Refused: it does not hold (the report says why: verify it). BadInput: the very package, or the same job up to the same entry, is there already, imported or the store's
/// own. NotFound, Io, Cancelled, NoSpace.
core::Result<Imported> importPackage(db::Store &store, const QString &path, const session::Known &known, const core::Kinds &kinds, const core::Instant &now, const Going &going = {});

/// Writes an imported package to a file, byte for byte as it came.
core::Result<void> takeOut(db::Store &store, qint64 number, const QString &path);

} // namespace package
