// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/report_rows.hpp"

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/acts/references.hpp"

namespace core::reporting {

QString personText(const Register &reg, const PersonId &id)
{
    const Person *person = reg.person(id);
    return person ? inWords(QT_TRANSLATE_NOOP("Report", "%1 (%2)")).arg(person->name, id.text()) : id.text();
}

QString signerOf(const JobRecord &record, const Mark &mark) { return record.registerAt(mark.seq).nameOf(mark.by); }

QString meaningWord(QStringView meaning)
{
    if (meaning == u"performed")
        return inWords(QT_TRANSLATE_NOOP("Report", "performed"));
    if (meaning == u"inspected")
        return inWords(QT_TRANSLATE_NOOP("Report", "inspected"));
    if (meaning == u"reinspected")
        return inWords(QT_TRANSLATE_NOOP("Report", "inspected own work"));
    if (meaning == u"confirmed")
        return inWords(QT_TRANSLATE_NOOP("Report", "confirmed"));
    if (meaning == u"seen")
        return inWords(QT_TRANSLATE_NOOP("Report", "seen"));
    if (meaning == u"passed")
        return inWords(QT_TRANSLATE_NOOP("Report", "passed"));
    if (meaning == u"recorded")
        return inWords(QT_TRANSLATE_NOOP("Report", "recorded"));
    if (meaning == u"released")
        return inWords(QT_TRANSLATE_NOOP("Report", "released"));
    return meaning.toString();
}

QString meaningOf(const JobRecord &record, const Mark &mark)
{
    const Entry *entry = record.entry(mark.seq);
    return entry ? meaningWord(entry->said.meaning) : QString();
}

QString signedText(const JobRecord &record, const Mark &mark)
{
    const QString at = momentText(record.job(), mark.seq, mark.at);
    const QString meaning = meaningOf(record, mark);
    return meaning.isEmpty() ? inWords(QT_TRANSLATE_NOOP("Report", "%1, %2")).arg(signerOf(record, mark), at)
                             : inWords(QT_TRANSLATE_NOOP("Report", "%1, %2 %3")).arg(signerOf(record, mark), meaning, at);
}

QString standingText(const JobRecord &record, const Line &line)
{
    switch (line.standing) {
    case Standing::Stands: return {};
    case Standing::Struck: {
        const Entry *strike = line.struckBy ? record.entry(*line.struckBy) : nullptr;
        const QString reason = strike ? strike->said.body.text(u"reason") : QString();
        return inWords(QT_TRANSLATE_NOOP("Report", "Struck by entry %1: %2")).arg(line.struckBy.value_or(0)).arg(reason);
    }
    case Standing::Fallen: return inWords(QT_TRANSLATE_NOOP("Report", "Fell, since an entry that it rested on was struck"));
    }
    Q_UNREACHABLE();
}

std::set<QString> mentioned(const JobRecord &record, const QString &sort)
{
    std::set<QString> values;
    for (const Entry &entry : record.entries()) {
        for (const Reference &reference : referencesOf(entry.said)) {
            if (reference.sort == sort)
                values.insert(reference.value);
        }
    }
    return values;
}

std::vector<EntryOnItem> entriesOfKind(const JobRecord &record, QStringView kind)
{
    const JobState &job = record.job();
    const auto placeOf = [&](const EntryOnItem &on) {
        return on.item ? job.itemAt.value(on.item->listed.id) : static_cast<qsizetype>(job.items.size());
    };
    std::vector<EntryOnItem> found;
    for (std::size_t i = 0; i < record.entries().size(); ++i) {
        const Entry &entry = record.entries()[i];
        if (entry.said.kind != kind)
            continue;
        const auto id = InterfaceId::parse(entry.said.subject.value_or(QString()));
        found.push_back({&entry, &job.lines[i], id ? job.item(*id) : nullptr});
    }
    std::stable_sort(found.begin(), found.end(), [&](const EntryOnItem &a, const EntryOnItem &b) { return placeOf(a) < placeOf(b); });
    return found;
}

std::vector<ReportColumn> withClosing(std::vector<ReportColumn> first)
{
    first.insert(first.end(), {{QLatin1String("by"), QT_TRANSLATE_NOOP("Report", "By"), 13},
                               {QLatin1String("meaning"), QT_TRANSLATE_NOOP("Report", "Signed as"), 12},
                               {QLatin1String("at"), QT_TRANSLATE_NOOP("Report", "Time"), 15},
                               {QLatin1String("entry"), QT_TRANSLATE_NOOP("Report", "Entry"), 7},
                               {QLatin1String("worth"), QT_TRANSLATE_NOOP("Report", "Standing"), 11}});
    return first;
}

ReportRow closedRow(const JobRecord &record, const EntryOnItem &on, std::vector<QString> first, Counts counts)
{
    const bool stands = on.line->standing == Standing::Stands;
    const QString today = counts == Counts::Yes ? inWords(QT_TRANSLATE_NOOP("Report", "counts")) : inWords(QT_TRANSLATE_NOOP("Report", "voided later"));
    std::vector<QString> cells = std::move(first);
    cells.push_back(signerOf(record, markOf(on.entry->said)));
    cells.push_back(meaningWord(on.entry->said.meaning));
    cells.push_back(momentText(record.job(), on.entry->said.seq, on.entry->said.at));
    cells.push_back(QString::number(on.entry->said.seq));
    cells.push_back(stands ? today : standingText(record, *on.line));
    return {itemText(on.item, *on.entry), std::move(cells), stands && counts == Counts::No ? Standing::Fallen : on.line->standing};
}

QString itemText(const InterfaceState *item, const Entry &entry)
{
    const QString id = entry.said.subject.value_or(QString());
    return item ? inWords(QT_TRANSLATE_NOOP("Report", "%1 %2")).arg(id, item->listed.name) : id;
}

} // namespace core::reporting
