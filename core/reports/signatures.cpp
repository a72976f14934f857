// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/signatures.hpp"

#include <QStringList>

#include <algorithm>
#include <map>
#include <tuple>

#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

/// On the day of the entry, and not withdrawn before it: the days of an authorisation are whole and in UTC.
bool wasInForce(const Authorisation &given, Instant at)
{
    const QDate day = at.utcDate();
    return given.from <= day && (!given.until || day <= *given.until) && (!given.withdrawn || at < *given.withdrawn);
}

void addHeld(PersonSigned &person, const Register &reg, const Entry &entry)
{
    for (const auto &granted : reg.authorisations) {
        const Authorisation &given = granted.second;
        const bool isNew = std::none_of(person.held.begin(), person.held.end(), [&](const Authorisation &known) { return known.id == given.id; });
        if (isNew && given.person == person.person && wasInForce(given, entry.said.at))
            person.held.push_back(given);
    }
}

/// `inspect: AU-7 (QM-4/cho)`, one a line.
QString heldText(const PersonSigned &person)
{
    QStringList lines;
    if (person.isRoot)
        lines << inWords(QT_TRANSLATE_NOOP("Report", "root of the register"));
    for (const Authorisation &given : person.held)
        lines << (given.reference.isEmpty() ? inWords(QT_TRANSLATE_NOOP("Report", "%1: %2")).arg(authorityText(given.authority), given.id.text())
                                            : inWords(QT_TRANSLATE_NOOP("Report", "%1: %2 (%3)")).arg(authorityText(given.authority), given.id.text(), given.reference));
    return lines.isEmpty() ? inWords(QT_TRANSLATE_NOOP("Report", "NONE IN FORCE")) : lines.join(u'\n');
}

/// A fingerprint by its beginning; the people's own table has it whole.
QString keysText(const PersonSigned &person)
{
    QStringList keys;
    for (const Digest &key : person.keys)
        keys << key.hex().left(16) + u'…';
    return keys.join(u'\n');
}

QString countText(const JobRecord &record, const PersonSigned &person)
{
    const auto struck = std::count_if(person.entries.begin(), person.entries.end(), [&](const Entry *entry) { return record.job().lines[static_cast<std::size_t>(entry->said.seq - 1)].standing == Standing::Struck; });
    const QString all = QString::number(person.entries.size());
    return struck == 0 ? all : inWords(QT_TRANSLATE_NOOP("Report", "%1, of these struck: %2")).arg(all, QString::number(struck));
}

/// A line for each doubt, with the entries that it covers; empty where there is none.
QString doubtText(const JobRecord &record, const PersonSigned &person)
{
    std::map<const KeyDoubt *, QStringList> covered;
    for (const Entry *entry : person.entries) {
        if (const KeyDoubt *doubt = signatureDoubt(record, *entry))
            covered[doubt] << QString::number(entry->said.seq);
    }
    QString text;
    for (const auto &[doubt, entries] : covered)
        text += u'\n' + inWords(QT_TRANSLATE_NOOP("Report", "IN DOUBT since %1, entries %2: %3")).arg(doubt->since.spoken(), entries.join(u", "_s), doubt->reason);
    return text;
}

QString timeText(const JobRecord &record, const Entry *entry) { return momentText(record.job(), entry->said.seq, entry->said.at); }

std::vector<ReportRow> signatureRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const PersonSigned &one : signatures(record))
        rows.push_back({{}, {inWords(QT_TRANSLATE_NOOP("Report", "%1 (%2)")).arg(one.name, one.person.text()), heldText(one), keysText(one), countText(record, one) + doubtText(record, one), timeText(record, one.entries.front()), timeText(record, one.entries.back())}});
    return rows;
}

} // namespace

const KeyDoubt *signatureDoubt(const JobRecord &record, const Entry &entry) { return signatureDoubt(record.reg(), entry.said); }

const KeyDoubt *signatureDoubt(const Register &reg, const Statement &said)
{
    const Person *author = reg.person(said.author);
    return author ? keyDoubtAt(*author, said.at) : nullptr;
}

std::vector<qint64> entriesInDoubt(const JobRecord &record)
{
    std::vector<qint64> entries;
    for (const Entry &entry : record.entries()) {
        if (signatureDoubt(record, entry))
            entries.push_back(entry.said.seq);
    }
    return entries;
}

std::vector<PersonSigned> signatures(const JobRecord &record)
{
    std::vector<PersonSigned> people;
    for (const Entry &entry : record.entries()) {
        const Register &reg = record.registerAt(entry.said.seq);
        auto at = std::find_if(people.begin(), people.end(), [&](const PersonSigned &one) { return one.person == entry.said.author; });
        if (at == people.end())
            at = people.insert(people.end(), {entry.said.author, {}, {}, {}, false, {}});
        at->name = reg.nameOf(entry.said.author);
        at->isRoot = reg.root == entry.said.author;
        if (std::find(at->keys.begin(), at->keys.end(), entry.said.key) == at->keys.end())
            at->keys.push_back(entry.said.key);
        addHeld(*at, reg, entry);
        at->entries.push_back(&entry);
    }
    return people;
}

std::vector<PersonSigned> byName(std::vector<PersonSigned> people)
{
    std::sort(people.begin(), people.end(), [](const PersonSigned &a, const PersonSigned &b) { return std::tie(a.name, a.person) < std::tie(b.name, b.person); });
    return people;
}

Report signaturesReport()
{
    return {"signatures"_L1,
            QT_TRANSLATE_NOOP("Report", "Signatures, and authorisations as they stood that day"),
            {{"person"_L1, QT_TRANSLATE_NOOP("Report", "Printed name"), 18},
             {"authorisations"_L1, QT_TRANSLATE_NOOP("Report", "Authorised to, under"), 33},
             {"key"_L1, QT_TRANSLATE_NOOP("Report", "Key"), 15},
             {"signatures"_L1, QT_TRANSLATE_NOOP("Report", "Signatures"), 10},
             {"first"_L1, QT_TRANSLATE_NOOP("Report", "First"), 14},
             {"last"_L1, QT_TRANSLATE_NOOP("Report", "Last"), 14}},
            &signatureRows};
}

} // namespace core
