// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0
// complaint: cannot convert|could not convert|no match

#include "core/value/quantity.hpp"

bool isWithin(const core::Quantity &reading, const core::Quantity &limit)
{
#ifdef MUST_NOT_COMPILE
    return reading <= 25.0;
#else
    return reading <= limit;
#endif
}
