// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/doubtful.hpp"

namespace session {

core::Result<std::vector<UseOf>> doubtfulSignatures(Session &session, const std::optional<core::PersonId> &person)
{
    std::vector<UseOf> all;
    for (const auto &[id, one] : session.reg().people) {
        if (person && *person != id)
            continue;
        for (const core::KeyDoubt &doubt : one.keyDoubts) {
            auto uses = whereUsed(session, {QStringLiteral("person"), id.text(), db::Between{doubt.since, doubt.until}, {}});
            if (!uses)
                return core::failure(uses.error());
            for (UseOf &use : *uses) {
                // Others may name the person; and two doubts may cover one signature, which is listed under the first.
                const bool isTheirs = use.said.author == id && core::keyDoubtAt(one, use.said.at) == &doubt;
                if (isTheirs)
                    all.push_back(std::move(use));
            }
        }
    }
    return all;
}

} // namespace session
