// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/tests.hpp"

#include <algorithm>

#include "core/acts/test_form.hpp"
#include "core/job/linked.hpp"
#include "core/job/reached.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

std::optional<Refusal> refuse(const Case &c, const QString &sentence) { return refusal(c, sentence, technician()); }

bool hasPassed(const Case &c) { return c.text(u"result") == u"passed"; }

} // namespace

std::optional<Refusal> testIsNew(const Case &c)
{
    const auto at = std::find_if(c.job.tests.begin(), c.job.tests.end(), [&](const JobTest &test) { return test.id.text() == c.draft.subject; });
    if (at == c.job.tests.end())
        return std::nullopt;
    return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "The job has a test \"%1\" already, of entry %2.")).arg(at->id.text()).arg(at->mark.seq));
}

std::optional<Refusal> testCoversWhatIsRestored(const Case &c)
{
    for (const QString &name : {u"covers"_s, u"reopens"_s}) {
        for (const QString &text : c.draft.body.texts(name)) {
            const auto id = InterfaceId::parse(text);
            if (!id || !c.job.item(*id))
                return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "The list has no interface \"%1\".")).arg(text));
        }
    }
    const std::vector<QString> covers = c.draft.body.texts(u"covers");
    for (const InterfaceState &item : c.job.items) {
        const bool isCovered = covers.empty() || std::find(covers.begin(), covers.end(), item.listed.id.text()) != covers.end();
        if (isCovered && !reachedNow(c.job, item, &restoredWith))
            return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "The test covers %1 (%2), which is not restored. Restore it first, or name what the test covers.")).arg(item.listed.id.text(), item.listed.name));
    }
    return std::nullopt;
}

std::optional<Refusal> testValuesAreWithin(const Case &c)
{
    if (const auto fault = faultOfTestValues(c.draft.body))
        return refuse(c, *fault);
    for (const TestValue &value : testValuesIn(c.draft.body)) {
        if (hasPassed(c) && !value.isWithin())
            return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 read %2, which is outside its limits: this test has failed. Find the cause, and say what is worked on again.")).arg(value.name, value.read.text()));
    }
    return std::nullopt;
}

std::optional<Refusal> failedTestReopens(const Case &c)
{
    const bool names = !c.draft.body.texts(u"reopens").empty();
    if (hasPassed(c) == !names)
        return std::nullopt;
    return refuse(c, names ? inWords(QT_TRANSLATE_NOOP("Rule", "A test that was passed reopens nothing."))
                           : inWords(QT_TRANSLATE_NOOP("Rule", "A test that failed says which interfaces are worked on again. If none of them is the cause, raise a finding, and name those that were touched to find it.")));
}

const Rule testNew{"test.new"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Each test has a result of its own."), &testIsNew};
const Rule testCovers{"test.covers"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A test says nothing of what was open when it was made."), &testCoversWhatIsRestored};
const Rule testValues{"test.values"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A reading outside its limits is no matter of opinion."), &testValuesAreWithin};
const Rule testReopens{"test.reopens"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What made a test fail is open until it is found."), &failedTestReopens};

} // namespace core::rules
