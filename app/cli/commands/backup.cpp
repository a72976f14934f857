// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "db/store.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    auto store = db::Store::open(arguments.text(u"store"_s), db::Access::ReadWrite);
    if (!store)
        return core::failure(store.error());
    const QString target = arguments.text(u"target"_s);
    const auto overwrite = arguments.has(u"overwrite"_s) ? db::Overwrite::Yes : db::Overwrite::No;
    const auto report = (*store)->backUp(target, overwrite, context.clock());
    if (!report)
        return core::failure(report.error());
    return Answer{Exit::Good,
                  QCoreApplication::translate("Cli", "Copied %1 ledgers with %2 entries to %3 (%4 bytes), and compared them.").arg(report->ledgers).arg(report->entries).arg(target).arg(report->bytes),
                  {{u"file"_s, target}, {u"ledgers"_s, report->ledgers}, {u"entries"_s, report->entries}, {u"bytes"_s, report->bytes}}};
}

} // namespace

Command backupCommand()
{
    return {"backup"_L1,
            QT_TRANSLATE_NOOP("Cli", "Copy a store while it is in use."),
            {storeOption(), position("target"_L1, "TARGET", QT_TRANSLATE_NOOP("Cli", "The file to write.")),
             flag("overwrite"_L1, QT_TRANSLATE_NOOP("Cli", "Replace a file of that name."))},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
