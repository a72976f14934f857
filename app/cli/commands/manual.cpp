// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>
#include <QDir>

#include "app/manual/html.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

core::Result<Answer> run(const Arguments &arguments, const Context &)
{
    const auto pages = manual::loadPages();
    if (!pages)
        return core::failure(pages.error());
    const QString folder = arguments.text(u"to"_s);
    if (const auto written = manual::writeHtml(*pages, folder); !written)
        return core::failure(written.error());
    const QString begin = QDir(folder).filePath(u"index.html"_s);
    return Answer{Exit::Good, tr("Wrote %1 pages; begin with %2").arg(pages->size()).arg(begin), {{u"begin"_s, begin}, {u"pages"_s, static_cast<qint64>(pages->size())}}};
}

} // namespace

Command manualCommand()
{
    return {"manual"_L1,
            QT_TRANSLATE_NOOP("Cli", "Write the manual as HTML into a folder."),
            {position("to"_L1, "FOLDER", QT_TRANSLATE_NOOP("Cli", "The folder; made when missing."))},
            Fonts::Needed,
            &run};
}

} // namespace cli
