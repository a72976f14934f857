// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/value/result.hpp"

namespace core {

/// The message with the place in front, as far as it is known: `file:row:column: what happened`.
QString errorInWords(const Error &error);

} // namespace core
