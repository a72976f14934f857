// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0
// complaint: missing initializer for member .*tables

#include "core/acts/act.hpp"

using namespace core;

Act waved(bool (*take)(JobState &, const Statement &))
{
    const QLatin1String kind("interface.waved-at"), meaning("recorded");
#ifdef MUST_NOT_COMPILE
    return {kind, LedgerSort::Job, meaning, SubjectSort::Interface, "Wave", "Waved", {}, take, &noCautions};
#else
    return {kind, LedgerSort::Job, meaning, SubjectSort::Interface, "Wave", "Waved", {}, take, &noCautions, {}};
#endif
}
