// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"

namespace story {

/// The index made anew from the list.
inline core::ListIndex indexOf(const core::JobState &job)
{
    core::ListIndex index;
    for (std::size_t at = 0; at < job.items.size(); ++at) {
        index.note(at, nullptr, job.items[at].listed);
        if (job.items[at].sent)
            index.noteSent(at);
    }
    return index;
}

} // namespace story
