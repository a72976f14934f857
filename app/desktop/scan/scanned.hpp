// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>
#include <vector>

#include "app/desktop/scan/scanner_keys.hpp"
#include "core/labels/scanned.hpp"
#include "core/value/result.hpp"

namespace desktop {

/// A job that the label of one of its interfaces leads to, to be offered.
struct OtherJob {
    core::LedgerId job;
    QString scanned; ///< what means the interface once that job is open
    QString words;   ///< whose label it is
    QString button;
    bool operator==(const OtherJob &) const = default;
};

/// What a scan leads to: an interface to show, another job to offer, something to tell, or nothing, when the text is not for us but for the field that it
/// was typed into.
struct ScanAnswer {
    std::optional<core::InterfaceId> show{};
    QString title{}; ///< of what is told; empty when nothing is
    QString words{};
    std::optional<OtherJob> offer{};

    bool isForUs() const { return show || offer || !title.isEmpty(); }
};

/// The jobs of the store with that work order; errors of reading the store. Asked only for the label of a job that is not open.
using JobsOf = std::function<core::Result<std::vector<core::LedgerId>>(const QString &workOrder)>;

/// What is on the screen while something is scanned.
enum class Shown { Job, SomethingElse };

/// `job` is the open one, or nullptr. A tag's number alone counts only while the job is shown: elsewhere a number may mean anything. Typed into a
/// field of text, what means nothing in the job is the field's.
ScanAnswer answerToScan(const QString &text, const core::JobState *job, const JobsOf &jobsOf, Shown shown, ScannerKeys::Focus focus);

} // namespace desktop
