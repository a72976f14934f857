// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QCoreApplication>
#include <QString>

#include "core/rules/case.hpp"

namespace core {

/// A sentence of a rule, translated in context "Rule".
inline QString inWords(const char *sentence) { return QCoreApplication::translate("Rule", sentence); }

/// A refusal about what the draft is about. The rulebook fills in the rule's name.
inline Refusal refusal(const Case &c, const QString &sentence, const QString &clearedBy)
{
    return {{}, c.draft.subject.value_or(QString()), sentence, clearedBy};
}

} // namespace core
