// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/rows/row.hpp"

#include <algorithm>
#include <array>

bool isOfUse(const QString &message)
{
    constexpr std::array todo = {"Check", "check", "Make room", "Free ", "Close ", "close ", "Keep ", "Choose", "choose", "ry again", "ign again",
                                 "Ask ", "Wait", "go on with the last backup", "Copy ", "report", "Open ", "Look ", "Set the clock", "Register a new key"};
    const bool saysWhatToDo = std::any_of(todo.begin(), todo.end(), [&](const char *words) { return message.contains(QLatin1String(words)); });
    return saysWhatToDo && message.count(u'.') >= 2;
}

void demandProof(Row &row)
{
    if (!row.isRun())
        return;
    if (row.rounds == 0)
        row.failures += QStringLiteral("%1: no round was run").arg(row.tool);
    if (row.acknowledged == 0)
        row.failures += QStringLiteral("%1: nothing was acknowledged, so nothing could be lost").arg(row.tool);
    if (row.hurt == 0)
        row.failures += QStringLiteral("%1: no fault struck").arg(row.tool);
}
