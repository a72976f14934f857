// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

// The program that is hurt. Each line that it writes is a claim that it is held to afterwards:
//   fault_victim append STORE COUNT   signs COUNT entries in the job of a store that was made before, then closes
//   fault_victim life STORE COUNT     makes a store, people, a job and COUNT entries, an attachment, a backup; writes back, closes
//   fault_victim refill STORE COUNT BALLAST   the same as append; when the disk is full, removes BALLAST and goes on
//   fault_victim check STORE BEFORE HASH …    opens a store after all that and says what is left; BEFORE: entries at the beginning
// Lines: "acked HASH" after an entry was signed; "said WHAT MESSAGE" when something was refused; "closed" at the end.

#include <QCoreApplication>

#include "tests/fault/support/check.hpp"
#include "tests/fault/victim/acts.hpp"

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    const QStringList arguments = application.arguments();
    if (arguments.size() < 4)
        return 2;
    const QString &what = arguments[1];
    if (what == QStringLiteral("append"))
        return victim::append(arguments[2], arguments[3].toInt(), {});
    if (what == QStringLiteral("refill") && arguments.size() > 4)
        return victim::append(arguments[2], arguments[3].toInt(), arguments[4]);
    if (what == QStringLiteral("life"))
        return victim::life(arguments[2], arguments[3].toInt());
    if (what != QStringLiteral("check"))
        return 2;
    std::vector<core::Digest> acknowledged;
    for (const QString &hash : arguments.sliced(4))
        acknowledged.push_back(core::Digest::parse(hash).value_or(core::Digest()));
    const check::Outcome left = check::store(arguments[2], acknowledged, arguments[3].toLongLong());
    victim::say(QStringLiteral("lost %1 unclaimed %2 %3").arg(left.lost).arg(left.unclaimed).arg(left.trouble.isEmpty() ? QStringLiteral("sound") : left.trouble));
    return left.isGood() ? 0 : 1;
}
