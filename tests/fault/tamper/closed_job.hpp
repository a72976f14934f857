// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QTemporaryDir>

#include <map>
#include <memory>

#include "core/kinds/kinds.hpp"
#include "core/ledger/seal.hpp"
#include "core/ledger/second_key.hpp"
#include "core/value/id.hpp"
#include "core/value/result.hpp"

namespace battery {

/// A small closed job that is linked with another one, in a store and in a package. Keys, names and moments are fixed, so that every run hurts
/// the same bytes. Whoever alters it may use the keys of everybody.
struct ClosedJob {
    QTemporaryDir folder;
    core::Kinds kinds;
    std::map<core::PersonId, core::SigningKey> keys; ///< as they are when the job is closed
    std::map<core::Digest, core::SigningKey> byFingerprint; ///< of all keys that there ever were
    QString store{};
    QString package{};
};

core::PersonId person(const char *id);
core::LedgerId registerLedger();
core::LedgerId jobLedger();
core::LedgerId shopLedger();

/// The key of a fixed seed; the same number, the same key.
core::SigningKey keyOf(int number);
/// What everybody's key is bound to.
const core::SecondKey &station();

/// Tells the job, closes the store and exports the package. Needs a QGuiApplication and the resources.
core::Result<std::unique_ptr<ClosedJob>> makeClosedJob();

} // namespace battery
