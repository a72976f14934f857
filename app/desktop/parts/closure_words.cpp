// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/closure_words.hpp"

#include <QCoreApplication>

#include <iterator>

#include "app/desktop/job_feed.hpp"
#include "core/reports/left_in_words.hpp"

namespace desktop {

namespace {

struct ClosureWords {
    Q_DECLARE_TR_FUNCTIONS(ClosureWords)
};

} // namespace

QString closureInWords(const JobFeed &feed)
{
    if (feed.state() && feed.state()->closed)
        return ClosureWords::tr("The job is closed");
    return core::looseEndsInWords(std::ssize(feed.looseEnds()));
}

} // namespace desktop
