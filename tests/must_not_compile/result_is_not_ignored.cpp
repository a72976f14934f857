// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0
// complaint: unused-result|nodiscard

#include "core/value/result.hpp"

core::Result<int> append();

int count()
{
#ifdef MUST_NOT_COMPILE
    append();
#endif
    return append().value_or(0);
}
