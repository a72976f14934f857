// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArrayView>

#include <vector>

#include "core/ledger/entry.hpp"
#include "core/value/result.hpp"

namespace core {

/// A hold point that a job may be given: its id, and the body of the entry that sets it.
struct NamedHold {
    HoldId id;
    json::Object body;
};

/// Reads a set of hold points: `{"hold_points": [{"id": "free", "title": …, "conditions": […], "gates": […], …}]}`. Refuses (BadInput,
/// naming the file and the id) whatever the form of a `hold.set` entry refuses, a condition that means nothing, and an id that stands twice.
Result<std::vector<NamedHold>> parseHoldSet(QByteArrayView json, const QString &fileName);

/// The entries that set them, in their order.
std::vector<Draft> holdDrafts(const std::vector<NamedHold> &holds, const PersonId &author, Instant at);

} // namespace core
