// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QStringList>

#include "core/job/leak_reading.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

QString leakLimitText(const InterfaceState *item)
{
    if (!item || !item->listed.leak)
        return {};
    const LeakLimit &limit = *item->listed.leak;
    QStringList parts;
    if (!limit.worstClass.isEmpty())
        parts << inWords(QT_TRANSLATE_NOOP("Report", "%1 at worst")).arg(limit.worstClass);
    if (limit.rate)
        parts << inWords(QT_TRANSLATE_NOOP("Report", "at most %1")).arg(limit.rate->text());
    if (limit.dropsPerMillilitre)
        parts << inWords(QT_TRANSLATE_NOOP("Report", "%1 drops to the millilitre")).arg(limit.dropsPerMillilitre->text());
    return parts.join(u", "_s);
}

/// What was seen and the class that it comes to: `seep; 1.1 in, still; 30 min after wiping dry`.
QString leakSeenText(const json::Object &body, const JobFacts &facts)
{
    const auto found = leakClassIn(body, facts.leakScheme);
    QStringList look;
    for (const QString &part : {body.text(u"size"), body.text(u"flow")}) {
        if (!part.isEmpty())
            look << part;
    }
    QStringList parts;
    for (const QString &part : {found ? found->value_or(body.text(u"class")) : body.text(u"class"), look.join(u", "_s)}) {
        if (!part.isEmpty())
            parts << part;
    }
    if (const auto minutes = body.integer(u"minutes"))
        parts << inWords(QT_TRANSLATE_NOOP("Report", "%1 min after wiping dry")).arg(*minutes);
    return parts.join(u"; "_s);
}

/// `0.4 mL/min`, `6 drops/min`, `6 drops/min, 20 to the millilitre`.
QString leakRateText(const json::Object &body, const InterfaceState *item)
{
    QStringList parts;
    for (const QString &part : {body.text(u"rate"), body.text(u"drops")}) {
        if (!part.isEmpty())
            parts << part;
    }
    if (const auto drops = leakDropSizeIn(body, item && item->listed.leak ? *item->listed.leak : LeakLimit{}))
        parts << inWords(QT_TRANSLATE_NOOP("Report", "%1 to the millilitre")).arg(drops->text());
    return parts.join(u", "_s);
}

std::vector<ReportRow> leakRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const EntryOnItem &on : entriesOfKind(record, u"leak.checked")) {
        const bool counts = on.item && on.item->leak && on.item->leak->mark.seq == on.entry->said.seq;
        const json::Object &body = on.entry->said.body;
        rows.push_back(closedRow(record, on, {on.entry->said.subject.value_or(QString()), body.text(u"how"), leakLimitText(on.item), leakSeenText(body, record.job().facts), leakRateText(body, on.item)},
                                 counts ? Counts::Yes : Counts::No));
    }
    return rows;
}

} // namespace

Report leaksReport()
{
    return {"leaks"_L1, QT_TRANSLATE_NOOP("Report", "Leak checks"),
            withClosing({{"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 0},
                         {"how"_L1, QT_TRANSLATE_NOOP("Report", "How it was checked"), 25},
                         {"limit"_L1, QT_TRANSLATE_NOOP("Report", "Limit"), 16},
                         {"class"_L1, QT_TRANSLATE_NOOP("Report", "Seen"), 15},
                         {"rate"_L1, QT_TRANSLATE_NOOP("Report", "Rate"), 13}}),
            &leakRows};
}

} // namespace core
