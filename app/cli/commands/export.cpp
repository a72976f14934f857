// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>
#include <QDir>

#include "app/cli/audit_files.hpp"
#include "app/cli/opened.hpp"
#include "app/cli/terminal_progress.hpp"
#include "app/package/package_writer.hpp"
#include "app/record/record.hpp"
#include "app/session/sound.hpp"
#include "resources/resources.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

core::Result<record::RecordOptions> optionsIn(const Arguments &arguments)
{
    const auto paper = paperIn(arguments);
    if (!paper)
        return core::failure(paper.error());
    return record::RecordOptions{.pageSize = *paper, .whenOpen = arguments.has(u"draft"_s) ? record::WhenOpen::MarkAsDraft : record::WhenOpen::Refuse};
}

core::Result<Answer> intoFolder(Opened &opened, const QString &folder, record::RecordOptions options)
{
    options.attachment = [&opened](const core::Digest &digest) { return opened.store->attachments().get(digest); };
    auto kinds = resources::loadKinds();
    if (!kinds)
        return core::failure(kinds.error());
    const auto job = session::soundRecordOf(*opened.store, *opened.session->job(), *std::move(kinds), terminalProgress(tr("Verifying")));
    if (!job)
        return core::failure(job.error());
    if (!QDir().mkpath(folder))
        return core::failure(core::ErrorCode::Io, tr("The folder %1 cannot be made.").arg(folder));
    const QString pdf = QDir(folder).filePath(u"record.pdf"_s);
    const QString csv = QDir(folder).filePath(u"interfaces.csv"_s);
    if (const auto written = record::writeRecord(*job, pdf, options); !written)
        return core::failure(written.error());
    if (const auto written = record::writeInterfacesCsv(*job, csv); !written)
        return core::failure(written.error());
    return Answer{Exit::Good, tr("Wrote %1\nWrote %2").arg(pdf, csv),
                  {{u"record"_s, pdf}, {u"interfaces"_s, csv}, {u"closed"_s, job->isClosed()}, {u"head"_s, job->head().hash.hex()},
                   {u"root_fingerprint"_s, opened.session->reg().fingerprint.hex()}}};
}

core::Result<Answer> intoPackage(Opened &opened, const QString &path, const record::RecordOptions &options)
{
    const auto kinds = resources::loadKinds();
    if (!kinds)
        return core::failure(kinds.error());
    const auto packed = package::writePackage(*opened.store, *opened.session->job(), *kinds, path, {options.pageSize, options.whenOpen, terminalProgress(tr("Packing"))});
    if (!packed)
        return core::failure(packed.error());
    return Answer{Exit::Good, tr("Wrote %1\nEntries: %2, attachments: %3\nLast hash: %4\nRoot fingerprint: %5").arg(path).arg(packed->entries).arg(packed->attachments).arg(packed->head.hash.hex(), packed->root.hex()),
                  {{u"package"_s, path}, {u"entries"_s, packed->entries}, {u"attachments"_s, packed->attachments}, {u"closed"_s, packed->isClosed},
                   {u"head"_s, packed->head.hash.hex()}, {u"root_fingerprint"_s, packed->root.hex()}}};
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto options = optionsIn(arguments);
    if (!options)
        return core::failure(options.error());
    if (arguments.has(u"to"_s) == arguments.has(u"package"_s))
        return core::failure(core::ErrorCode::BadInput, tr("Say where to: --package FILE for the whole record, or --to FOLDER for its PDF and CSV alone."));
    auto opened = openJob(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    return arguments.has(u"to"_s) ? intoFolder(*opened, arguments.text(u"to"_s), *options) : intoPackage(*opened, arguments.text(u"package"_s), *options);
}

} // namespace

Command exportCommand()
{
    return {"export"_L1,
            QT_TRANSLATE_NOOP("Cli", "Write a job's record: as a package that anybody can check, or as PDF and CSV alone."),
            {storeOption(), value("package"_L1, "FILE", QT_TRANSLATE_NOOP("Cli", "Write the record package to this file, all that was signed with it.")), value("to"_L1, "FOLDER", QT_TRANSLATE_NOOP("Cli", "Write PDF and CSV into this folder; made when missing.")), jobOption(),
             paperOption(),
             flag("draft"_L1, QT_TRANSLATE_NOOP("Cli", "Also for a job that is not closed; every page says so."))},
            Fonts::Needed,
            &run};
}

} // namespace cli
