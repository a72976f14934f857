// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/manual/pages.hpp"

namespace manual {

/// Every rule by name and why it exists, as the rulebook has them: a page that cannot fall behind.
Page rulesPage();

} // namespace manual
