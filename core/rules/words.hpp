// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"
#include "core/value/in_words.hpp"

namespace core {

/// A refusal about what the draft is about. The rulebook fills in the rule's name.
inline Refusal refusal(const Case &c, const QString &sentence, const QString &clearedBy)
{
    return {{}, c.draft.subject.value_or(QString()), sentence, clearedBy};
}

} // namespace core
