// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0
// complaint: Draft::author|PersonId|Id\(\)|deleted|PersonTag

#include "core/ledger/entry.hpp"

core::Draft draft(const core::PersonId &author, const core::Instant &at)
{
#ifdef MUST_NOT_COMPILE
    Q_UNUSED(author)
    Q_UNUSED(at)
    return core::Draft{};
#else
    return core::Draft{author, at, "interface.disconnected", std::nullopt, {}};
#endif
}
