// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStringView>

#include <vector>

#include "core/rules/case.hpp"

namespace core {

/// The rules that a draft of this kind is asked, in order. Empty for a kind that belongs to no job.
const std::vector<const Rule *> &rulesFor(QStringView kind);
const std::vector<const RegisterRule *> &registerRulesFor(QStringView kind);

/// Every rule there is, each once, for the manual and for tests that walk them.
std::vector<const Rule *> allRules();
std::vector<const RegisterRule *> allRegisterRules();

} // namespace core
