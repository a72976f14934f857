// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

bool countsToday(const EntryOnItem &on) { return on.item && on.item->restoration && on.item->restoration->mark.seq == on.entry->said.seq; }

/// Every seal that some reconnection names, with the batch that it came from, also one that was undone again.
std::vector<ReportRow> sealRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const EntryOnItem &on : entriesOfKind(record, u"interface.reconnected")) {
        const json::Object &body = on.entry->said.body;
        const QString part = body.text(u"seal_part");
        const QString batch = body.text(u"seal_batch");
        if (part.isEmpty() && batch.isEmpty())
            continue;
        ReportRow row = closedRow(record, on, {itemText(on.item, *on.entry), on.item ? on.item->listed.sealPart : QString(), part, batch}, countsToday(on) ? Counts::Yes : Counts::No);
        row.group.clear();
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace

Report sealsReport()
{
    return {"seals"_L1, QT_TRANSLATE_NOOP("Report", "New seals"),
            withClosing({{"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 24},
                         {"required"_L1, QT_TRANSLATE_NOOP("Report", "Required"), 10},
                         {"part"_L1, QT_TRANSLATE_NOOP("Report", "Part number"), 10},
                         {"batch"_L1, QT_TRANSLATE_NOOP("Report", "Batch"), 10}}),
            &sealRows};
}

} // namespace core
