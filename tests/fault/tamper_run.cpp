// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

// Alters a closed job's package and store in thousands of ways, and says which rule tells of each:
//   tamper_run             all of them
//   tamper_run --short     one in ten, for builds that are slow
//   … --only WORDS         only the groups whose name has these words
// Ends with 1 when one was told by nobody, when something sound was called faulty, or when a class proved nothing; with 3 after a crash or an
// answer that took too long.

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QTextStream>

#include "resources/resources.hpp"
#include "tests/fault/tamper/battery.hpp"
#include "tests/fault/tamper/classes.hpp"

namespace {

using Play = void (*)(battery::Battery &);

const std::pair<const char *, Play> groups[] = {
    {"zip bytes", &battery::classes::zipBytes},   {"zip tricks", &battery::classes::zipTricks}, {"zip bombs", &battery::classes::bombs},
    {"file bytes", &battery::classes::fileBytes}, {"file names", &battery::classes::fileNames}, {"pages", &battery::classes::pages},
    {"lines", &battery::classes::lines},          {"members", &battery::classes::members},      {"spellings", &battery::classes::spellings},
    {"signatures", &battery::classes::signatures}, {"forgers", &battery::classes::forgers},     {"store rows", &battery::classes::storeRows},
    {"store guard", &battery::classes::storeGuard}, {"store beside", &battery::classes::storeBeside}};

} // namespace

int main(int argc, char **argv)
{
    const QGuiApplication application(argc, argv);
    resources::readyResources();
    const QStringList arguments = QGuiApplication::arguments();
    QTextStream out(stdout);
    QElapsedTimer time;
    time.start();
    const auto job = battery::makeClosedJob();
    if (!job) {
        out << job.error().message << '\n';
        return 1;
    }
    battery::Battery run(**job, arguments.contains(QStringLiteral("--short")) ? battery::Battery::Extent::Short : battery::Battery::Extent::Full);
    const auto only = arguments.indexOf(QStringLiteral("--only"));
    for (const auto &[name, play] : groups) {
        if (only >= 0 && !QString::fromLatin1(name).contains(arguments.value(only + 1)))
            continue;
        const qint64 began = time.elapsed();
        play(run);
        QTextStream(stderr) << name << ": " << time.elapsed() - began << " ms\n";
    }
    battery::print(out, run.classes());
    out << QStringLiteral("\n%1 s\n").arg(time.elapsed() / 1000);
    return battery::isGood(run.classes()) ? 0 : 1;
}
