// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>

#include "core/value/instant.hpp"
#include "core/value/result.hpp"

namespace session {

class Session;

/// What a store's health is judged by.
struct Health {
    std::optional<core::Error> damage;   ///< of the opened job or of the register
    std::optional<core::Error> sideFile; ///< why the side file could not be written back, the last time it was tried
    std::optional<core::Instant> lastBackup;
    std::optional<core::Instant> firstEntry; ///< when the register was founded; nothing while there is nothing to lose
};

/// The health of the store that the session works on, as it is now.
Health healthOf(Session &session);

struct Notice {
    enum class Sort { Damaged, SideFile, Backup };
    Sort sort;
    QString sentence; ///< what happened and what to do
    bool operator==(const Notice &) const = default;
};

/// What everybody who works in the store must know before all else: the gravest thing alone, or nothing when all is well. A
/// backup is due when the last one, or the first entry of a store that has none, is more than a day old.
std::optional<Notice> noticeOf(const Health &health, const core::Instant &now);

} // namespace session
