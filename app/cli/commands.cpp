// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

namespace cli {

const std::vector<Command> &commands()
{
    static const std::vector<Command> all = {
        initCommand(),     demoCommand(),       jobsCommand(),       showCommand(),   looseEndsCommand(), registerCommand(),
        listImportCommand(), listExportCommand(), enterCommand(),    enrolCommand(),  grantCommand(),     toolCommand(),
        replaceKeyCommand(), changePinCommand(),  stationCommand(),    carryKeyCommand(),  takeKeyCommand(),  stopKeyCommand(),
        doubtfulCommand(),  verifyCommand(),   exportCommand(), labelsCommand(), backupCommand(),    calcCommand(),
        holdsCommand(),     whereUsedCommand(), packageImportCommand(), packageListCommand(), packageTakeCommand(),
        timelineCommand(),  sampleCommand(), compareCommand(), manualCommand(), sheetCommand(),
    };
    return all;
}

} // namespace cli
