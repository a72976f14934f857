// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <memory>
#include <set>

#include "app/package/contents.hpp"
#include "app/package/going.hpp"
#include "app/package/line_reader.hpp"
#include "app/session/evidence.hpp"

namespace package {

/// The evidence that a package holds, read in place. Opening it reads the whole bag once: digests, file names, and that entries and signatures go together line by line;
/// what is wrong is told by faultsOfTheWhole(). Memory does not grow with the number of entries.
class PackageEvidence final : public session::Evidence {
public:
    /// NotFound, Io: the file cannot be read. Damaged: it is no ZIP file laid out as a package is. StoreNewer: a later program wrote it. Cancelled.
    static core::Result<std::unique_ptr<PackageEvidence>> open(const QString &path, const Going &going = {});

    core::Result<std::vector<db::StoredLedger>> ledgers() override { return m_ledgers; }
    core::Result<void> forEach(const core::LedgerId &ledger, qint64 afterSeq, const db::EntryVisitor &visit) override;
    core::Result<void> forEachAttachment(const AttachmentVisitor &visit) override;
    core::Result<std::vector<core::Fault>> faultsOfTheWhole() override { return m_faults; }

    /// The job's ledger and the register, where their first lines can be read.
    const std::optional<core::LedgerId> &job() const { return m_job; }
    const std::optional<core::LedgerId> &reg() const { return m_reg; }
    const std::vector<core::bag::Label> &labels() const { return m_labels; }
    qint64 payloadBytes() const { return m_payloadBytes; }
    qint64 payloadFiles() const { return static_cast<qint64>(m_digests.size()); }
    /// The bytes of a file of the bag: `data/record.pdf`. NotFound, Damaged, or longer than `most`.
    core::Result<QByteArray> file(const QString &path, qint64 most) const;
    core::Result<QByteArray> attachment(const core::Digest &digest) const;

private:
    struct Pair {
        LineReader entries;
        LineReader signatures;
        qint64 seq = 0; ///< of the row that was handed out last
    };
    explicit PackageEvidence(std::unique_ptr<ZipReader> zip) : m_zip(std::move(zip)) {}
    core::Result<void> look(const Going &going);
    void lookAtNames();
    void lookAtListed();
    std::optional<std::map<QString, core::Digest>> listedIn(QLatin1String name);
    /// Once a path.
    void callExtra(const QString &path, const QString &sentence);
    core::Result<void> lookAtFiles(const Going &going);
    core::Result<void> lookAtLedger(const QString &name, db::LedgerRole role, const Going &going);
    core::Result<void> lookAtAttachment(const ZipReader::Entry &entry, const QString &path);
    core::Result<void> lookAtRest(const ZipReader::Entry &entry, const QString &path, const Going &going);
    void lookAtManifests();
    void lookAtLabels();
    void lookAtNamed();
    core::Result<Pair> openPair(const QString &name) const;
    bool tell(qint64 bytes, const Going &going);
    void fault(const QString &rule, const QString &sentence, qint64 seq = 0, const std::optional<core::LedgerId> &ledger = {});
    const ZipReader::Entry *entryOf(const QString &path) const { return m_zip->find(m_folder + u'/' + path); }

    std::unique_ptr<ZipReader> m_zip;
    QString m_folder;
    std::vector<core::Fault> m_faults;
    std::vector<db::StoredLedger> m_ledgers;
    std::map<core::LedgerId, QString> m_names; ///< of the two files of each ledger
    std::map<core::LedgerId, std::unique_ptr<Pair>> m_open; ///< where reading stopped
    std::optional<core::LedgerId> m_job;
    std::optional<core::LedgerId> m_reg;
    std::optional<std::map<QString, core::Digest>> m_listed; ///< by the manifest of the payload
    std::set<QString> m_extra; ///< paths that were called so; they are not unpacked, unless they are a ledger's
    std::map<QString, core::Digest> m_digests; ///< of the payload, as it is
    std::map<core::Digest, std::optional<QString>> m_attachments;
    std::map<core::Digest, QString> m_attachmentPaths;
    std::set<core::Digest> m_named; ///< by entries
    std::vector<core::bag::Label> m_labels;
    qint64 m_payloadBytes = 0;
    qint64 m_read = 0;
    qint64 m_all = 0;
};

} // namespace package
