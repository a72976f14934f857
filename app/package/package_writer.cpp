// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/package/package_writer.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <algorithm>

#include "app/record/safe_file.hpp"
#include "app/session/linked_reader.hpp"
#include "app/session/read_on.hpp"
#include "app/session/sound.hpp"
#include "core/package/signature_line.hpp"

namespace package {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Package", text); }

using Entries = std::vector<core::Entry>;

/// Everything that is signed and goes into the package.
struct Ledgers {
    Entries job;
    Entries reg;
    std::map<core::LedgerId, Entries> linked;
};

void cutAfter(Entries &entries, qint64 seq)
{
    if (static_cast<qint64>(entries.size()) > seq)
        entries.erase(entries.begin() + seq, entries.end());
}

core::Result<Ledgers> readLedgers(db::Store &store, const core::LedgerId &job)
{
    Ledgers ledgers;
    auto own = session::readEntries(store, job);
    if (!own)
        return core::failure(own.error());
    ledgers.job = *std::move(own);
    Reach reach;
    for (const core::Entry &entry : ledgers.job)
        reach.take(entry.said, job);
    // What a linked job pins may reach further than what this one does; until nothing does.
    for (bool isFurther = true; isFurther;) {
        isFurther = false;
        for (const auto &[ledger, upTo] : std::map<core::LedgerId, qint64>(reach.linked)) {
            auto [at, isNew] = ledgers.linked.try_emplace(ledger);
            if (isNew) {
                auto entries = session::readEntries(store, ledger);
                if (!entries)
                    return core::failure(entries.error());
                at->second = *std::move(entries);
            }
            for (std::size_t i = 0; i < at->second.size() && static_cast<qint64>(i) < upTo; ++i)
                isFurther = reach.take(at->second[i].said, job) || isFurther;
        }
    }
    for (auto &[ledger, entries] : ledgers.linked)
        cutAfter(entries, reach.linked[ledger]);
    const auto registerLedger = store.registerLedger();
    if (!registerLedger)
        return core::failure(registerLedger.error());
    if (!*registerLedger)
        return core::failure(core::ErrorCode::Damaged, tr("The store has no register, so nobody can be vouched for. Verify it."));
    auto reg = session::readEntries(store, **registerLedger);
    if (!reg)
        return core::failure(reg.error());
    ledgers.reg = *std::move(reg);
    cutAfter(ledgers.reg, reach.reg);
    return ledgers;
}

/// Gathers the bag's files in order, and their digests.
class Bag {
public:
    Bag(ZipWriter zip, QString folder) : m_zip(std::move(zip)), m_folder(std::move(folder)) {}

    core::Result<void> payload(const QString &path, QByteArray bytes, Packing packing)
    {
        note(path, core::Digest::of(bytes), bytes.size());
        return m_zip.addBytes(m_folder + u'/' + path, std::move(bytes), packing);
    }
    core::Result<void> payloadFile(const QString &path, const core::Digest &digest, const QString &file, qint64 size)
    {
        note(path, digest, size);
        return m_zip.addFile(m_folder + u'/' + path, file, Packing::Stored);
    }
    core::Result<void> tag(const QString &name, QByteArray bytes, bool isListed = true)
    {
        if (isListed)
            m_tags.push_back({name, core::Digest::of(bytes)});
        return m_zip.addBytes(m_folder + u'/' + name, std::move(bytes), Packing::Deflated);
    }
    qint64 bytes() const { return m_bytes; }
    qint64 files() const { return static_cast<qint64>(m_payload.size()); }
    QByteArray manifest() const { return core::bag::manifest(m_payload); }
    QByteArray tagManifest() const { return core::bag::manifest(m_tags); }
    core::Result<void> finish(const Going &going) { return m_zip.finish(going); }

private:
    void note(const QString &path, const core::Digest &digest, qint64 size)
    {
        m_payload.push_back({path, digest});
        m_bytes += size;
    }
    ZipWriter m_zip;
    QString m_folder;
    std::vector<core::bag::Listed> m_payload;
    std::vector<core::bag::Listed> m_tags;
    qint64 m_bytes = 0;
};

core::Result<void> addLedger(Bag &bag, const QString &name, const Entries &entries)
{
    QByteArray lines;
    QByteArray signatures;
    for (const core::Entry &entry : entries) {
        lines += entry.bytes + '\n';
        signatures += core::signatureLine({entry.hash, entry.said.seq, entry.signature}) + '\n';
    }
    return bag.payload(name + names::entries, lines, Packing::Deflated).and_then([&] { return bag.payload(name + names::signatures, signatures, Packing::Deflated); });
}

std::vector<core::Digest> attachmentsOf(const Ledgers &ledgers)
{
    std::vector<core::Digest> digests;
    const auto note = [&](const Entries &entries) {
        for (const core::Entry &entry : entries) {
            if (const auto digest = attachmentNamedBy(entry.bytes))
                digests.push_back(*digest);
        }
    };
    note(ledgers.job);
    for (const auto &[ledger, entries] : ledgers.linked)
        note(entries);
    std::sort(digests.begin(), digests.end());
    digests.erase(std::unique(digests.begin(), digests.end()), digests.end());
    return digests;
}

/// Attachments go through the disk: many photos are more than the memory should hold.
core::Result<void> addAttachment(Bag &bag, db::Store &store, const core::Digest &digest, const QString &scratch)
{
    const auto bytes = store.attachments().get(digest);
    if (!bytes)
        return core::failure(bytes.error());
    const QString path = attachmentPath(digest, *bytes);
    const QString file = scratch + u'/' + digest.hex();
    QFile out(file);
    if (!out.open(QIODevice::WriteOnly) || out.write(*bytes) != bytes->size() || !out.flush())
        return core::failure(core::ErrorCode::NoSpace, tr("There is no room to pack the photos (%1). Make room and export again.").arg(out.errorString()), {file, std::nullopt, std::nullopt});
    return bag.payloadFile(path, digest, file, bytes->size());
}

core::JobRecord recordOf(const Ledgers &ledgers, const core::Kinds &kinds, db::Store &store)
{
    core::JobRecord record(ledgers.job, ledgers.reg, kinds);
    session::showLinked(record, store);
    return record;
}

tl::unexpected<core::Error> stopped() { return core::failure(core::ErrorCode::Cancelled, tr("The export was cancelled; no file was written.")); }

/// Shares of the progress that the parts of the work are shown as: setting the pages takes the longest.
constexpr qint64 wholeWork = 3300;
constexpr qint64 verifyingShare = 300;
constexpr qint64 pagesShare = 2000;

core::Result<void> addDerived(Bag &bag, const core::JobRecord &record, db::Store &store, const PackageOptions &options)
{
    const record::Progress paging = [&](int page, int pages) {
        const qint64 done = pages == 0 ? 0 : pagesShare * page / pages;
        return !options.going || options.going(verifyingShare + done, wholeWork) ? record::Going::On : record::Going::Cancel;
    };
    auto pdf = pdfOf(record, options.paper, [&store](const core::Digest &digest) { return store.attachments().get(digest); }, paging);
    auto how = instructions();
    auto program = script();
    if (!pdf || !how || !program)
        return core::failure(!pdf ? pdf.error() : !how ? how.error() : program.error());
    return bag.payload(names::pdf, *std::move(pdf), Packing::Stored)
        .and_then([&] { return bag.payload(names::csv, csvOf(record), Packing::Deflated); })
        .and_then([&] { return bag.payload(names::instructions, *std::move(how), Packing::Deflated); })
        .and_then([&] { return bag.payload(names::script, *std::move(program), Packing::Deflated); });
}

core::Result<void> addTags(Bag &bag, const core::JobRecord &record, const PackageOptions &options)
{
    return bag.tag(names::declaration, core::bag::declaration())
        .and_then([&] { return bag.tag(names::info, core::bag::info(labelsOf(record, labelsHere(options.paper), bag.bytes(), bag.files()))); })
        .and_then([&] { return bag.tag(names::manifest, bag.manifest()); })
        .and_then([&] { return bag.tag(names::tagManifest, bag.tagManifest(), false); });
}

} // namespace

core::Result<Packed> writePackage(db::Store &store, const core::LedgerId &job, const core::Kinds &kinds, const QString &path, const PackageOptions &options)
{
    const auto verifying = [&](qint64 done, qint64 all) { return !options.going || options.going(all == 0 ? 0 : verifyingShare * done / all, wholeWork); };
    if (const auto sound = session::requireSound(store, job, verifying); !sound)
        return sound.error().code == core::ErrorCode::Cancelled ? stopped() : core::failure(sound.error());
    const auto ledgers = readLedgers(store, job);
    if (!ledgers)
        return core::failure(ledgers.error());
    const auto folder = folderOf(job);
    if (ledgers->job.empty() || !folder)
        return core::failure(core::ErrorCode::NotFound, tr("The store has no such job, or one whose name cannot name a folder."));
    const core::JobRecord record = recordOf(*ledgers, kinds, store);
    if (!record.isClosed() && options.whenOpen == record::WhenOpen::Refuse)
        return core::failure(core::ErrorCode::Refused, tr("The job is not closed. Close it first, or export a draft that says so on each page."));
    // Beside the target, so that the finished file only has to be renamed.
    const QTemporaryDir scratch(QFileInfo(path).absoluteDir().filePath(u".remate-XXXXXX"_s));
    if (!scratch.isValid())
        return core::failure(core::ErrorCode::Io, tr("Nothing can be written into that folder (%1). Choose another one.").arg(scratch.errorString()), {path, std::nullopt, std::nullopt});
    const QString file = scratch.filePath(u"package.zip"_s);
    auto zip = ZipWriter::create(file);
    if (!zip)
        return core::failure(zip.error());
    Bag bag(*std::move(zip), *folder);
    core::Result<void> added = addLedger(bag, names::job, ledgers->job).and_then([&] { return addLedger(bag, names::reg, ledgers->reg); });
    Packed packed{static_cast<qint64>(ledgers->job.size() + ledgers->reg.size()), 0, record.head(), record.reg().fingerprint, record.isClosed()};
    for (const auto &[ledger, entries] : ledgers->linked) {
        if (added)
            added = addLedger(bag, names::linked + ledger.text(), entries);
        packed.entries += static_cast<qint64>(entries.size());
    }
    if (added)
        added = addDerived(bag, record, store, options);
    const auto digests = attachmentsOf(*ledgers);
    for (const core::Digest &digest : digests) {
        if (added)
            added = addAttachment(bag, store, digest, scratch.path());
    }
    packed.attachments = static_cast<qint64>(digests.size());
    constexpr qint64 largest = 0xffffffffLL; // what the plain form of ZIP can say
    if (added && bag.bytes() > largest)
        return core::failure(core::ErrorCode::BadInput, tr("The photos are more than 4 GiB, which is more than one package holds. Ask who looks after the program."));
    if (added)
        added = addTags(bag, record, options);
    if (!added)
        return core::failure(added.error());
    const auto finished = bag.finish([&](qint64 done, qint64 all) { return !options.going || options.going(verifyingShare + pagesShare + (wholeWork - verifyingShare - pagesShare) * done / all, wholeWork); });
    if (!finished)
        return core::failure(finished.error());
    if (options.going && !options.going(wholeWork, wholeWork))
        return stopped();
    if (const auto moved = record::moveSafely(file, path); !moved)
        return core::failure(moved.error());
    return packed;
}

} // namespace package
