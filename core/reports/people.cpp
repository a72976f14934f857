// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QStringList>

#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

QString scopeText(const Authorisation &given)
{
    const auto joined = [](const std::vector<QString> &texts, const char *all) {
        return texts.empty() ? inWords(all) : QStringList(texts.begin(), texts.end()).join(u", "_s);
    };
    return inWords(QT_TRANSLATE_NOOP("Report", "%1; %2"))
        .arg(joined(given.kinds, QT_TRANSLATE_NOOP("Report", "all kinds")),
             joined(given.aircraftTypes, QT_TRANSLATE_NOOP("Report", "all aircraft types")));
}

QString untilText(const Authorisation &given)
{
    if (given.withdrawn)
        return inWords(QT_TRANSLATE_NOOP("Report", "withdrawn %1")).arg(momentText(*given.withdrawn));
    return given.until ? given.until->toString(Qt::ISODate) : inWords(QT_TRANSLATE_NOOP("Report", "no end"));
}

std::vector<ReportRow> rowsOf(const Register &reg, const Person &person)
{
    const QString group = inWords(QT_TRANSLATE_NOOP("Report", "%1. Key %2")).arg(personText(reg, person.id), person.key.fingerprint().hex());
    std::vector<ReportRow> rows;
    const auto add = [&](std::vector<QString> cells) {
        cells.insert(cells.begin(), {person.name, person.id.text()});
        cells.push_back(person.key.fingerprint().hex());
        rows.push_back({group, std::move(cells)});
    };
    if (reg.root == person.id)
        add({inWords(QT_TRANSLATE_NOOP("Report", "root")), inWords(QT_TRANSLATE_NOOP("Report", "looks after the register")), {}, {}, {}});
    for (const auto &[id, given] : reg.authorisations) {
        if (given.person == person.id)
            add({authorityText(given.authority), scopeText(given), given.from.toString(Qt::ISODate), untilText(given), given.reference});
    }
    if (rows.empty())
        add({inWords(QT_TRANSLATE_NOOP("Report", "none")), {}, {}, {}, {}});
    return rows;
}

std::vector<ReportRow> peopleRows(const JobRecord &record)
{
    const Register &reg = record.reg();
    std::vector<ReportRow> rows;
    for (const QString &text : mentioned(record, u"person"_s)) {
        const auto id = PersonId::parse(text);
        const Person *person = id ? reg.person(*id) : nullptr;
        if (!person)
            continue;
        for (ReportRow &row : rowsOf(reg, *person))
            rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace

Report peopleReport()
{
    return {"people"_L1,
            QT_TRANSLATE_NOOP("Report", "People and their authorisations"),
            {{"name"_L1, QT_TRANSLATE_NOOP("Report", "Name"), 0},
             {"id"_L1, QT_TRANSLATE_NOOP("Report", "Id"), 0},
             {"authority"_L1, QT_TRANSLATE_NOOP("Report", "Authorised to"), 16},
             {"scope"_L1, QT_TRANSLATE_NOOP("Report", "Covers"), 34},
             {"from"_L1, QT_TRANSLATE_NOOP("Report", "First day"), 14},
             {"until"_L1, QT_TRANSLATE_NOOP("Report", "Last day"), 16},
             {"reference"_L1, QT_TRANSLATE_NOOP("Report", "Approval"), 20},
             {"key"_L1, QT_TRANSLATE_NOOP("Report", "Key"), 0}},
            &peopleRows};
}

} // namespace core
