// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/closure_words.hpp"

#include <QCoreApplication>

#include "app/desktop/job_feed.hpp"

namespace desktop {

namespace {

struct ClosureWords {
    Q_DECLARE_TR_FUNCTIONS(ClosureWords)
};

} // namespace

QString closureInWords(const JobFeed &feed)
{
    const std::size_t loose = feed.looseEnds().size();
    if (feed.state() && feed.state()->closed)
        return ClosureWords::tr("The job is closed");
    return loose == 0 ? ClosureWords::tr("Nothing is loose") : ClosureWords::tr("Loose ends: %1").arg(loose);
}

} // namespace desktop
