// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "tests/fault/tamper/battery.hpp"

/// What is altered, by where somebody would lay hands on it. Each function is one or several classes of the table.
namespace battery::classes {

// The container.
void zipBytes(Battery &battery);
void zipTricks(Battery &battery);
void bombs(Battery &battery);

// The bag.
void fileBytes(Battery &battery);
void fileNames(Battery &battery);
void pages(Battery &battery);
void lines(Battery &battery);

// What was signed.
void members(Battery &battery);
void spellings(Battery &battery);
void signatures(Battery &battery);
void forgers(Battery &battery);

// A store.
void storeRows(Battery &battery);
void storeGuard(Battery &battery);
void storeBeside(Battery &battery);

} // namespace battery::classes
