// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QApplication>
#include <QCommandLineParser>
#include <QSettings>

#include <cstdio>

#include "app/desktop/ahead.hpp"
#include "app/desktop/ask_in_windows.hpp"
#include "app/desktop/main_window.hpp"
#include "app/language/spoken.hpp"
#include "app/logging/log.hpp"
#include "app/logging/qt_messages.hpp"
#include "app/logging/state_folder.hpp"
#include "core/ledger/seal.hpp"
#include "resources/resources.hpp"

namespace {

int say(const core::Error &error)
{
    std::fprintf(stderr, "%s\n", qUtf8Printable(error.message));
    return 3;
}

logging::Log openLog()
{
    auto log = logging::Log::open({.folder = logging::stateFolder(QProcessEnvironment::systemEnvironment()), .program = QStringLiteral("remate")});
    if (log)
        return *std::move(log);
    std::fprintf(stderr, "%s\n", qUtf8Printable(log.error().message));
    return logging::Log::none();
}

} // namespace

int main(int argc, char **argv)
{
    const std::future<void> fonts = desktop::readFontsAhead();
    QApplication app(argc, argv);
    QApplication::setApplicationName(QStringLiteral("remate"));
    QApplication::setOrganizationName(QStringLiteral("remate"));
    QApplication::setApplicationDisplayName(QStringLiteral("Remate"));
    QApplication::setDesktopFileName(QStringLiteral("remate"));

    QCommandLineParser arguments;
    arguments.setApplicationDescription(QCoreApplication::translate("Main", "Keeps every loose end of an aircraft unit change."));
    arguments.addHelpOption();
    arguments.addPositionalArgument(QStringLiteral("store"), QCoreApplication::translate("Main", "The store to open."), QStringLiteral("[store]"));
    arguments.process(app);

    const logging::Log log = openLog();
    const logging::QtMessages messages(log);
    log.info(u"starting");
    if (const auto ready = core::readyCryptography(); !ready)
        return say(ready.error());
    const auto kinds = resources::loadKinds();
    if (!kinds)
        return say(kinds.error());

    QSettings settings;
    const desktop::Preferences preferences = desktop::readPreferences(settings);
    language::Spoken words(QLocale::system());
    words.speak(preferences.spoken(QLocale::system()));
    desktop::applyAppearance(app, preferences.appearance);
    const desktop::SessionMaker maker{session::systemClock(), core::everydayCost, std::chrono::minutes(preferences.idleMinutes)};
    const QString path = arguments.positionalArguments().value(0);
    std::future<core::Result<desktop::StorePlace>> store;
    if (!path.isEmpty())
        store = desktop::openAhead(path, maker);
    fonts.wait();
    desktop::AskInWindows ask;
    desktop::MainWindow window(ask, *kinds, maker, preferences);
    ask.setParent(&window);
    window.keepBegunForms(logging::stateFolder(QProcessEnvironment::systemEnvironment()) + QStringLiteral("/begun"));
    QObject::connect(&window, &desktop::MainWindow::appearanceChosen, &app, [&app](desktop::Appearance appearance) { desktop::applyAppearance(app, appearance); });
    QObject::connect(&window, &desktop::MainWindow::languageChosen, &app, [&words](language::Language language) { words.speak(language); });
    QObject::connect(&window, &desktop::MainWindow::noticeShown, &app,
                     [&log](const session::Notice &notice) { log.warning(u"notice shown", {{QStringLiteral("says"), notice.sentence}}); });
    // Before the window is shown, so that it is laid out once.
    if (store.valid())
        window.takeStore(store.get());
    else if (!path.isEmpty())
        window.openStore(path);
    window.show();
    const int code = QApplication::exec();
    desktop::writePreferences(settings, window.preferences());
    log.info(u"ending");
    return code;
}
