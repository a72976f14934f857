// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/record_flow.hpp"

#include <QCoreApplication>
#include <QFileInfo>
#include <QSaveFile>

#include "app/desktop/flows/ask_paper.hpp"
#include "app/desktop/flows/long_work.hpp"
#include "app/language/in_record_words.hpp"
#include "app/package/package_writer.hpp"
#include "app/record/record.hpp"
#include "app/session/sound.hpp"
#include "core/list/interface_list.hpp"
#include "core/list/lessons.hpp"
#include "core/value/counted.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

namespace {

struct RecordFlow {
    Q_DECLARE_TR_FUNCTIONS(RecordFlow)
};

core::Result<core::JobRecord> recordOf(session::Session &session, const core::Kinds &kinds, QWidget *window)
{
    LongWork work(RecordFlow::tr("Verifying what the record rests on"), window);
    return session::soundRecordOf(session.store(), *session.job(), kinds, work.progress());
}

core::Result<void> write(const core::JobRecord &job, const QString &path, db::Store &store, record::PageSize size, QWidget *window)
{
    LongWork work(RecordFlow::tr("Writing the record"), window);
    const Progress progress = work.progress();
    record::RecordOptions options{size, record::WhenOpen::MarkAsDraft,
                                  [&](int page, int pages) { return progress(page, pages) ? record::Going::On : record::Going::Cancel; },
                                  [&](const core::Digest &digest) { return store.attachments().get(digest); }};
    if (const auto written = record::writeRecord(job, path, options); !written)
        return written;
    const QFileInfo file(path);
    return record::writeInterfacesCsv(job, file.path() + u'/' + file.completeBaseName() + QStringLiteral("-interfaces.csv"));
}

enum class ListFor { ThisJob, TheNext };

/// The notes for the next job tell what was learnt in the record's words: whoever reads them may speak another language.
QByteArray listAs(const core::JobState &job, ListFor whom)
{
    const language::InRecordWords english;
    return whom == ListFor::ThisJob ? core::writeInterfaceList(job) : core::writeInterfaceList(core::listForNextJob(job));
}

} // namespace

void exportPackage(session::Session &session, const core::Kinds &kinds, Ask &ask, QWidget *window)
{
    const QString title = RecordFlow::tr("Export the record package");
    const auto paper = askPaper(ask, title);
    const auto path = paper ? ask.fileToSave(title, session.state()->facts.workOrder + QStringLiteral("-record.zip"), RecordFlow::tr("Record package (*.zip)")) : std::nullopt;
    if (!path)
        return;
    LongWork work(RecordFlow::tr("Packing the record"), window);
    const auto packed = package::writePackage(session.store(), *session.job(), kinds, *path, {*paper, record::WhenOpen::MarkAsDraft, work.progress()});
    if (packed)
        ask.tell(packed->isClosed ? RecordFlow::tr("The record package was exported") : RecordFlow::tr("A draft of the record package was exported: the job is NOT CLOSED"),
                 RecordFlow::tr("%1\nEntries: %2, attachments: %3\nHash of the last entry: %4\nRoot fingerprint: %5\nVERIFY.txt in it says how to check it without this program.").arg(*path).arg(packed->entries).arg(packed->attachments).arg(packed->head.hash.hex(), packed->root.hex()));
    else if (packed.error().code != core::ErrorCode::Cancelled)
        ask.tell(RecordFlow::tr("The record package was not exported"), core::errorInWords(packed.error()));
}

void exportRecord(session::Session &session, const core::Kinds &kinds, Ask &ask, QWidget *window)
{
    const auto size = askPaper(ask, RecordFlow::tr("Export PDF and CSV"));
    if (!size)
        return;
    const auto path = ask.fileToSave(RecordFlow::tr("Export PDF and CSV"), session.state()->facts.workOrder + QStringLiteral(".pdf"), RecordFlow::tr("PDF (*.pdf)"));
    if (!path)
        return;
    const auto job = recordOf(session, kinds, window);
    const auto written = job ? write(*job, *path, session.store(), *size, window) : core::Result<void>(core::failure(job.error()));
    if (written)
        ask.tell(RecordFlow::tr("The record was exported"), RecordFlow::tr("%1, and the CSV of its interfaces beside it.").arg(*path));
    else if (written.error().code != core::ErrorCode::Cancelled)
        ask.tell(RecordFlow::tr("The record was not exported"), core::errorInWords(written.error()));
}

void exportList(const core::JobState &job, Ask &ask)
{
    const QString asListed = RecordFlow::tr("As this job has it");
    const auto which = job.closed ? ask.oneOf(RecordFlow::tr("Export the list"), RecordFlow::tr("Which list"), {asListed, RecordFlow::tr("For the next job: the notes tell what went otherwise than listed")}) : asListed;
    if (!which)
        return;
    const auto path = ask.fileToSave(RecordFlow::tr("Export the list"), job.facts.workOrder + QStringLiteral("-list.csv"), RecordFlow::tr("Interface list (*.csv)"));
    if (!path)
        return;
    QSaveFile file(*path);
    const QByteArray bytes = listAs(job, *which == asListed ? ListFor::ThisJob : ListFor::TheNext);
    if (file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit())
        ask.tell(RecordFlow::tr("The list was exported"), *path);
    else
        ask.tell(RecordFlow::tr("The list was not exported"), RecordFlow::tr("%1 could not be written: %2. Choose another folder.").arg(*path, file.errorString()));
}

void backUp(session::Session &session, Ask &ask, QWidget *window)
{
    const auto path = ask.fileToSave(RecordFlow::tr("Back up the store"), QFileInfo(session.store().path()).completeBaseName() + QStringLiteral("-backup.remate"), RecordFlow::tr("Store (*.remate)"));
    if (!path)
        return;
    LongWork work(RecordFlow::tr("Backing up the store"), window);
    const Progress progress = work.progress();
    // The person confirmed an existing name in the file window.
    const auto done = session.store().backUp(*path, db::Overwrite::Yes, session.now(), [&](qint64 pages, qint64 all) { return progress(pages, all) ? db::Walk::On : db::Walk::Stop; });
    if (done)
        ask.tell(RecordFlow::tr("The store was backed up"), RecordFlow::tr("%1 holds %2, compared with the original.").arg(*path, core::counted(done->entries, RecordFlow::tr("1 entry"), RecordFlow::tr("%1 entries"))));
    else if (done.error().code != core::ErrorCode::Cancelled)
        ask.tell(RecordFlow::tr("The store was not backed up"), core::errorInWords(done.error()));
}

} // namespace desktop
