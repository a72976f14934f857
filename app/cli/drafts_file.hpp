// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArrayView>

#include <vector>

#include "core/ledger/entry.hpp"
#include "core/value/result.hpp"

namespace cli {

/// A draft as a script wrote it.
struct DraftLine {
    qint64 row;
    core::Draft draft; ///< its moment is set when it is signed
};

using DraftLines = tl::expected<std::vector<DraftLine>, std::vector<core::Error>>;

/// Reads drafts, one JSON object a line with the members author, kind, subject (or null, or left out) and body (or left out).
/// Empty lines are passed over. All faults at once, each with file and line.
DraftLines readDrafts(QByteArrayView bytes, const QString &fileName);

} // namespace cli
