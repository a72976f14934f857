// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/last_own.hpp"

namespace core {

using namespace Qt::StringLiterals;

const Line *lastOwnEntry(const JobState &job, const PersonId &author)
{
    for (auto at = job.lines.size(); at-- > 0;) {
        const Line &line = job.lines[at];
        if (line.author == author && line.standing == Standing::Stands && line.kind != "entry.struck"_L1)
            return &line;
    }
    return nullptr;
}

} // namespace core
