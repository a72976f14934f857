// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "app/desktop/ask.hpp"
#include "app/record/record.hpp"

namespace desktop {

/// Asked in the same words for everything that is set on paper. Nothing when the person thought better of it.
std::optional<record::PageSize> askPaper(Ask &ask, const QString &title);

} // namespace desktop
