// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>
#include <QDir>
#include <QProcess>
#include <QUuid>

#include <algorithm>
#include <chrono>
#include <limits>
#include <memory>

#include "app/session/read_on.hpp"
#include "tests/bench/fixture/must.hpp"
#include "tests/bench/rows/row.hpp"
#include "tests/db/support/signed_entries.hpp"

namespace bench {

using namespace Qt::StringLiterals;

namespace {

/// What a number of programs did side by side.
struct Together {
    double appended = 0;
    double seconds = 0; ///< of the wall, from the word to begin until the last one has ended
    double slowest = 0; ///< entries of the program that had the fewest
    double fastest = 0;
    double longestWait = 0; ///< microseconds
    double medianWait = 0;  ///< the middle of the programs' medians
    double heldErrors = 0;
    double lost = 0; ///< acknowledged, but not in an unbroken chain
};

using Program = std::unique_ptr<QProcess>;

Program start(const QString &path, int jobs, int number, double seconds)
{
    auto program = std::make_unique<QProcess>();
    program->setProcessChannelMode(QProcess::ForwardedErrorChannel);
    program->start(QCoreApplication::applicationFilePath(), {u"--writer"_s, path, QString::number(jobs), QString::number(number), QString::number(seconds)});
    if (!program->waitForReadyRead(60'000) || program->readLine() != "ready\n")
        giveUp(u"A program that was to append did not begin."_s);
    return program;
}

/// Entries of all jobs whose chains hold; a broken one ends the bench.
double soundEntries(db::Store &store)
{
    double count = 0;
    for (const db::StoredLedger &ledger : must(store.ledgers()))
        if (ledger.role == db::LedgerRole::Job)
            must(session::readOn(store, *ledger.id(), {}, [&](const core::Statement &, const core::Digest &) { ++count; }));
    return count;
}

Together sideBySide(const QString &scratch, int programs, int jobs, double seconds)
{
    const QString path = QDir(scratch).filePath(QUuid::createUuid().toString(QUuid::WithoutBraces));
    auto store = must(db::Store::create(path));
    entries::beginRegister(*store);
    std::vector<Program> all;
    for (int i = 0; i < programs; ++i)
        all.push_back(start(path, jobs, i, seconds));
    Together together;
    const auto began = std::chrono::steady_clock::now();
    for (const Program &one : all) {
        // Kept in a buffer, the word would reach each program only when the one before it had ended.
        if (one->write("go\n") < 0 || !one->waitForBytesWritten(10'000))
            giveUp(u"A program that was to append did not hear when."_s);
    }
    double lastBegun = 0;
    double firstEnded = std::numeric_limits<double>::infinity();
    std::vector<double> counts;
    std::vector<double> medians;
    for (const Program &one : all) {
        if ((one->state() != QProcess::NotRunning && !one->waitForFinished(120'000)) || one->exitCode() != 0)
            giveUp(u"A program that appended did not end well."_s);
        const QList<QByteArray> told = one->readAllStandardOutput().simplified().split(' ');
        counts.push_back(told.value(0).toDouble());
        together.longestWait = std::max(together.longestWait, told.value(1).toDouble());
        medians.push_back(told.value(2).toDouble());
        together.heldErrors += told.value(3).toDouble();
        together.appended += counts.back();
        lastBegun = std::max(lastBegun, told.value(4).toDouble());
        firstEnded = std::min(firstEnded, told.value(5).toDouble());
    }
    together.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
    // In a moment as short as a smoke run's, a busy machine may let some end before others begin.
    if (seconds >= 1 && lastBegun > firstEnded)
        giveUp(u"%1 programs did not append side by side: the figures would mean nothing. Try again on a machine with less to do."_s.arg(programs));
    together.slowest = *std::min_element(counts.begin(), counts.end());
    together.fastest = *std::max_element(counts.begin(), counts.end());
    together.medianWait = quantile(medians, 0.5);
    together.lost = together.appended - soundEntries(*store);
    return together;
}

} // namespace

std::vector<Figure> measureFairness(const Settings &settings)
{
    const double seconds = settings.by(0.1, 2.0, 10.0);
    std::vector<Figure> figures;
    for (const int programs : {8, 20}) {
        for (const int jobs : {1, 20}) {
            const QString name = u"%1 programs on %2"_s.arg(programs).arg(jobs == 1 ? u"one job"_s : u"%1 jobs"_s.arg(jobs));
            Figure held{name + u", told that the store is held"_s, u"times"_s, {}, atMost(0), {}};
            Figure lost{name + u", acknowledged and lost"_s, u"entries"_s, {}, atMost(0), {}};
            Figure fair{name + u", slowest / fastest"_s, u"entries"_s, {}, atLeast(0.8), u"fastest"_s};
            Figure wait{name + u", longest wait / median"_s, u"µs"_s, {}, atMost(100), u"median"_s};
            Figure rate{name + u", all together / one alone"_s, u"entries/s"_s, {}, atLeast(0.8), u"one program"_s};
            for (int i = 0; i < settings.repetitions; ++i) {
                const Together together = sideBySide(settings.scratch, programs, jobs, seconds);
                const Together alone = sideBySide(settings.scratch, 1, jobs, seconds);
                held.repetitions.push_back({together.heldErrors, std::nullopt});
                lost.repetitions.push_back({together.lost, std::nullopt});
                fair.repetitions.push_back({together.slowest, together.fastest});
                wait.repetitions.push_back({together.longestWait, together.medianWait});
                rate.repetitions.push_back({together.appended / together.seconds, alone.appended / alone.seconds});
            }
            figures.insert(figures.end(), {held, lost, fair, wait, rate});
        }
    }
    return figures;
}

} // namespace bench
