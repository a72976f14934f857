// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/sheet_export.hpp"

#include <QCoreApplication>
#include <QPrinter>

#include "app/record/one_page_sheet.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

namespace {

struct SheetExport {
    Q_DECLARE_TR_FUNCTIONS(SheetExport)
};

void print(const core::OnePage &page, Ask &ask)
{
    const auto printer = ask.printer(page.title);
    if (!printer)
        return;
    printer->setDocName(page.title);
    printer->setCreator(QStringLiteral("Remate"));
    printer->setFullPage(true);
    if (const auto printed = record::printOnePage(page, *printer); !printed)
        ask.tell(SheetExport::tr("The sheet was not printed"), core::errorInWords(printed.error()));
}

} // namespace

void exportSheet(const session::Session &session, core::SheetSort sort, Ask &ask)
{
    const core::OnePage page = core::sheetOf(sort, *session.state(), session.reg(), session.now());
    if (const auto trouble = session.trouble()) {
        ask.tell(SheetExport::tr("The sheet was not written"), core::errorInWords(*trouble));
        return;
    }
    const QString a4 = SheetExport::tr("PDF on A4");
    const QString letter = SheetExport::tr("PDF on Letter");
    const auto where = ask.oneOf(page.title, SheetExport::tr("One page, on what"), {a4, letter, SheetExport::tr("A printer")});
    if (!where)
        return;
    if (*where != a4 && *where != letter) {
        print(page, ask);
        return;
    }
    const QString name = session.state()->facts.workOrder + (sort == core::SheetSort::Wall ? QStringLiteral("-wall.pdf") : QStringLiteral("-handover.pdf"));
    const auto path = ask.fileToSave(page.title, name, SheetExport::tr("PDF (*.pdf)"));
    if (!path)
        return;
    const auto written = record::writeOnePagePdf(page, *path, *where == a4 ? record::PageSize::A4 : record::PageSize::Letter);
    if (written)
        ask.tell(SheetExport::tr("The sheet was written"), SheetExport::tr("%1\nIt says what was open at its last entry, and is not the record.").arg(*path));
    else
        ask.tell(SheetExport::tr("The sheet was not written"), core::errorInWords(written.error()));
}

} // namespace desktop
