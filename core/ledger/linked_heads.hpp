// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <vector>

#include "core/ledger/entry.hpp"
#include "core/value/json.hpp"

namespace core {

/// How heads of linked ledgers are written wherever they are: an array of objects with `ledger`, `seq` and `hash`.
json::Array linkedHeadsValue(const std::vector<LinkedHead> &linked);

/// One of them; nothing where it is none, or has a member more.
std::optional<LinkedHead> readLinkedHead(const json::Value &value);

/// All of them; nothing where it is no array, or one of them cannot be read.
std::optional<std::vector<LinkedHead>> readLinkedHeads(const json::Value &value);

} // namespace core
