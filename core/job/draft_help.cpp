// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/draft_help.hpp"

#include <algorithm>

namespace core {

QString nextTag(const JobState &job)
{
    qint64 greatest = 0;
    for (auto at = job.tagAt.keyBegin(); at != job.tagAt.keyEnd(); ++at)
        greatest = std::max(greatest, at->toLongLong());
    return QString::number(greatest + 1);
}

QString nextFinding(const JobState &job)
{
    auto number = job.findings.size() + 1;
    while (job.finding(*FindingId::parse(QStringLiteral("F%1").arg(number))))
        ++number;
    return QStringLiteral("F%1").arg(number);
}

} // namespace core
