// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

namespace core {

/// Counts up with each release whose rules admit less, or more, than those before: entries are judged by the rules of the program that
/// verifies, and a record that was closed under others says under which.
constexpr int rulesVersion = 1;

} // namespace core
