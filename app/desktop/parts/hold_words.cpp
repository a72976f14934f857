// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/hold_words.hpp"

#include <QCoreApplication>
#include <QStringList>

#include "app/desktop/parts/words.hpp"
#include "core/acts/act.hpp"
#include "core/holds/condition.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

struct HoldWords {
    Q_DECLARE_TR_FUNCTIONS(HoldWords)
};

} // namespace

QString heldBackInWords(const core::HoldPoint &hold)
{
    QStringList parts;
    for (const core::HoldGate &gate : hold.gates) {
        const core::Act *act = core::findAct(gate.act);
        const QString verb = act ? verbOf(*act) : gate.act;
        QStringList which;
        if (!gate.which.isEmpty())
            which << core::inWordsOf(gate.which);
        for (const QString &name : gate.names)
            which << name;
        parts << (which.isEmpty() ? verb : HoldWords::tr("%1 (%2)").arg(verb, which.join(u", "_s)));
    }
    return HoldWords::tr("Holds back: %1").arg(parts.join(u"; "_s));
}

QStringList holdInWords(const core::HoldPoint &hold)
{
    QStringList lines;
    for (const core::HoldCondition &condition : hold.conditions)
        lines << core::describe(condition);
    for (const QString &statement : hold.statements)
        lines << HoldWords::tr("To be seen: %1").arg(statement);
    return lines << heldBackInWords(hold);
}

} // namespace desktop
