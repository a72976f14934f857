// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/audit_files.hpp"

#include <QCoreApplication>

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

} // namespace

QString AuditFiles::inWords() const
{
    QString words;
    for (const auto *path : {&csv, &pdf}) {
        if (*path)
            words += u'\n' + tr("Wrote %1").arg(**path);
    }
    return words;
}

void AuditFiles::addTo(core::json::Object &json) const
{
    if (csv)
        json.set(u"csv"_s, *csv);
    if (pdf)
        json.set(u"pdf"_s, *pdf);
}

Option csvOption() { return value("csv"_L1, "FILE", QT_TRANSLATE_NOOP("Cli", "Write all of it as CSV.")); }
Option pdfOption() { return value("pdf"_L1, "FILE", QT_TRANSLATE_NOOP("Cli", "Write all of it as PDF, with what was asked.")); }
Option paperOption() { return value("paper"_L1, "PAPER", QT_TRANSLATE_NOOP("Cli", "a4 or letter; a4 when left out.")); }

core::Result<record::PageSize> paperIn(const Arguments &arguments)
{
    const QString named = arguments.textIfGiven(u"paper"_s).value_or(u"a4"_s);
    const auto paper = record::parsePageSize(named);
    if (!paper)
        return core::failure(core::ErrorCode::BadInput, tr("\"%1\" is no paper: a4 or letter.").arg(named));
    return *paper;
}

core::Result<AuditFiles> auditFilesIn(const Arguments &arguments)
{
    const auto paper = paperIn(arguments);
    if (!paper)
        return core::failure(paper.error());
    return AuditFiles{arguments.textIfGiven(u"csv"_s), arguments.textIfGiven(u"pdf"_s), *paper};
}

QString auditInWords(const core::AuditTable &table, RowInWords rowInWords)
{
    QStringList lines;
    for (const core::AuditFact &fact : table.facts)
        lines << tr("%1: %2").arg(fact.name, fact.value);
    QString group;
    for (const core::ReportRow &row : table.rows) {
        if (row.group != group)
            lines << QString() << row.group;
        group = row.group;
        lines << rowInWords(table, row);
    }
    if (table.rows.empty())
        lines << table.whenEmpty;
    return lines.join(u'\n');
}

core::Result<void> writeAudit(const core::AuditTable &table, const AuditFiles &files)
{
    core::Result<void> done;
    if (files.csv)
        done = record::writeAuditCsv(table, *files.csv);
    if (done && files.pdf)
        done = record::writeAuditPdf(table, *files.pdf, files.paper);
    return done;
}

} // namespace cli
