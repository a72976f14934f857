// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/package/package_evidence.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <numeric>

#include "core/ledger/canonical.hpp"
#include "core/package/signature_line.hpp"
#include "db/attachments.hpp"

namespace package {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Package", text); }

/// Manifests and the like: long enough for a hundred thousand photos.
constexpr qint64 longestTagFile = 16 * 1024 * 1024;
constexpr qsizetype longestSignature = 1024;

tl::unexpected<core::Error> stopped() { return core::failure(core::ErrorCode::Cancelled, tr("Verifying was stopped; nothing was said about the rest.")); }

bool isTagFile(const QString &path) { return path == names::declaration || path == names::info || path == names::manifest || path == names::tagManifest; }

/// The name of a ledger's two files, when the path is one of them.
std::optional<QString> ledgerNameIn(const QString &path)
{
    for (const QLatin1String ending : {names::entries, names::signatures}) {
        if (!path.endsWith(ending))
            continue;
        const QString name = path.chopped(ending.size());
        const bool isLinked = name.startsWith(names::linked) && core::LedgerId::parse(name.sliced(names::linked.size()));
        if (name == names::job || name == names::reg || isLinked)
            return name;
    }
    return std::nullopt;
}

bool isDerived(const QString &path) { return path == names::pdf || path == names::csv || path == names::instructions || path == names::script; }

/// The digest that an attachment's path names.
std::optional<core::Digest> digestIn(const QString &path)
{
    constexpr qsizetype hex = 64;
    return path.startsWith(names::attachments) ? core::Digest::parse(QStringView(path).sliced(names::attachments.size()).left(hex)) : std::nullopt;
}

/// Nothing that people or programs write is this repetitive: it is there to fill the memory of whoever unpacks it.
bool isBomb(const ZipReader::Entry &entry)
{
    constexpr qint64 notice = 16 * 1024 * 1024;
    constexpr qint64 ratio = 250;
    return entry.size > notice && entry.size / std::max<qint64>(1, entry.packed) > ratio;
}

} // namespace

void PackageEvidence::fault(const QString &rule, const QString &sentence, qint64 seq, const std::optional<core::LedgerId> &ledger)
{
    m_faults.push_back({ledger.value_or(session::noLedger()), seq, rule, sentence});
}

bool PackageEvidence::tell(qint64 bytes, const Going &going)
{
    m_read += bytes;
    return !going || going(std::min(m_read, m_all), m_all);
}

core::Result<std::unique_ptr<PackageEvidence>> PackageEvidence::open(const QString &path, const Going &going)
{
    auto zip = ZipReader::open(path);
    if (!zip)
        return core::failure(zip.error());
    std::unique_ptr<PackageEvidence> evidence(new PackageEvidence(*std::move(zip)));
    if (const auto looked = evidence->look(going); !looked)
        return core::failure(looked.error());
    return evidence;
}

core::Result<void> PackageEvidence::look(const Going &going)
{
    const auto &entries = m_zip->entries();
    m_all = std::accumulate(entries.begin(), entries.end(), qint64{1}, [](qint64 sum, const ZipReader::Entry &entry) { return sum + entry.size; });
    m_folder = entries.empty() ? QString() : entries.front().name.section(u'/', 0, 0);
    lookAtNames();
    lookAtListed();
    if (const auto read = lookAtFiles(going); !read)
        return read;
    lookAtManifests();
    lookAtLabels();
    lookAtNamed();
    if (m_job && folderOf(*m_job) != m_folder)
        fault(u"package.bag"_s, tr("The bag's folder is not named after the job's ledger."));
    return {};
}

/// Every file is one that a package has, and every file that it must have is there.
void PackageEvidence::lookAtNames()
{
    for (const ZipReader::Entry &entry : m_zip->entries()) {
        const QString path = entry.name.mid(m_folder.size() + 1);
        const bool isInBag = entry.name.startsWith(m_folder + u'/');
        if (!isInBag || (!isTagFile(path) && !ledgerNameIn(path) && !isDerived(path) && !digestIn(path)))
            callExtra(path, tr("%1 does not belong into a package.").arg(entry.name));
    }
    for (const QLatin1String name : {names::declaration, names::info, names::manifest, names::tagManifest, names::pdf, names::csv, names::instructions, names::script}) {
        if (!entryOf(name))
            fault(u"package.missing"_s, tr("%1 is missing.").arg(name));
    }
}

void PackageEvidence::callExtra(const QString &path, const QString &sentence)
{
    if (m_extra.insert(path).second)
        fault(u"package.extra"_s, sentence);
}

/// Before anything is unpacked: what nobody listed was put in, and is not worth anybody's time or memory.
void PackageEvidence::lookAtListed()
{
    m_listed = listedIn(names::manifest);
    if (!m_listed)
        return; // told; then nothing can be held against a file
    for (const ZipReader::Entry &entry : m_zip->entries()) {
        const QString path = entry.name.mid(m_folder.size() + 1);
        if (!isTagFile(path) && !m_listed->contains(path))
            callExtra(path, tr("%1 does not list %2: it was put in.").arg(names::manifest, path));
    }
}

core::Result<void> PackageEvidence::lookAtFiles(const Going &going)
{
    // The register first, as it vouches for the rest; then the job, then those that it is linked with.
    std::vector<QString> ledgers{names::reg, names::job};
    std::set<QString> known(ledgers.begin(), ledgers.end());
    for (const ZipReader::Entry &entry : m_zip->entries()) {
        const auto name = ledgerNameIn(entry.name.mid(m_folder.size() + 1));
        if (name && known.insert(*name).second)
            ledgers.push_back(*name);
    }
    for (const QString &name : ledgers) {
        if (const auto looked = lookAtLedger(name, name == names::reg ? db::LedgerRole::Register : db::LedgerRole::Job, going); !looked)
            return looked;
    }
    for (const ZipReader::Entry &entry : m_zip->entries()) {
        const QString path = entry.name.mid(m_folder.size() + 1);
        if (isTagFile(path) || ledgerNameIn(path))
            continue;
        if (m_extra.contains(path)) {
            if (const auto digest = digestIn(path))
                m_attachments.insert_or_assign(*digest, tr("%1 does not list the attachment %2; it was not unpacked.").arg(names::manifest, path));
            continue;
        }
        if (isBomb(entry)) {
            fault(u"package.digest"_s, tr("%1 unpacks to far more than such a file holds; it was not unpacked.").arg(path));
            continue;
        }
        if (const auto looked = digestIn(path) ? lookAtAttachment(entry, path) : lookAtRest(entry, path, going); !looked)
            return looked;
        if (!tell(entry.size, going))
            return stopped();
    }
    return {};
}

core::Result<PackageEvidence::Pair> PackageEvidence::openPair(const QString &name) const
{
    const ZipReader::Entry *entries = entryOf(name + names::entries);
    const ZipReader::Entry *signatures = entryOf(name + names::signatures);
    if (!entries || !signatures)
        return core::failure(core::ErrorCode::NotFound, tr("%1 is missing.").arg(name + (entries ? names::signatures : names::entries)));
    if (isBomb(*entries) || isBomb(*signatures))
        return core::failure(core::ErrorCode::Damaged, tr("%1 unpacks to far more than such a file holds; it was not unpacked.").arg(name));
    return Pair{LineReader(m_zip->stream(*entries)), LineReader(m_zip->stream(*signatures))};
}

/// Reads a ledger's two files side by side, once: digests, pairing, how many rows, which attachments they name.
core::Result<void> PackageEvidence::lookAtLedger(const QString &name, db::LedgerRole role, const Going &going)
{
    auto pair = openPair(name);
    if (!pair) {
        fault(pair.error().code == core::ErrorCode::NotFound ? u"package.missing"_s : u"package.digest"_s, pair.error().message);
        return {};
    }
    std::optional<core::LedgerId> ledger;
    qint64 rows = 0;
    qint64 told = 0;
    for (;;) {
        const auto entry = pair->entries.next(longestLine);
        const auto signature = pair->signatures.next(longestSignature);
        if (!entry || !signature) {
            fault(u"package.lines"_s, tr("%1, line %2: %3").arg(name + (entry ? names::signatures : names::entries)).arg(rows + 1).arg(entry ? signature.error().message : entry.error().message));
            break;
        }
        if (!*entry && !*signature)
            break;
        if (!*entry || !*signature) {
            fault(u"package.lines"_s, tr("%1 has no line %2, and the other file of that ledger has.").arg(name + (*entry ? names::signatures : names::entries)).arg(rows + 1));
            break;
        }
        ++rows;
        if (const auto line = core::parseSignatureLine(**signature); !line) {
            fault(u"package.lines"_s, tr("%1, line %2: %3").arg(name + names::signatures).arg(rows).arg(line.error().message));
            break;
        }
        if (rows == 1) {
            const auto said = core::parseStatement(**entry);
            ledger = said ? std::optional(said->ledger) : std::nullopt;
        }
        if (const auto digest = attachmentNamedBy(**entry))
            m_named.insert(*digest);
        const qint64 now = pair->entries.size() + pair->signatures.size();
        if (now != told && !tell(now - told, going))
            return stopped();
        told = now;
    }
    // What does not unpack has its fault already; its digest is of what there was.
    (void)pair->entries.skipRest();
    (void)pair->signatures.skipRest();
    m_digests.insert_or_assign(name + names::entries, pair->entries.digest());
    m_digests.insert_or_assign(name + names::signatures, pair->signatures.digest());
    m_payloadBytes += pair->entries.size() + pair->signatures.size();
    if (name.startsWith(names::linked))
        ledger = core::LedgerId::parse(name.sliced(names::linked.size()));
    if (!ledger || m_names.contains(*ledger)) {
        fault(u"package.lines"_s, tr("%1 does not begin with an entry that can be read, or is of a ledger that is there already.").arg(name + names::entries));
        return {};
    }
    m_names.insert_or_assign(*ledger, name);
    m_ledgers.push_back({ledger->text(), role, rows});
    if (name == names::job)
        m_job = ledger;
    if (name == names::reg)
        m_reg = ledger;
    return {};
}

core::Result<void> PackageEvidence::lookAtAttachment(const ZipReader::Entry &entry, const QString &path)
{
    const core::Digest name = *digestIn(path);
    const auto bytes = m_zip->bytes(entry, db::Attachments::largest);
    if (!bytes) {
        m_attachments.insert_or_assign(name, bytes.error().message);
        return {};
    }
    if (m_attachments.contains(name))
        fault(u"package.extra"_s, tr("The attachment %1 is there twice.").arg(path));
    const core::Digest digest = core::Digest::of(*bytes);
    m_digests.insert_or_assign(path, digest);
    m_payloadBytes += bytes->size();
    m_attachmentPaths.insert_or_assign(name, path);
    const bool isSound = digest == name && path == attachmentPath(name, *bytes);
    m_attachments.insert_or_assign(name, isSound ? std::nullopt : std::optional(tr("The attachment %1 is not what its name says: it was changed or swapped.").arg(path)));
    return {};
}

/// A file that is made of the entries, or one that does not belong here: its digest.
core::Result<void> PackageEvidence::lookAtRest(const ZipReader::Entry &entry, const QString &path, const Going &going)
{
    ZipStream stream = m_zip->stream(entry);
    core::DigestStream digest;
    for (;;) {
        constexpr qsizetype piece = 1 << 20;
        const auto read = stream.read(piece);
        if (!read) {
            fault(u"package.digest"_s, read.error().message);
            return {};
        }
        if (read->isEmpty()) {
            m_digests.insert_or_assign(path, digest.soFar());
            m_payloadBytes += entry.size;
            return {};
        }
        digest.add(*read);
        if (!tell(0, going))
            return stopped();
    }
}

/// What a manifest lists, by path; nothing where it cannot be read, which is told.
std::optional<std::map<QString, core::Digest>> PackageEvidence::listedIn(QLatin1String name)
{
    const auto text = file(name, longestTagFile);
    const auto parsed = text ? core::bag::parseManifest(*text, name) : core::Result<std::vector<core::bag::Listed>>(core::failure(text.error()));
    if (!parsed) {
        fault(u"package.bag"_s, tr("%1, line %2: %3").arg(name).arg(parsed.error().where.row.value_or(0)).arg(parsed.error().message));
        return std::nullopt;
    }
    std::map<QString, core::Digest> digests;
    for (const core::bag::Listed &one : *parsed)
        digests.emplace(one.path, one.digest);
    return digests;
}

void PackageEvidence::lookAtManifests()
{
    if (const auto declared = file(names::declaration, longestTagFile); !declared || *declared != core::bag::declaration())
        fault(u"package.bag"_s, tr("bagit.txt is not that of BagIt 1.0."));
    const auto compare = [this](QLatin1String name, const std::map<QString, core::Digest> &wanted, const std::map<QString, core::Digest> &found) {
        for (const auto &[path, digest] : wanted) {
            const auto at = found.find(path);
            if (at == found.end() && m_extra.contains(path))
                continue; // told, and not unpacked
            if (at == found.end())
                fault(u"package.missing"_s, tr("%1 lists %2, which is missing or cannot be read.").arg(name, path));
            else if (at->second != digest)
                fault(u"package.digest"_s, tr("%1 is not what %2 says: one of the two was changed.").arg(path, name));
        }
        for (const auto &[path, digest] : found) {
            if (!wanted.contains(path))
                callExtra(path, tr("%1 does not list %2: it was put in.").arg(name, path));
        }
    };
    const std::map<QString, core::Digest> nothing;
    compare(names::manifest, m_listed.value_or(nothing), m_digests);
    std::map<QString, core::Digest> tags;
    for (const QLatin1String name : {names::declaration, names::info, names::manifest}) {
        if (const auto bytes = file(name, longestTagFile))
            tags.emplace(name, core::Digest::of(*bytes));
    }
    compare(names::tagManifest, listedIn(names::tagManifest).value_or(nothing), tags);
}

void PackageEvidence::lookAtLabels()
{
    const auto text = file(names::info, longestTagFile);
    auto labels = text ? core::bag::parseInfo(*text, names::info) : core::Result<std::vector<core::bag::Label>>(core::failure(text.error()));
    if (labels)
        m_labels = *std::move(labels);
    else
        fault(u"package.bag"_s, tr("%1, line %2: %3").arg(names::info).arg(labels.error().where.row.value_or(0)).arg(labels.error().message));
}

void PackageEvidence::lookAtNamed()
{
    for (const auto &[digest, path] : m_attachmentPaths) {
        if (!m_named.contains(digest))
            fault(u"package.extra"_s, tr("No entry names the attachment %1: it was put in.").arg(path));
    }
}

core::Result<void> PackageEvidence::forEach(const core::LedgerId &ledger, qint64 afterSeq, const db::EntryVisitor &visit)
{
    const auto name = m_names.find(ledger);
    if (name == m_names.end())
        return {};
    auto &open = m_open[ledger];
    if (!open || open->seq > afterSeq) {
        auto pair = openPair(name->second);
        if (!pair)
            return core::failure(pair.error());
        open = std::make_unique<Pair>(*std::move(pair));
    }
    // Ends quietly where the pairs end or break: what is wrong there was told when the package was opened.
    for (;;) {
        const auto entry = open->entries.next(longestLine);
        const auto signature = open->signatures.next(longestSignature);
        if (!entry || !signature || !*entry || !*signature)
            return {};
        const auto line = core::parseSignatureLine(**signature);
        if (!line)
            return {};
        open->seq = open->entries.line();
        if (open->seq <= afterSeq)
            continue;
        const QByteArray hash = line->hash.bytes();
        if (visit({line->seq, **entry, hash, line->signature}) == db::Walk::Stop)
            return {};
    }
}

core::Result<void> PackageEvidence::forEachAttachment(const AttachmentVisitor &visit)
{
    for (const auto &[digest, damage] : m_attachments)
        visit(digest, damage);
    return {};
}

core::Result<QByteArray> PackageEvidence::file(const QString &path, qint64 most) const
{
    const ZipReader::Entry *entry = entryOf(path);
    if (!entry)
        return core::failure(core::ErrorCode::NotFound, tr("%1 is missing.").arg(path));
    return m_zip->bytes(*entry, most);
}

core::Result<QByteArray> PackageEvidence::attachment(const core::Digest &digest) const
{
    const auto at = m_attachmentPaths.find(digest);
    if (at == m_attachmentPaths.end())
        return core::failure(core::ErrorCode::NotFound, tr("The package does not hold the attachment %1.").arg(digest.hex()));
    return file(at->second, db::Attachments::largest);
}

} // namespace package
