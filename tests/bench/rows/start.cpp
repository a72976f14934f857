// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QUuid>

#include <ctime>

#include "app/demo/scenario.hpp"
#include "resources/resources.hpp"
#include "tests/bench/fixture/must.hpp"
#include "tests/bench/rows/row.hpp"

namespace bench {

using namespace Qt::StringLiterals;

namespace {

constexpr int fixtureVersion = 1;

struct Start {
    double milliseconds; ///< from before the process is made to the first painted window
    double mebibytes;    ///< resident then
};

qint64 nanosecondsNow()
{
    timespec now{};
    clock_gettime(CLOCK_MONOTONIC, &now);
    return now.tv_sec * 1'000'000'000LL + now.tv_nsec;
}

/// Starts a program on the platform of this one (QT_QPA_PLATFORM) with a home of its own; start/first_paint.cpp, loaded
/// into it, tells when its first window was painted, and quits.
Start start(const QString &program, const QStringList &arguments, const QString &home, const QString &title)
{
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(u"QT_PLUGIN_PATH"_s, QStringLiteral(REMATE_BENCH_PLUGINS));
    environment.insert(u"QT_QPA_GENERIC_PLUGINS"_s, u"first_paint"_s);
    for (const QString &folder : {u"HOME"_s, u"XDG_CONFIG_HOME"_s, u"XDG_DATA_HOME"_s, u"XDG_STATE_HOME"_s, u"XDG_CACHE_HOME"_s})
        environment.insert(folder, home);
    QProcess process;
    process.setProcessEnvironment(environment);
    process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    const qint64 began = nanosecondsNow();
    process.start(program, arguments);
    if (!process.waitForFinished(60'000) || process.exitCode() != 0)
        giveUp(u"%1 did not start and end: %2"_s.arg(program, process.errorString()));
    const QString told = QString::fromUtf8(process.readAllStandardOutput()).trimmed();
    if (told.section(u' ', 2) != title)
        giveUp(u"%1 painted another window first: \"%2\""_s.arg(program, told));
    return {static_cast<double>(told.section(u' ', 0, 0).toLongLong() - began) / 1e6, told.section(u' ', 1, 1).toDouble() / (1024 * 1024)};
}

QString demoStore(const QString &folder)
{
    const QString path = QDir(folder).filePath(u"demo-v%1.remate"_s.arg(fixtureVersion));
    if (QFile::exists(path))
        return path;
    const QString making = path + QUuid::createUuid().toString(QUuid::WithoutBraces);
    auto store = must(db::Store::create(making));
    must(demo::play(*store, must(resources::loadKinds()), QDate(2026, 3, 2), demo::Until::SecondShift, core::leastCost));
    must(store->close());
    if (!QFile::rename(making, path))
        giveUp(u"%1 cannot be written."_s.arg(path));
    return path;
}

} // namespace

std::vector<Figure> measureStart(const Settings &settings)
{
    const QString store = QDir(settings.scratch).filePath(u"demo.remate"_s);
    QFile::copy(demoStore(settings.cache), store);
    const QDir here(QCoreApplication::applicationDirPath());
    const auto program = [&] { return start(QStringLiteral(REMATE_PROGRAM), {store}, settings.scratch, u"demo – Remate"_s); };
    const auto bare = [&] { return start(here.filePath(u"empty_window"_s), {}, settings.scratch, u"empty"_s); };
    program(); // both are in memory from now on
    bare();
    Figure time{u"first paint, demo store open"_s, u"ms"_s, {}, atMost(2.0), u"empty window"_s};
    Figure memory{u"resident memory then"_s, u"MiB"_s, {}, atMost(2.5), u"empty window"_s};
    for (int i = 0; i < settings.by(1, 2, 4) * settings.repetitions; ++i) {
        const Start one = program();
        const Start other = bare();
        time.repetitions.push_back({one.milliseconds, other.milliseconds});
        memory.repetitions.push_back({one.mebibytes, other.mebibytes});
    }
    return {time, memory};
}

} // namespace bench
