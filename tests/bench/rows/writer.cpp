// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/bench/rows/writer.hpp"

#include <QElapsedTimer>
#include <QTextStream>

#include <chrono>

#include "tests/bench/fixture/must.hpp"
#include "tests/bench/measure/figure.hpp"
#include "tests/db/support/signed_entries.hpp"

namespace bench {

using namespace Qt::StringLiterals;

namespace {

/// The same clock in every program.
double monotonicSeconds() { return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count(); }

} // namespace

int writeBesideOthers(const QStringList &arguments)
{
    if (arguments.size() != 4)
        giveUp(u"STORE JOBS NUMBER SECONDS"_s);
    auto store = must(db::Store::open(arguments[0], db::Access::ReadWrite));
    const int jobs = arguments[1].toInt();
    const int number = arguments[2].toInt();
    const qint64 milliseconds = static_cast<qint64>(1000 * arguments[3].toDouble());
    const entries::Hand hand = entries::hand(u"P%1"_s.arg(number));
    QTextStream out(stdout);
    out << "ready\n" << Qt::flush;
    QTextStream(stdin).readLine();
    const double began = monotonicSeconds();

    std::vector<double> waits;
    int held = 0;
    QElapsedTimer all;
    all.start();
    for (int job = number; all.elapsed() < milliseconds; ++job) {
        core::Result<void> done;
        const double seconds = secondsOf([&] { done = entries::appendOne(*store, entries::ledger(u"job-%1"_s.arg(job % jobs)), hand); });
        if (done)
            waits.push_back(1e6 * seconds);
        else if (done.error().code == core::ErrorCode::Locked)
            ++held;
        else
            giveUp(done.error().message);
    }
    const double ended = monotonicSeconds();
    const bool hasNone = waits.empty();
    out << waits.size() << ' ' << (hasNone ? 0 : quantile(waits, 1)) << ' ' << (hasNone ? 0 : quantile(waits, 0.5)) << ' ' << held << ' '
        << QString::number(began, 'f', 6) << ' ' << QString::number(ended, 'f', 6) << '\n';
    return 0;
}

} // namespace bench
