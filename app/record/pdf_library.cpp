// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/pdf_library.hpp"

#include <QCoreApplication>
#include <QLibrary>

namespace record {

namespace {

const QString name = QStringLiteral("qpdf");

core::Error notThere(const QString &why)
{
    return {core::ErrorCode::NotFound,
            QCoreApplication::translate("Record", "The library that puts PDF files together cannot be loaded (%1). Install the package libqpdf%2 and export again; nothing that was signed is touched.")
                .arg(why, QString::number(REMATE_QPDF_VERSION))};
}

} // namespace

PdfLibrary::Function PdfLibrary::function(const char *symbol)
{
    const Function function{QLibrary::resolve(name, REMATE_QPDF_VERSION, symbol)};
    m_isWhole = m_isWhole && function.found;
    return function;
}

core::Result<PdfLibrary> PdfLibrary::load()
{
    QLibrary library(name, REMATE_QPDF_VERSION);
    if (!library.load())
        return tl::unexpected(notThere(library.errorString()));
    const PdfLibrary functions;
    if (!functions.m_isWhole)
        return tl::unexpected(notThere(QCoreApplication::translate("Record", "it is older than the one that this program was made with")));
    return functions;
}

} // namespace record
