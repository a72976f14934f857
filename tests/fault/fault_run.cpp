// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

// Hurts stores as a hangar's laptop does and says what was left:
//   fault_run --short   a minute's worth, for every build
//   fault_run --full    every call, every state: for a release
//   … --only WORDS      only the rows whose name has these words
//   … --messages        also what a technician would have read
// Ends with 1 when something was lost or false, or when a row proved nothing.

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QTextStream>

#include "tests/fault/rows/catalogue.hpp"
#include "tests/fault/rows/table.hpp"

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    const QStringList arguments = application.arguments();
    const Extent extent{.isFull = arguments.contains(QStringLiteral("--full"))};
    const auto only = arguments.indexOf(QStringLiteral("--only"));
    QElapsedTimer time;
    time.start();
    const auto rows = catalogue::run(extent, only < 0 ? QString() : arguments.value(only + 1));
    QTextStream out(stdout);
    table::print(out, rows);
    if (arguments.contains(QStringLiteral("--messages")))
        table::printMessages(out, rows);
    out << QStringLiteral("\n%1 s\n").arg(time.elapsed() / 1000);
    return table::isGood(rows) ? 0 : 1;
}
