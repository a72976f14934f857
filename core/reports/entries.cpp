// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"
#include "core/acts/voids.hpp"
#include "core/reports/report_rows.hpp"
#include "core/reports/signatures.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

/// What a disturbance took with it, each in a sentence of its own.
QString voidedText(const std::map<qint64, std::vector<Voided>> &voided, qint64 seq)
{
    QString text;
    if (const auto at = voided.find(seq); at != voided.end()) {
        for (const Voided &one : at->second)
            text += u' ' + one.sentence;
    }
    return text;
}

QString doubtText(const JobRecord &record, const Entry &entry)
{
    return signatureDoubt(record, entry) ? u' ' + inWords(QT_TRANSLATE_NOOP("Report", "(signature in doubt)")) : QString();
}

std::vector<ReportRow> entryRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    const auto voided = voidedByDisturbing(record.said());
    for (std::size_t i = 0; i < record.entries().size(); ++i) {
        const Entry &entry = record.entries()[i];
        const Line &line = record.job().lines[i];
        const Register &reg = record.registerAt(entry.said.seq);
        const auto id = InterfaceId::parse(entry.said.subject.value_or(QString()));
        rows.push_back({{},
                        {QString::number(entry.said.seq), momentText(record.job(), entry.said.seq, entry.said.at), personText(reg, entry.said.author) + doubtText(record, entry),
                         describe(entry.said, reg, id ? record.kindOf(*id) : nullptr) + voidedText(voided, entry.said.seq), standingText(record, line),
                         meaningInWords(entry.said.meaning), entry.hash.hex()},
                        line.standing});
    }
    return rows;
}

} // namespace

Report entriesReport()
{
    return {"entries"_L1,
            QT_TRANSLATE_NOOP("Report", "All entries, in order"),
            {{"entry"_L1, QT_TRANSLATE_NOOP("Report", "Entry"), 7},
             {"at"_L1, QT_TRANSLATE_NOOP("Report", "Time"), 13},
             {"signed_by"_L1, QT_TRANSLATE_NOOP("Report", "Signed by"), 17},
             {"statement"_L1, QT_TRANSLATE_NOOP("Report", "Statement"), 48},
             {"standing"_L1, QT_TRANSLATE_NOOP("Report", "Struck"), 0},
             {"meaning"_L1, QT_TRANSLATE_NOOP("Report", "Signed as"), 20},
             {"hash"_L1, QT_TRANSLATE_NOOP("Report", "Hash"), 0}},
            &entryRows};
}

} // namespace core
