// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/clock.hpp"

#include <QDateTime>

namespace session {

Clock systemClock()
{
    return [] { return core::Instant::fromMilliseconds(QDateTime::currentMSecsSinceEpoch()); };
}

} // namespace session
