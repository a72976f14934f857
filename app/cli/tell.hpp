// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "app/cli/command.hpp"
#include "app/session/signed.hpp"
#include "core/rules/refusal.hpp"

/// Parts of answers that several commands give.
namespace cli {

/// Columns of text under each other, each as wide as its widest cell.
QString columns(const std::vector<std::vector<QString>> &rows);

core::json::Object refusalJson(const core::Refusal &refusal);
core::json::Array refusalsJson(const core::Refusals &refusals);
/// `  rule: sentence (cleared by …)`, a line each.
QString refusalsText(const core::Refusals &refusals);

core::json::Object errorJson(const core::Error &error);

/// An error, or the answer No with its rules.
core::Result<Answer> notSigned(const session::NotSigned &no);

/// The answer after entries were signed.
Answer signedAnswer(const std::vector<core::Entry> &entries, const QString &text);

} // namespace cli
