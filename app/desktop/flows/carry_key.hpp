// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>

#include "app/desktop/parts/sign_sheet.hpp"
#include "app/session/carry.hpp"

class QWidget;

namespace desktop {

/// The sheet by which a person leaves their key for another station; `show` gets the code, which is shown once. Writes no entry.
SheetPlan carryKeyPlan(session::Session &session, const std::function<void(const session::TransferOffer &)> &show);

/// The sheet by which a person takes their key over at this station: the code and their PIN. Writes no entry.
SheetPlan takeKeyPlan(session::Session &session, QWidget *parent);

} // namespace desktop
