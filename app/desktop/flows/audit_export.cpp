// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/audit_export.hpp"

#include <QCoreApplication>

#include "app/language/in_record_words.hpp"
#include "app/record/audit_sheet.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

namespace {

struct AuditExport {
    Q_DECLARE_TR_FUNCTIONS(AuditExport)
};

/// What was shown in the screen's language is put into words anew.
core::AuditTable inRecordWords(const AuditAnswer &answer)
{
    const language::InRecordWords english;
    return answer();
}

void tell(const core::Result<void> &written, const QString &path, Ask &ask)
{
    if (written)
        ask.tell(AuditExport::tr("The file was written"), path);
    else
        ask.tell(AuditExport::tr("The file was not written"), core::errorInWords(written.error()));
}

} // namespace

void exportAuditCsv(const AuditAnswer &answer, const QString &name, Ask &ask)
{
    const auto path = ask.fileToSave(answer().title, name + QStringLiteral(".csv"), AuditExport::tr("CSV (*.csv)"));
    if (path)
        tell(record::writeAuditCsv(inRecordWords(answer), *path), *path, ask);
}

void exportAuditPdf(const AuditAnswer &answer, const QString &name, Ask &ask)
{
    const QString title = answer().title;
    const QString a4 = AuditExport::tr("A4");
    const auto size = ask.oneOf(title, AuditExport::tr("Paper size"), {a4, AuditExport::tr("Letter")});
    const auto path = size ? ask.fileToSave(title, name + QStringLiteral(".pdf"), AuditExport::tr("PDF (*.pdf)")) : std::nullopt;
    if (path)
        tell(record::writeAuditPdf(inRecordWords(answer), *path, *size == a4 ? record::PageSize::A4 : record::PageSize::Letter), *path, ask);
}

} // namespace desktop
