// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0
// complaint: no matching function for call to .*(Id|PersonId)

#include "core/value/id.hpp"

std::optional<core::PersonId> nobody()
{
#ifdef MUST_NOT_COMPILE
    return core::PersonId();
#else
    return std::nullopt;
#endif
}
