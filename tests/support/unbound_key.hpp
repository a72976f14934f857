// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/ledger/wrapped_key.hpp"

namespace unbound {

/// A key wrapped as it was before there were stations: sealed with the stretched secret alone. Made with the library itself, so that
/// the form of old stores is pinned by something else than the code that reads it. Least cost.
core::WrappedKey wrap(const core::SigningKey &key, const core::PersonId &person, const QString &secret);

} // namespace unbound
