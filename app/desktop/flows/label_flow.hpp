// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/ask.hpp"
#include "core/job/state.hpp"

namespace desktop {

/// Asks for the size of the labels, the paper and a file, and writes a label for each of `items`, or for every interface of the job where none is
/// chosen. Tells how it went.
void exportLabels(const core::JobState &job, const std::vector<core::InterfaceId> &items, Ask &ask);

} // namespace desktop
