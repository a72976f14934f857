// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDateTime>

#include <algorithm>
#include <memory>

#include "app/session/clock.hpp"

namespace demo {

/// A clock that the story sets. It never runs back.
class DayClock {
public:
    DayClock(QDate day, QTime time) : m_now(std::make_shared<core::Instant>(instantOf(day, time))) {}

    session::Clock clock() const
    {
        return [now = m_now] { return *now; };
    }
    core::Instant now() const { return *m_now; }
    void to(QDate day, QTime time) { *m_now = std::max(*m_now, instantOf(day, time)); }
    void pass(std::chrono::seconds span)
    {
        *m_now = core::Instant::fromMilliseconds(m_now->milliseconds() + std::chrono::milliseconds(span).count());
    }

    static core::Instant instantOf(QDate day, QTime time)
    {
        return core::Instant::fromMilliseconds(QDateTime(day, time, Qt::UTC).toMSecsSinceEpoch());
    }

private:
    std::shared_ptr<core::Instant> m_now;
};

} // namespace demo
