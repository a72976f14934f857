// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

// A program that writes to a store beside others:
//   store_writer STORE LEDGER NAME COUNT [seconds]
// appends COUNT entries (or for so many seconds when COUNT is 0) as NAME, each signed on the head found in its own turn, and
// prints one line: how many, its longest and median wait in microseconds, and how often it was told that the store is held.
//   store_writer STORE hold
// takes the turn, says so, and keeps it until it is killed.
//   store_writer STORE guess
// tries a wrong secret for the key of Ana and says so when it has its answer.
//   store_writer STORE make
// makes a store with a register of one entry.

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QTextStream>

#include <algorithm>
#include <vector>

#include <unistd.h>

#include "db/store.hpp"
#include "tests/db/support/signed_entries.hpp"

namespace {

int hold(db::Store &store)
{
    const auto turn = store.takeTurn();
    QTextStream(stdout) << (turn ? "holding\n" : "no turn\n") << Qt::flush;
    for (;;)
        pause();
}

int appendMany(db::Store &store, const QStringList &arguments)
{
    const auto ledger = entries::ledger(arguments[2]);
    const auto hand = entries::hand(arguments[3]);
    const int count = arguments[4].toInt();
    const qint64 seconds = arguments.value(5).toLongLong();
    std::vector<qint64> waits;
    int held = 0;
    QElapsedTimer all;
    all.start();
    while (count > 0 ? static_cast<int>(waits.size()) < count : all.elapsed() < seconds * 1000) {
        QElapsedTimer one;
        one.start();
        const auto done = entries::appendOne(store, ledger, hand);
        if (!done && done.error().code != core::ErrorCode::Locked) {
            QTextStream(stderr) << done.error().message << '\n';
            return 1;
        }
        held += done ? 0 : 1;
        if (done)
            waits.push_back(one.nsecsElapsed() / 1000);
    }
    std::sort(waits.begin(), waits.end());
    QTextStream(stdout) << waits.size() << ' ' << (waits.empty() ? 0 : waits.back()) << ' '
                        << (waits.empty() ? 0 : waits[waits.size() / 2]) << ' ' << held << '\n';
    return 0;
}

int guess(db::Store &store)
{
    const auto ana = entries::hand(QStringLiteral("Ana"));
    const auto key = store.credentials().unlock(ana.person, ana.key.publicKey().fingerprint(), QStringLiteral("000000"), entries::station(),
                                                core::Instant::fromMilliseconds(1'772'439'271'120));
    QTextStream(stdout) << (key ? "right\n" : "wrong\n") << Qt::flush;
    return 0;
}

int make(const QString &path)
{
    auto store = db::Store::create(path);
    if (store)
        entries::beginRegister(**store);
    return store ? 0 : 1;
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    const QStringList arguments = application.arguments();
    if (arguments.size() < 3)
        return 2;
    if (arguments[2] == QStringLiteral("make"))
        return make(arguments[1]);
    auto store = db::Store::open(arguments[1], db::Access::ReadWrite);
    if (!store) {
        QTextStream(stderr) << store.error().message << '\n';
        return 1;
    }
    if (arguments[2] == QStringLiteral("hold"))
        return hold(**store);
    if (arguments[2] == QStringLiteral("guess"))
        return guess(**store);
    return arguments.size() < 5 ? 2 : appendMany(**store, arguments);
}
