// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0
// complaint: enumeration value .*Inspected

#include "core/job/stage.hpp"

using core::Stage;

bool isRestored(Stage stage)
{
    switch (stage) {
    case Stage::Connected:
    case Stage::Disconnected:
    case Stage::Reconnected:
    case Stage::Secured:
        return false;
#ifndef MUST_NOT_COMPILE
    case Stage::Inspected:
        return true;
#endif
    }
    Q_UNREACHABLE();
}
