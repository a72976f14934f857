// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>
#include <QString>

#include <optional>
#include <vector>

#include "core/job/mark.hpp"

namespace core {

/// What is issued to a job and has to come back.
enum class JobToolSort {
    Measuring, ///< of the register
    Hand,
    Kit, ///< several pieces that are counted as one and checked for their number
};

/// As it stands in entries: `measuring tool`, `hand tool`, `kit`.
QLatin1String jobToolSortText(JobToolSort sort);
std::optional<JobToolSort> parseJobToolSort(QStringView text);

/// A tool that is neither in the hand nor back. Its finding stops closure until it is disposed of.
struct MissingTool {
    FindingId finding;
    Mark mark;
    bool operator==(const MissingTool &) const = default;
};

/// One issue of a tool: issued again after its return, it has a second.
struct JobTool {
    ToolId marking; ///< the register's id, or what is marked on the tool
    JobToolSort sort;
    QString name; ///< may be empty for a measuring tool
    qint64 pieces = 1;
    std::optional<PersonId> holder;
    Mark issued;
    std::optional<MissingTool> missing;
    std::optional<Mark> returned;
    bool isOut() const { return !returned && !missing; }
    bool operator==(const JobTool &) const = default;
};

struct ToolControl {
    std::vector<JobTool> issues; ///< in the order of their entries
    std::optional<Mark> counted; ///< the last time that all were there

    /// The last issue of that marking, or nullptr.
    const JobTool *last(const ToolId &marking) const;
    JobTool *last(const ToolId &marking);
    /// Out, and not said to be missing; in the order of issue.
    std::vector<const JobTool *> out() const;
    /// The last entry by which what is out changed, 0 where no tool was ever issued.
    qint64 changedBy() const;
    bool operator==(const ToolControl &) const = default;
};

/// What a count lacks and has too much, by marking.
struct CountDifference {
    std::vector<QString> missing;
    std::vector<QString> tooMuch; ///< not out, or counted twice
    bool isNone() const { return missing.empty() && tooMuch.empty(); }
    bool operator==(const CountDifference &) const = default;
};

CountDifference differenceOf(const ToolControl &tools, const std::vector<QString> &counted);

} // namespace core
