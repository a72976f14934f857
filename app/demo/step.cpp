// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/demo/step.hpp"

#include <QCoreApplication>

#include "app/demo/table.hpp"

namespace demo {

using namespace Qt::StringLiterals;

core::Result<std::vector<Step>> story()
{
    const auto rows = scenarioTable(u"story.csv"_s);
    if (!rows)
        return core::failure(rows.error());
    std::vector<Step> steps;
    for (const TableRow &row : *rows) {
        const QTime time = QTime::fromString(row.text(u"time"_s), u"HH:mm"_s);
        if (!time.isValid() || (!steps.empty() && time < steps.back().time)) {
            return core::failure(core::ErrorCode::BadInput, QCoreApplication::translate("Demo", "The story's time is no time, or runs back."),
                                 {u"story.csv"_s, row.row, std::nullopt});
        }
        // `shop:undoes` is told of the job that was opened as `shop`.
        const QString verb = row.text(u"does"_s);
        const QString job = verb.contains(u':') ? verb.section(u':', 0, 0) : QString();
        steps.push_back({row.row, time, row.text(u"who"_s), verb.section(u':', -1), row.words(u"what"_s), row.text(u"choice"_s),
                         row.words(u"helpers"_s), row.text(u"words"_s), job});
    }
    return steps;
}

} // namespace demo
