// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStringView>

#include "app/demo/play.hpp"
#include "app/demo/step.hpp"

namespace demo {

/// A word of the story and what comes of it.
struct Verb {
    QLatin1String word;
    core::Result<void> (*act)(Play &, const Step &);
};

/// Verbs of hold points, temporary items and the walk-round.
const std::vector<Verb> &gateVerbs();

/// Verbs of tags and tools.
const std::vector<Verb> &countVerbs();

/// Verbs of linked jobs.
const std::vector<Verb> &linkVerbs();

/// The verb of that word, or nullptr.
const Verb *findVerb(QStringView word);

/// The word at which the story may stop: the second shift is at work and loose ends of every sort are open.
constexpr QLatin1String pauseWord("pauses");

} // namespace demo
