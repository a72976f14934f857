// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/job/state.hpp"

namespace core {

/// What stands on the label of one interface.
struct Label {
    QString code; ///< what its code says, see writeLabelText
    QString workOrder;
    QString id;
    QString name;
    QString zone;
    QString tag; ///< that hangs on it now; empty where none does, or the label itself is the tag
    bool operator==(const Label &) const = default;
};

/// One label for each interface of the job's list, in its order.
std::vector<Label> labelsOf(const JobState &job);

} // namespace core
