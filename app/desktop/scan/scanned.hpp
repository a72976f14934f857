// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/scan/scanner_keys.hpp"
#include "core/labels/scanned.hpp"

namespace desktop {

/// What a scan leads to: an interface to show, something to tell, or neither, when the text is not for us but for the field that it was typed into.
struct ScanAnswer {
    std::optional<core::InterfaceId> show{};
    QString title{}; ///< of what is told; empty when nothing is
    QString words{};

    bool isForUs() const { return show || !title.isEmpty(); }
};

/// What is on the screen while something is scanned.
enum class Shown { Job, SomethingElse };

/// `job` is the open one, or nullptr. A tag's number alone counts only while the job is shown: elsewhere a number may mean anything. Typed into a
/// field of text, what means nothing in the job is the field's.
ScanAnswer answerToScan(const QString &text, const core::JobState *job, Shown shown, ScannerKeys::Focus focus);

} // namespace desktop
