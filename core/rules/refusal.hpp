// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>
#include <vector>

namespace core {

/// A rule's no. Compare rule and subject; show the sentence.
struct Refusal {
    QString rule;     ///< stable name: `independence.own-work`
    QString subject;  ///< the interface, person, tool … that it is about; empty for the job as a whole
    QString sentence; ///< what is wrong and what to do, for a technician
    QString clearedBy; ///< who can clear it: `another authorised inspector`
    bool operator==(const Refusal &) const = default;
};

using Refusals = std::vector<Refusal>;

/// Anything that stops closure. The same four things as a refusal, since it is closure's refusal.
using LooseEnd = Refusal;
using LooseEnds = std::vector<LooseEnd>;

} // namespace core
