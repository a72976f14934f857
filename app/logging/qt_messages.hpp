// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/logging/log.hpp"

#include <QtMessageHandler>

namespace logging {

/// While it lives, what is worth noting, warnings and errors that Qt, core and db write with qInfo, qWarning and the like reach the log too. They
/// still appear on stderr. At most one at a time; the log must outlive it.
class QtMessages {
public:
    explicit QtMessages(const Log &log);
    ~QtMessages();
    QtMessages(const QtMessages &) = delete;
    QtMessages &operator=(const QtMessages &) = delete;

private:
    QtMessageHandler m_before;
};

} // namespace logging
