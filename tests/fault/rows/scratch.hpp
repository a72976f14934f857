// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

/// Where the rounds' folders are made.
namespace scratch {

/// In memory where there is such a place: a killed process leaves there what it would leave on a disk, only sooner.
/// For QTemporaryDir.
QString pattern();

} // namespace scratch
