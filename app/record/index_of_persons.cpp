// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/index_of_persons.hpp"

#include <QCoreApplication>

#include <map>

#include "core/acts/act.hpp"
#include "core/reports/report_rows.hpp"
#include "core/reports/signatures.hpp"

namespace record {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Record", text); }

/// What the entry is about: its interface, finding, tool; or what was done, where that is about the whole job.
QString aboutText(const core::Entry &entry)
{
    if (entry.said.subject)
        return *entry.said.subject;
    const core::Act *act = core::findAct(entry.said.kind);
    return act ? QCoreApplication::translate("Act", act->done) : entry.said.kind;
}

QString entryText(const core::JobRecord &job, const core::Entry &entry, const std::vector<int> &pages)
{
    const auto at = static_cast<std::size_t>(entry.said.seq - 1);
    const bool isStruck = job.job().lines[at].standing == core::Standing::Struck;
    const QString text = isStruck ? tr("%1 %2, struck") : tr("%1 %2");
    const QString about = text.arg(QString::number(entry.said.seq), aboutText(entry));
    return at < pages.size() ? tr("%1 (p. %2)").arg(about, QString::number(pages[at])) : about;
}

void addPerson(Table &table, const core::JobRecord &job, const core::PersonSigned &person, const std::vector<int> &pages)
{
    const QString name = tr("%1 (%2)").arg(person.name, person.person.text());
    std::map<QString, QStringList> byMeaning;
    for (const core::Entry *entry : person.entries)
        byMeaning[entry->said.meaning] << entryText(job, *entry, pages);
    for (const auto &[meaning, entries] : byMeaning) {
        const QString word = tr("%1: %2").arg(core::reporting::meaningWord(meaning), core::meaningInWords(meaning));
        table.rows.push_back({name, {word, QString::number(entries.size()), entries.join(u"; "_s)}, Strike::Not, {}, name});
    }
}

} // namespace

void setIndexOfPersons(Flow &flow, const core::JobRecord &job, const std::vector<int> &pages)
{
    Table table{{{tr("Signed as"), 24}, {tr("Times"), 7}, {tr("Entry, what it is about, and the page on which it stands in full"), 69}}, {}};
    for (const core::PersonSigned &person : core::byName(core::signatures(job)))
        addPerson(table, job, person, pages);
    flow.table(tr("Index of persons"), table);
}

} // namespace record
