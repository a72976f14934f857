// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QGuiApplication>
#include <QProcessEnvironment>

#include <cstdio>
#include <memory>

#include "app/cli/run.hpp"
#include "app/logging/qt_messages.hpp"
#include "app/logging/state_folder.hpp"
#include "core/ledger/seal.hpp"

namespace {

using namespace Qt::StringLiterals;

logging::Log openLog()
{
    auto log = logging::Log::open({.folder = logging::stateFolder(QProcessEnvironment::systemEnvironment()), .program = u"remate-cli"_s});
    if (log)
        return *std::move(log);
    std::fprintf(stderr, "%s\n", qUtf8Printable(log.error().message));
    return logging::Log::none();
}

/// Pages need fonts, which Qt gives to programs with a platform; one without windows will do.
std::unique_ptr<QCoreApplication> application(int &argc, char **argv, cli::Fonts fonts)
{
    if (fonts == cli::Fonts::NotNeeded)
        return std::make_unique<QCoreApplication>(argc, argv);
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    return std::make_unique<QGuiApplication>(argc, argv);
}

} // namespace

int main(int argc, char **argv)
{
    const auto parsed = cli::parse(argc, argv);
    if (const auto *told = std::get_if<cli::Told>(&parsed))
        return cli::tell(*told);
    const auto &invocation = std::get<cli::Invocation>(parsed);
    const auto app = application(argc, argv, invocation.command->fonts);
    QCoreApplication::setApplicationName(u"remate-cli"_s);
    const logging::Log log = openLog();
    const logging::QtMessages messages(log);
    if (const auto ready = core::readyCryptography(); !ready) {
        std::fprintf(stderr, "%s\n", qUtf8Printable(ready.error().message));
        return static_cast<int>(cli::Exit::World);
    }
    return cli::run(invocation, {session::systemClock(), log});
}
