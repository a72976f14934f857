// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/verify_store.hpp"

#include <QCoreApplication>
#include <QSet>

#include <numeric>

namespace session {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("VerifyStore", text); }

/// A name for faults of a store that has no register to name.
core::LedgerId noLedger() { return *core::LedgerId::parse(u"-"); }

class Verification {
public:
    Verification(db::Store &store, const Known &known, const VerifyProgress &progress) : m_store(store), m_known(known), m_progress(progress) {}

    core::Result<VerifyReport> run()
    {
        const auto ledgers = m_store.ledgers();
        if (!ledgers)
            return core::failure(ledgers.error());
        for (const db::StoredLedger &ledger : *ledgers)
            m_all += ledger.headSeq;
        const auto registerLedger = m_store.registerLedger();
        if (!registerLedger)
            return core::failure(registerLedger.error());
        core::RegisterVerifier reg(registerLedger->value_or(noLedger()));
        if (const auto read = verifyRegister(reg, *registerLedger); !read)
            return core::failure(read.error());
        for (const db::StoredLedger &ledger : *ledgers) {
            if (ledger.role == db::LedgerRole::Job) {
                if (const auto read = verifyJob(ledger, reg); !read)
                    return core::failure(read.error());
            }
        }
        if (const auto read = verifyAttachments(); !read)
            return core::failure(read.error());
        compareWithKnown(reg.ledger());
        return std::move(m_report);
    }

private:
    void fault(const core::LedgerId &ledger, qint64 seq, const QString &rule, const QString &sentence) { m_report.faults.push_back({ledger, seq, rule, sentence}); }

    template <class Verifier>
    core::Result<void> takeAll(Verifier &verifier, const core::LedgerId &ledger, bool isRegister)
    {
        VerifyReport::Ledger row{ledger.text(), isRegister, {}, 0};
        const auto read = m_store.forEach(ledger, 0, [&](const db::StoredEntryView &found) {
            verifier.take({found.seq, found.bytes.toByteArray(), found.hash.toByteArray(), found.signature.toByteArray()});
            row.head = {found.seq, core::Digest::of(found.bytes)};
            ++row.entries;
            m_hashes.insert(row.head.hash);
            return goesOn() ? db::Walk::On : db::Walk::Stop;
        });
        if (m_stopped)
            return core::failure(core::ErrorCode::Cancelled, tr("Verifying was stopped; nothing was said about the rest."));
        m_report.faults.insert(m_report.faults.end(), verifier.faults().begin(), verifier.faults().end());
        m_report.ledgers.push_back(std::move(row));
        return read;
    }

    bool goesOn()
    {
        constexpr qint64 tellEvery = 16;
        ++m_done;
        m_stopped = m_progress && m_done % tellEvery == 0 && !m_progress(m_done, m_all);
        return !m_stopped;
    }

    core::Result<void> verifyRegister(core::RegisterVerifier &reg, const std::optional<core::LedgerId> &ledger)
    {
        if (!ledger) {
            fault(noLedger(), 0, u"register.none"_s, tr("The store has no register, so nobody can be vouched for."));
            return {};
        }
        const auto read = takeAll(reg, *ledger, true);
        if (reg.reg().root)
            m_report.rootFingerprint = reg.reg().fingerprint;
        return read;
    }

    core::Result<void> verifyJob(const db::StoredLedger &stored, const core::RegisterVerifier &reg)
    {
        const auto ledger = stored.id();
        if (!ledger) {
            fault(noLedger(), 0, u"ledger.name"_s, tr("A ledger carries a name that cannot be one: \"%1\".").arg(stored.uuid));
            return {};
        }
        core::JobVerifier job(*ledger, reg);
        const auto read = takeAll(job, *ledger, false);
        for (const core::Digest &digest : job.attachments())
            m_named.push_back({*ledger, digest});
        return read;
    }

    core::Result<void> verifyAttachments()
    {
        const auto kept = m_store.attachments().list();
        if (!kept)
            return core::failure(kept.error());
        QSet<core::Digest> sound;
        for (const db::Attachment &attachment : *kept) {
            const auto bytes = m_store.attachments().get(attachment.digest);
            if (bytes)
                sound.insert(attachment.digest);
            else if (bytes.error().code != core::ErrorCode::Damaged)
                return core::failure(bytes.error());
            else
                fault(noLedger(), 0, u"attachment.digest"_s, bytes.error().message);
        }
        m_report.attachments = static_cast<qint64>(kept->size());
        for (const auto &[ledger, digest] : m_named) {
            if (!sound.contains(digest))
                fault(ledger, seqNaming(ledger, digest), u"attachment.missing"_s, tr("It names the attachment %1, which the store does not have as it was.").arg(digest.hex()));
        }
        return {};
    }

    /// The entry that names an attachment.
    qint64 seqNaming(const core::LedgerId &ledger, const core::Digest &digest)
    {
        qint64 seq = 0;
        const QByteArray hex = digest.hex().toLatin1();
        const auto read = m_store.forEach(ledger, 0, [&](const db::StoredEntryView &found) {
            seq = found.seq;
            return found.bytes.contains(hex) ? db::Walk::Stop : db::Walk::On;
        });
        return read ? seq : 0;
    }

    void compareWithKnown(const core::LedgerId &reg)
    {
        if (m_known.rootFingerprint && m_known.rootFingerprint != m_report.rootFingerprint)
            fault(reg, 1, u"register.root"_s, tr("The root fingerprint is not the one that was given: this store hangs from another root."));
        for (const core::Digest &hash : m_known.entries) {
            if (!m_hashes.contains(hash))
                fault(noLedger(), 0, u"ledger.missing"_s, tr("No entry has the hash %1: it was changed or removed, perhaps with all that followed it.").arg(hash.hex()));
        }
    }

    db::Store &m_store;
    const Known &m_known;
    const VerifyProgress &m_progress;
    qint64 m_done = 0;
    qint64 m_all = 0;
    bool m_stopped = false;
    VerifyReport m_report;
    QSet<core::Digest> m_hashes;
    std::vector<std::pair<core::LedgerId, core::Digest>> m_named;
};

} // namespace

qint64 VerifyReport::entries() const
{
    return std::accumulate(ledgers.begin(), ledgers.end(), qint64{0}, [](qint64 sum, const Ledger &ledger) { return sum + ledger.entries; });
}

core::Result<VerifyReport> verifyStore(db::Store &store, const Known &known, const VerifyProgress &progress)
{
    return Verification(store, known, progress).run();
}

} // namespace session
