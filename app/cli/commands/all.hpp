// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/cli/command.hpp"

/// The commands, one function a file of this folder.
namespace cli {

Command initCommand();
Command demoCommand();
Command jobsCommand();
Command showCommand();
Command looseEndsCommand();
Command holdsCommand();
Command whereUsedCommand();
Command packageImportCommand();
Command packageListCommand();
Command packageTakeCommand();
Command timelineCommand();
Command sampleCommand();
Command sheetCommand();
Command compareCommand();
Command registerCommand();
Command listImportCommand();
Command listExportCommand();
Command enterCommand();
Command enrolCommand();
Command grantCommand();
Command toolCommand();
Command replaceKeyCommand();
Command changePinCommand();
Command stationCommand();
Command carryKeyCommand();
Command takeKeyCommand();
Command stopKeyCommand();
Command doubtfulCommand();
Command verifyCommand();
Command exportCommand();
Command labelsCommand();
Command backupCommand();
Command calcCommand();
Command manualCommand();

} // namespace cli
