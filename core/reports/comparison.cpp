// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/comparison.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/job/fold.hpp"
#include "core/job/loose_ends.hpp"
#include "core/reports/timeline.hpp"

namespace core {

using namespace Qt::StringLiterals;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Report", text); }

JobState stateAt(const JobState &job, qint64 seq)
{
    JobFold fold;
    for (qint64 i = 0; i < seq; ++i)
        fold.take(job.said[static_cast<std::size_t>(i)], {});
    JobState state = fold.state();
    state.others = job.others;
    return state;
}

QString conditionsOf(const InterfaceState *item)
{
    QStringList words;
    if (item) {
        for (const ConditionStated &stated : item->conditions)
            words << inWordsOf(stated);
    }
    return words.join(u' ');
}

std::optional<Stage> stageIn(const InterfaceState *item) { return item ? std::optional(stageOf(*item)) : std::nullopt; }

void addChange(std::vector<ItemChange> &changes, const InterfaceState *before, const InterfaceState *after)
{
    const Listing &listed = (after ? after : before)->listed;
    ItemChange change{listed.id, listed.name, stageIn(before), stageIn(after), conditionsOf(before), conditionsOf(after)};
    if (change.stageBefore != change.stageAfter || change.conditionBefore != change.conditionAfter)
        changes.push_back(std::move(change));
}

LooseEnds missingIn(const LooseEnds &ends, const LooseEnds &others)
{
    LooseEnds missing;
    std::copy_if(ends.begin(), ends.end(), std::back_inserter(missing), [&](const LooseEnd &end) { return std::find(others.begin(), others.end(), end) == others.end(); });
    return missing;
}

QString stageText(const std::optional<Stage> &stage, const QString &condition)
{
    const QString word = stage ? stageWord(*stage) : tr("not on the list");
    return condition.isEmpty() ? word : tr("%1. %2").arg(word, condition);
}

QString whoAndWhat(const JobState &job, const Register &reg, const Statement &said)
{
    return tr("%1, %2: %3").arg(momentText(job, said.seq, said.at), reg.nameOf(said.author), describe(said, reg));
}

} // namespace

Result<Head> headMeant(const JobState &job, const QString &text)
{
    const std::vector<Digest> hashes = hashesOf(job.said);
    if (const auto hash = Digest::parse(text.toLower())) {
        const auto at = std::find(hashes.begin(), hashes.end(), *hash);
        if (at == hashes.end())
            return failure(ErrorCode::BadInput, tr("The record with that hash is not part of this job's history. Compare it with the foot of the print, and see whether it is of this job."));
        return Head{at - hashes.begin() + 1, *hash};
    }
    bool isNumber = false;
    const qint64 seq = text.toLongLong(&isNumber);
    if (!isNumber)
        return failure(ErrorCode::BadInput, tr("\"%1\" is neither the number of an entry nor a hash of 64 hex digits.").arg(text));
    if (seq < 1 || seq > static_cast<qint64>(hashes.size()))
        return failure(ErrorCode::BadInput, tr("The job has no entry %1; its last one is %2.").arg(seq).arg(hashes.size()));
    return Head{seq, hashes[static_cast<std::size_t>(seq - 1)]};
}

Comparison compareHeads(const JobState &job, const Register &reg, const Head &from, const Head &to)
{
    const JobState before = stateAt(job, from.seq);
    const JobState after = stateAt(job, to.seq);
    Comparison comparison{from, to, {}, {}, {}, whatWasVoided(before, after), {}, {}};
    for (qint64 seq = from.seq + 1; seq <= to.seq; ++seq)
        comparison.added.push_back(seq);
    for (std::size_t i = 0; i < before.lines.size(); ++i) {
        if (before.lines[i].standing == Standing::Stands && after.lines[i].standing != Standing::Stands)
            comparison.noLonger.push_back(before.lines[i].seq);
    }
    for (const InterfaceState &item : after.items)
        addChange(comparison.items, before.item(item.listed.id), &item);
    for (const InterfaceState &item : before.items) {
        if (!after.item(item.listed.id))
            addChange(comparison.items, &item, nullptr);
    }
    const LooseEnds were = looseEnds(before, reg);
    const LooseEnds are = looseEnds(after, reg);
    comparison.gone = missingIn(were, are);
    comparison.appeared = missingIn(are, were);
    return comparison;
}

AuditTable comparisonTable(const JobState &job, const Register &reg, const Comparison &comparison)
{
    const auto headText = [](const Head &head) { return tr("Entry %1  %2").arg(head.seq).arg(head.hash.hex()); };
    AuditTable table{tr("What came between: %1").arg(job.facts.workOrder), {}, {}, {}, tr("Nothing came between."), headText(comparison.to)};
    table.facts = {{tr("Job"), tr("%1, %2, %3").arg(job.facts.workOrder, job.facts.title, job.facts.aircraft)},
                   {tr("From"), headText(comparison.from)},
                   {tr("To"), headText(comparison.to)},
                   {tr("Judged by"), tr("the register and the linked jobs as they are now")},
                   {tr("Fingerprint of the root"), reg.fingerprint.hex()}};
    table.columns = {{"part"_L1, QT_TRANSLATE_NOOP("Report", "Part"), 0},
                     {"entry"_L1, QT_TRANSLATE_NOOP("Report", "Entry"), 7},
                     {"subject"_L1, QT_TRANSLATE_NOOP("Report", "Subject"), 12},
                     {"before"_L1, QT_TRANSLATE_NOOP("Report", "Before"), 16},
                     {"after"_L1, QT_TRANSLATE_NOOP("Report", "After"), 16},
                     {"statement"_L1, QT_TRANSLATE_NOOP("Report", "Statement"), 49},
                     {"hash"_L1, QT_TRANSLATE_NOOP("Report", "Hash"), 0}};
    const std::vector<Digest> hashes = hashesOf(job.said);
    const auto addEntry = [&](const QString &title, const QString &part, qint64 seq, const QString &after) {
        const auto index = static_cast<std::size_t>(seq - 1);
        const Statement &said = job.said[index];
        table.rows.push_back({title, {part, QString::number(seq), said.subject.value_or(QString()), {}, after, whoAndWhat(job, reg, said), hashes[index].hex()}, Standing::Stands});
    };
    for (const qint64 seq : comparison.added)
        addEntry(tr("Entries that were added"), u"added"_s, seq, {});
    for (const qint64 seq : comparison.noLonger)
        addEntry(tr("Entries that do not count any more"), u"no_longer"_s, seq, standingWord(job.lines[static_cast<std::size_t>(seq - 1)]));
    for (const ItemChange &item : comparison.items)
        table.rows.push_back({tr("Interfaces"), {u"interface"_s, {}, item.id.text(), stageText(item.stageBefore, item.conditionBefore), stageText(item.stageAfter, item.conditionAfter), item.name, {}}, Standing::Stands});
    for (const Voided &voided : comparison.voided)
        table.rows.push_back({tr("What became void"), {u"void"_s, {}, voided.subject, {}, {}, voided.sentence, {}}, Standing::Stands});
    const auto addEnds = [&](const QString &title, const QString &part, const LooseEnds &ends) {
        for (const LooseEnd &end : ends)
            table.rows.push_back({title, {part, {}, end.subject, {}, {}, end.sentence, {}}, Standing::Stands});
    };
    addEnds(tr("Loose ends that are gone"), u"gone"_s, comparison.gone);
    addEnds(tr("New loose ends"), u"new"_s, comparison.appeared);
    return table;
}

} // namespace core
