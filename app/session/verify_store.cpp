// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/verify_store.hpp"

#include <QCoreApplication>
#include <QHash>
#include <QSet>

#include <algorithm>
#include <numeric>

#include "app/session/entry_reader.hpp"
#include "app/session/linked_reader.hpp"
#include "app/session/signature_checks.hpp"
#include "core/ledger/canonical.hpp"

namespace session {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("VerifyStore", text); }

void addContent(core::DigestStream &content, QByteArrayView bytes, QByteArrayView hash, QByteArrayView signature)
{
    // Hash and signature are of fixed length where they are sound; with the length of the bytes no two rows read alike.
    content.add(QByteArray::number(bytes.size()) + ' ' + QByteArray::number(signature.size()) + '\n');
    content.add(bytes);
    content.add(hash);
    content.add(signature);
}

class Verification {
public:
    Verification(Evidence &evidence, const Known &known, const VerifyProgress &progress, const VerifiedBefore *before)
        : m_evidence(evidence), m_known(known), m_progress(progress), m_before(before)
    {
    }

    core::Result<VerifyReport> run()
    {
        const auto ledgers = m_evidence.ledgers();
        if (!ledgers)
            return core::failure(ledgers.error());
        for (const db::StoredLedger &ledger : *ledgers) {
            m_all += ledger.headSeq;
            if (const auto id = ledger.id())
                m_headSeqs.insert_or_assign(*id, ledger.headSeq);
        }
        const auto ofTheWhole = m_evidence.faultsOfTheWhole();
        if (!ofTheWhole)
            return core::failure(ofTheWhole.error());
        addFaults(*ofTheWhole);
        const auto registerLedger = registerOf(*ledgers);
        core::RegisterVerifier reg(registerLedger.value_or(noLedger()), toBeChecked());
        if (const auto read = verifyRegister(reg, registerLedger); !read)
            return core::failure(read.error());
        m_isRegisterSound = registerLedger && m_report.faults.size() == ofTheWhole->size();
        for (const db::StoredLedger &ledger : *ledgers) {
            if (ledger.role == db::LedgerRole::Job) {
                if (const auto read = verifyJob(ledger, reg); !read)
                    return core::failure(read.error());
            }
        }
        if (const auto read = verifyAttachments(); !read)
            return core::failure(read.error());
        compareWithKnown(reg.ledger());
        addFaults(m_signatures.finish());
        const auto ofLookUps = m_report.faults.empty() ? m_evidence.faultsOfLookUps() : std::vector<core::Fault>();
        if (!ofLookUps)
            return core::failure(ofLookUps.error());
        addFaults(*ofLookUps);
        sortFaults();
        return std::move(m_report);
    }

private:
    static std::optional<core::LedgerId> registerOf(const std::vector<db::StoredLedger> &ledgers)
    {
        const auto at = std::find_if(ledgers.begin(), ledgers.end(), [](const db::StoredLedger &one) { return one.role == db::LedgerRole::Register; });
        return at == ledgers.end() ? std::nullopt : at->id();
    }
    void fault(const core::LedgerId &ledger, qint64 seq, const QString &rule, const QString &sentence) { m_report.faults.push_back({ledger, seq, rule, sentence}); }
    void addFaults(const std::vector<core::Fault> &faults) { m_report.faults.insert(m_report.faults.end(), faults.begin(), faults.end()); }
    core::TakeClaim toBeChecked()
    {
        return [this](core::SignatureClaim &&claim) { m_signatures.add(std::move(claim)); };
    }

    /// What concerns the whole first, since it explains the rest; then by ledger in the order of the store, then by entry: signatures were checked in an order of their own.
    void sortFaults()
    {
        QHash<QString, std::ptrdiff_t> places; // looked up: whoever puts in thousands of ledgers gets as many faults
        for (std::size_t at = 0; at < m_report.ledgers.size(); ++at)
            places.insert(m_report.ledgers[at].name, static_cast<std::ptrdiff_t>(at));
        const auto placeOf = [&](const core::Fault &fault) { return std::pair(places.value(fault.ledger.text(), -1), fault.seq); };
        std::stable_sort(m_report.faults.begin(), m_report.faults.end(), [&](const core::Fault &a, const core::Fault &b) { return placeOf(a) < placeOf(b); });
    }

    bool goesOn()
    {
        constexpr qint64 tellEvery = 16;
        ++m_done;
        m_stopped = m_progress && m_done % tellEvery == 0 && !m_progress(m_done, m_all);
        return !m_stopped;
    }

    static tl::unexpected<core::Error> stopped() { return core::failure(core::ErrorCode::Cancelled, tr("Verifying was stopped; nothing was said about the rest.")); }

    void noteKnown(const core::Digest &hash)
    {
        if (std::find(m_known.entries.begin(), m_known.entries.end(), hash) != m_known.entries.end())
            m_met.insert(hash);
    }

    /// Hands every entry to `take`, in order, and reports the ledger.
    core::Result<void> readAll(VerifyReport::Ledger row, const core::LedgerId &ledger, const std::function<void(const core::ReadEntry &)> &take)
    {
        core::DigestStream content;
        EntryReader reader([&](core::ReadEntry &&entry) {
            take(entry);
            addContent(content, entry.found.bytes, entry.found.hash, entry.found.signature);
            row.head = {entry.found.seq, entry.digest};
            ++row.entries;
            noteKnown(entry.digest);
            return goesOn() ? db::Walk::On : db::Walk::Stop;
        });
        const auto read = m_evidence.forEach(ledger, 0, [&reader](const db::StoredEntryView &found) { return reader.add(found); });
        reader.finish();
        if (m_stopped)
            return stopped();
        if (read && row.entries == 0)
            fault(ledger, 0, u"ledger.empty"_s, tr("A ledger stands there without one entry: what was in it is gone."));
        row.content = content.soFar();
        m_report.ledgers.push_back(std::move(row));
        return read;
    }

    core::Result<void> verifyRegister(core::RegisterVerifier &reg, const std::optional<core::LedgerId> &ledger)
    {
        if (!ledger) {
            fault(noLedger(), 0, u"register.none"_s, tr("There is no register, so nobody can be vouched for."));
            return {};
        }
        const auto read = readAll({ledger->text(), true, {}, 0, {}, {}}, *ledger, [&reg](const core::ReadEntry &entry) { reg.take(entry); });
        addFaults(reg.faults());
        addFaults(m_signatures.finish());
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
        VerifyReport::Ledger row{ledger->text(), false, {}, 0, {}, {}};
        const auto before = m_before ? m_before->find(*ledger) : std::nullopt;
        const auto isStillLinked = before ? linkedStand(before->linked) : core::Result<bool>(false);
        if (!isStillLinked)
            return core::failure(isStillLinked.error());
        if (before && *isStillLinked && vouchedBy(reg, before->reg)) {
            const auto compared = compare(*ledger, *before, row);
            if (!compared)
                return core::failure(compared.error());
            if (*compared == Compared::AllTheSame) {
                m_report.ledgers.push_back(std::move(row));
                return {};
            }
            if (*compared == Compared::GrewSince)
                row.takenFrom = before;
        }
        LinkedReader along([this](const core::LedgerId &of, qint64 after, const db::EntryVisitor &visit) { return m_evidence.forEach(of, after, visit); });
        core::JobVerifier job(*ledger, reg, toBeChecked(), [&along](const core::LinkedHead &at) { return along.upTo(at); });
        const qint64 verifiedUpTo = row.takenFrom ? row.takenFrom->seq : 0;
        row.entries = 0;
        const auto read = readAll(std::move(row), *ledger, [&](const core::ReadEntry &entry) {
            if (entry.found.seq <= verifiedUpTo)
                job.takeVerified(entry);
            else
                job.take(entry);
        });
        addFaults(job.faults());
        if (!read)
            return read;
        for (const auto &[linked, head] : job.linked())
            m_report.ledgers.back().linked.push_back({linked, head});
        for (const core::Digest &digest : job.attachments())
            m_named.push_back({*ledger, digest});
        return job.faults().empty() ? compareRemembered(*ledger, job.fold(), reg.reg(), along) : read;
    }

    /// The start page shows what is remembered of a job without reading its entries, so it must be what they say. Nobody is shown what names
    /// linked jobs that have moved since.
    core::Result<void> compareRemembered(const core::LedgerId &ledger, const core::JobFold &job, const core::Register &reg, LinkedReader &along)
    {
        const auto remembered = m_evidence.rememberedOf({ledger, job.head().hash, reg.head.hash});
        if (!remembered)
            return core::failure(remembered.error());
        if (!*remembered)
            return {};
        core::JobFold now = job;
        for (const core::LinkedHead &one : (*remembered)->linked) {
            if (one.head.seq != headSeqOf(one.ledger))
                return {};
            if (one.head.seq == 0)
                continue;
            auto other = along.upTo(one);
            if (!other)
                return {};
            now.see(one.ledger, one.head, std::move(other));
        }
        const auto &links = now.state().links;
        const bool isOfTheseLinks = std::equal(links.begin(), links.end(), (*remembered)->linked.begin(), (*remembered)->linked.end(), [](const core::Link &link, const core::LinkedHead &one) { return link.ledger == one.ledger; });
        if (!isOfTheseLinks || (*remembered)->summary != core::summaryOf(now.state(), reg))
            fault(ledger, job.head().seq, u"store.summary"_s, tr("What the store remembers of the job for the start page is not what its entries say: it was put in. Open the job to see what they say."));
        return {};
    }

    /// 0 for a ledger that is not there.
    qint64 headSeqOf(const core::LedgerId &ledger) const
    {
        const auto at = m_headSeqs.find(ledger);
        return at == m_headSeqs.end() ? 0 : at->second;
    }

    /// Whether the register still holds the entries that vouched for a ledger then.
    bool vouchedBy(const core::RegisterVerifier &reg, const core::Head &head) const
    {
        const auto at = static_cast<std::size_t>(head.seq);
        return m_isRegisterSound && head.seq >= 1 && at <= reg.entries().size() && reg.entries()[at - 1].head() == head;
    }

    /// Whether linked ledgers still have the entries that another one was judged by. What comes before these is chained to them, and looked at
    /// when those ledgers are verified themselves.
    core::Result<bool> linkedStand(const std::vector<core::LinkedHead> &linked)
    {
        for (const core::LinkedHead &one : linked) {
            bool isThere = false;
            const auto read = m_evidence.forEach(one.ledger, one.head.seq - 1, [&](const db::StoredEntryView &found) {
                isThere = found.seq == one.head.seq && core::Digest::of(found.bytes.toByteArray()) == one.head.hash;
                return db::Walk::Stop;
            });
            if (!read)
                return core::failure(read.error());
            if (!isThere)
                return false;
        }
        return true;
    }

    enum class Compared { AllTheSame, GrewSince, Changed };

    /// Compares a ledger with what was verified before, without parsing it. Fills `row` and notes its attachments when it is
    /// all the same.
    core::Result<Compared> compare(const core::LedgerId &ledger, const VerifiedUpTo &before, VerifyReport::Ledger &row)
    {
        core::DigestStream content;
        std::vector<core::Digest> named;
        std::vector<core::Digest> hashes;
        qint64 seq = 0;
        const auto read = m_evidence.forEach(ledger, 0, [&](const db::StoredEntryView &found) {
            seq = found.seq;
            if (seq > before.seq)
                return db::Walk::Stop;
            addContent(content, found.bytes, found.hash, found.signature);
            noteNames(found, named);
            if (const auto hash = core::Digest::fromBytes(found.hash)) {
                row.head = {seq, *hash};
                hashes.push_back(*hash);
            }
            ++row.entries;
            return db::Walk::On;
        });
        if (!read)
            return core::failure(read.error());
        row.content = content.soFar();
        if (row.content != before.content)
            return Compared::Changed;
        if (seq > before.seq)
            return Compared::GrewSince;
        for (const core::Digest &hash : hashes)
            noteKnown(hash);
        for (const core::Digest &digest : named)
            m_named.push_back({ledger, digest});
        row.takenFrom = before;
        row.linked = before.linked;
        m_done += row.entries;
        m_stopped = m_progress && !m_progress(m_done, m_all);
        if (m_stopped)
            return stopped();
        return Compared::AllTheSame;
    }

    /// The attachment that an entry names, told by its bytes: they are parsed only when they can name one.
    static void noteNames(const db::StoredEntryView &found, std::vector<core::Digest> &named)
    {
        if (!found.bytes.contains("\"sha256\":"))
            return;
        const auto said = core::parseStatement(found.bytes);
        if (const auto digest = said ? core::Digest::parse(said->body.text(u"sha256")) : std::nullopt)
            named.push_back(*digest);
    }

    core::Result<void> verifyAttachments()
    {
        QSet<core::Digest> sound;
        const auto read = m_evidence.forEachAttachment([&](const core::Digest &name, const std::optional<QString> &damage) {
            ++m_report.attachments;
            if (damage)
                fault(noLedger(), 0, u"attachment.digest"_s, *damage);
            else
                sound.insert(name);
        });
        if (!read)
            return read;
        for (const auto &[ledger, digest] : m_named) {
            if (!sound.contains(digest))
                fault(ledger, seqNaming(ledger, digest), u"attachment.missing"_s, tr("It names the attachment %1, which is not there as it was.").arg(digest.hex()));
        }
        return {};
    }

    /// The entry that names an attachment.
    qint64 seqNaming(const core::LedgerId &ledger, const core::Digest &digest)
    {
        qint64 seq = 0;
        const QByteArray hex = digest.hex().toLatin1();
        const auto read = m_evidence.forEach(ledger, 0, [&](const db::StoredEntryView &found) {
            seq = found.seq;
            return found.bytes.contains(hex) ? db::Walk::Stop : db::Walk::On;
        });
        return read ? seq : 0;
    }

    void compareWithKnown(const core::LedgerId &reg)
    {
        if (m_known.rootFingerprint && m_known.rootFingerprint != m_report.rootFingerprint)
            fault(reg, 1, u"register.root"_s, tr("The root fingerprint is not the one that was given: this hangs from another root."));
        for (const core::Digest &hash : m_known.entries) {
            if (!m_met.contains(hash))
                fault(noLedger(), 0, u"ledger.missing"_s, tr("No entry has the hash %1: it was changed or removed, perhaps with all that followed it.").arg(hash.hex()));
        }
    }

    Evidence &m_evidence;
    const Known &m_known;
    const VerifyProgress &m_progress;
    const VerifiedBefore *m_before;
    qint64 m_done = 0;
    qint64 m_all = 0;
    std::map<core::LedgerId, qint64> m_headSeqs;
    bool m_stopped = false;
    bool m_isRegisterSound = false;
    VerifyReport m_report;
    SignatureChecks m_signatures;
    QSet<core::Digest> m_met; ///< of the hashes that are known from elsewhere
    std::vector<std::pair<core::LedgerId, core::Digest>> m_named;
};

template <class Count>
qint64 sumOf(const VerifyReport &report, Count count)
{
    return std::accumulate(report.ledgers.begin(), report.ledgers.end(), qint64{0}, [&](qint64 sum, const VerifyReport::Ledger &ledger) { return sum + count(ledger); });
}

} // namespace

qint64 VerifyReport::entries() const
{
    return sumOf(*this, [](const Ledger &ledger) { return ledger.entries; });
}

qint64 VerifyReport::entriesTakenFromBefore() const
{
    return sumOf(*this, [](const Ledger &ledger) { return ledger.takenFrom ? ledger.takenFrom->seq : 0; });
}

core::Result<VerifyReport> verify(Evidence &evidence, const Known &known, const VerifyProgress &progress, const VerifiedBefore *before)
{
    return Verification(evidence, known, progress, before).run();
}

core::Result<VerifyReport> verifyStore(db::Store &store, const Known &known, const VerifyProgress &progress, const VerifiedBefore *before)
{
    StoreEvidence evidence(store);
    return verify(evidence, known, progress, before);
}

void remember(VerifiedBefore &before, const VerifyReport &report, const core::Instant &now)
{
    const auto reg = std::find_if(report.ledgers.begin(), report.ledgers.end(), [](const auto &ledger) { return ledger.isRegister; });
    if (!report.faults.empty() || reg == report.ledgers.end())
        return;
    for (const VerifyReport::Ledger &ledger : report.ledgers) {
        const auto id = core::LedgerId::parse(ledger.name);
        if (id && !ledger.isRegister)
            before.set(*id, {ledger.entries, ledger.content, reg->head, ledger.takenFrom && ledger.takenFrom->seq == ledger.entries ? ledger.takenFrom->at : now, ledger.linked});
    }
}

} // namespace session
