// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0
// complaint: PersonId|PersonTag

#include "core/value/id.hpp"

bool mayInspect(const core::PersonId &person);

bool ask(const QString &typed)
{
#ifdef MUST_NOT_COMPILE
    return mayInspect(typed);
#else
    const auto person = core::PersonId::parse(typed);
    return person && mayInspect(*person);
#endif
}
