// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"
#include "core/labels/label_text.hpp"

namespace core {

/// What a scanned text means in a job.
enum class ScanMeans {
    Item,        ///< an interface of the job: by its label, a tag that hangs or hung on it, or its id
    UnknownItem, ///< the label of this job, of an interface that is not on its list
    OtherJob,    ///< a label of another work order
    Nothing,
};

struct Scanned {
    ScanMeans means = ScanMeans::Nothing;
    std::optional<InterfaceId> item{};  ///< of the job
    std::optional<LabelText> label{}; ///< what stands on it, where it was a label
    bool operator==(const Scanned &) const = default;
};

/// A tag's number goes before an id of the same text: what is scanned hangs on the aircraft. Only the whole text counts, so that tag 4 is
/// never taken for tag 40.
Scanned meantBy(const JobState &job, const QString &text);

} // namespace core
