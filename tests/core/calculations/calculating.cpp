// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/calculations/calculating.hpp"

#include "resources/resources.hpp"

namespace calculating {

using namespace Qt::StringLiterals;

const core::LookUpTables &tables()
{
    static const auto loaded = resources::loadTables();
    if (!loaded)
        qFatal("%s", qPrintable(loaded.error().message));
    return *loaded;
}

std::vector<core::TypedField> typed(const QString &fields)
{
    std::vector<core::TypedField> all;
    for (const QString &part : fields.split(u';', Qt::SkipEmptyParts)) {
        const qsizetype equals = part.indexOf(u'=');
        all.push_back({part.left(equals).trimmed(), part.mid(equals + 1).trimmed()});
    }
    return all;
}

std::vector<core::TypedField> exampleOf(const core::Calculation &calculation)
{
    std::vector<core::TypedField> all;
    for (const core::ExampleValue &one : calculation.example)
        all.push_back({one.field, QString::fromUtf8(one.text)});
    return all;
}

core::Result<core::Calculated> work(const core::Calculation &calculation, const std::vector<core::TypedField> &fields)
{
    const auto body = core::bodyOf(calculation, fields);
    return body ? core::calculate(calculation, *body, tables()) : core::failure(body.error());
}

core::Result<core::Calculated> work(const QString &name, const QString &fields)
{
    const core::Calculation *calculation = core::findCalculation(name);
    if (!calculation)
        qFatal("no calculation: %s", qPrintable(name));
    return work(*calculation, typed(fields));
}

QString said(const core::Result<core::Calculated> &result)
{
    if (!result)
        return u"bad input: "_s + result.error().message;
    return (result->verdict == core::Verdict::Answered ? u"answer: "_s : u"refused: "_s) + result->working.answer;
}

QString resultOf(const core::Result<core::Calculated> &result, int step)
{
    const auto at = static_cast<std::size_t>(step);
    return result && at < result->working.steps.size() ? result->working.steps[at].result : said(result);
}

} // namespace calculating
