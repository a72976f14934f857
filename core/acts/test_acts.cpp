// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/acts/reopen.hpp"
#include "core/acts/test_form.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

/// A test that failed reopens what it names: nobody knows what of it still holds.
bool record(JobState &job, const Statement &said)
{
    const auto id = TestId::parse(said.subject.value_or(QString()));
    const auto isThere = [&](const JobTest &test) { return test.id == *id; };
    if (!id || std::any_of(job.tests.begin(), job.tests.end(), isThere))
        return false;
    const json::Object &body = said.body;
    const bool hasPassed = body.text(u"result") == u"passed";
    job.tests.push_back({*id, markOf(said), body.text(u"what"), body.text(u"name"), interfacesIn(body, u"covers"), testValuesIn(body), hasPassed, hasPassed ? std::vector<InterfaceId>() : interfacesIn(body, u"reopens")});
    const std::vector<InterfaceId> reopens = job.tests.back().reopens;
    for (const InterfaceId &reopened : reopens) {
        const InterfaceState *item = std::as_const(job).item(reopened);
        if (item && item->restoration)
            disturb(job, reopened, markOf(said));
    }
    return true;
}

/// Common practice.
QStringList testCautions()
{
    return {
        QCoreApplication::translate("Act", "Before a run: area clear and looked over for loose things, wheels chocked, fire cover there, and everybody knows the signals."),
        QCoreApplication::translate("Act", "Nobody comes near intake, outlet, propeller or hot parts while it turns, or is pressurised."),
        QCoreApplication::translate("Act", "A good test never stands for the inspection of an item. The approved maintenance data says what is run, read and allowed; people who are licensed or authorised for it run."),
    };
}

} // namespace

/// Runs, functional checks and leak checks of a system.
std::vector<Act> testActs()
{
    return {{"test.recorded"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::NewTest, QT_TRANSLATE_NOOP("Act", "Record a test"), QT_TRANSLATE_NOOP("Act", "Tested"),
             {choice("what"_L1, Needed::Always, QT_TRANSLATE_NOOP("Field", "Test"), {testSorts.begin(), testSorts.end()}),
              field("name"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Of what")),
              choice("result"_L1, Needed::Always, QT_TRANSLATE_NOOP("Field", "Result"), {"passed"_L1, "failed"_L1}),
              field("covers"_L1, FieldType::Interfaces, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Interfaces that it covers; none: all")),
              field("reopens"_L1, FieldType::Interfaces, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Failed: interfaces to be worked on again")),
              field("values"_L1, FieldType::Records, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Values read, with their limits")),
              field("reference"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Maintenance data reference")),
              field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks")),
              field("helpers"_L1, FieldType::People, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Helped, supervised or taught by"), "person"_L1)},
             &record, &testCautions, {}}};
}

} // namespace core
