// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QTime>

#include <vector>

#include "core/value/result.hpp"

namespace demo {

/// One line of the story: at that time somebody does something to one or several things, with one signature.
struct Step {
    qint64 row; ///< in story.csv, for messages
    QTime time;
    QString who;
    QString does; ///< a verb of verbs.hpp
    std::vector<QString> what;
    QString choice; ///< whatever the verb lets one choose: a condition, a disposition, a moment
    std::vector<QString> helpers;
    QString words;
    QString job; ///< of which it is told, by the name in front of the verb; empty: of the first
};

core::Result<std::vector<Step>> story();

} // namespace demo
