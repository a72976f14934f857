// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/job_tools.hpp"

#include <algorithm>

namespace core {

namespace {

using namespace Qt::StringLiterals;

/// The last one of that marking, from the end.
template <class Issues>
auto lastOf(Issues &issues, const ToolId &marking) -> decltype(issues.data())
{
    const auto at = std::find_if(issues.rbegin(), issues.rend(), [&](const JobTool &one) { return one.marking == marking; });
    return at == issues.rend() ? nullptr : &*at;
}

} // namespace

QLatin1String jobToolSortText(JobToolSort sort)
{
    switch (sort) {
    case JobToolSort::Measuring: return "measuring tool"_L1;
    case JobToolSort::Hand: return "hand tool"_L1;
    case JobToolSort::Kit: return "kit"_L1;
    }
    Q_UNREACHABLE();
}

std::optional<JobToolSort> parseJobToolSort(QStringView text)
{
    for (const JobToolSort sort : {JobToolSort::Measuring, JobToolSort::Hand, JobToolSort::Kit}) {
        if (jobToolSortText(sort) == text)
            return sort;
    }
    return std::nullopt;
}

const JobTool *ToolControl::last(const ToolId &marking) const { return lastOf(issues, marking); }
JobTool *ToolControl::last(const ToolId &marking) { return lastOf(issues, marking); }

std::vector<const JobTool *> ToolControl::out() const
{
    std::vector<const JobTool *> all;
    for (const JobTool &one : issues) {
        if (one.isOut())
            all.push_back(&one);
    }
    return all;
}

qint64 ToolControl::changedBy() const
{
    qint64 seq = 0;
    for (const JobTool &one : issues)
        seq = std::max({seq, one.issued.seq, one.missing ? one.missing->mark.seq : 0, one.returned ? one.returned->seq : 0});
    return seq;
}

CountDifference differenceOf(const ToolControl &tools, const std::vector<QString> &counted)
{
    CountDifference difference;
    std::vector<QString> left = counted;
    for (const JobTool *tool : tools.out()) {
        const auto at = std::find(left.begin(), left.end(), tool->marking.text());
        if (at == left.end())
            difference.missing.push_back(tool->marking.text());
        else
            left.erase(at);
    }
    difference.tooMuch = std::move(left);
    return difference;
}

} // namespace core
