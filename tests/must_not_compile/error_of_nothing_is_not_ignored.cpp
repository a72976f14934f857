// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0
// complaint: unused-result|nodiscard

#include "core/value/result.hpp"

core::Result<void> backUp();

bool done()
{
#ifdef MUST_NOT_COMPILE
    backUp();
#endif
    return backUp().has_value();
}
