// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/job_test.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/job/linked.hpp"
#include "core/job/reached.hpp"

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Test", text); }

} // namespace

std::optional<QString> whyVoid(const JobState &job, const JobTest &test)
{
    for (const InterfaceState &item : job.items) {
        const auto &ids = test.covers;
        if (!ids.empty() && std::find(ids.begin(), ids.end(), item.listed.id) == ids.end())
            continue;
        const Reached restored = reachedNow(job, item, &restoredWith);
        if (!restored)
            return tr(QT_TRANSLATE_NOOP("Test", "%1 (%2), which it covered, is open or not restored.")).arg(item.listed.id.text(), item.listed.name);
        if (*restored > test.mark.seq && isElsewhere(item))
            return tr(QT_TRANSLATE_NOOP("Test", "%1 (%2), which it covered, was worked on again. %3")).arg(item.listed.id.text(), item.listed.name, whereInWords(job, item));
        if (*restored > test.mark.seq)
            return tr(QT_TRANSLATE_NOOP("Test", "%1 (%2), which it covered, was worked on again in entry %3.")).arg(item.listed.id.text(), item.listed.name).arg(*restored);
    }
    return std::nullopt;
}

std::vector<const JobTest *> lastTests(const JobState &job)
{
    std::vector<const JobTest *> last;
    for (const JobTest &test : job.tests) {
        const auto at = std::find_if(last.begin(), last.end(), [&](const JobTest *one) { return one->what == test.what && one->name == test.name; });
        if (at == last.end())
            last.push_back(&test);
        else
            *at = &test;
    }
    return last;
}

} // namespace core
