// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/verify.hpp"

#include <QCoreApplication>

#include "core/acts/act.hpp"
#include "core/job/admit.hpp"
#include "core/job/linked.hpp"
#include "core/ledger/canonical.hpp"
#include "core/ledger/seal.hpp"

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Verify", text); }

/// Collects faults of one entry.
class Report {
public:
    Report(const LedgerId &ledger, qint64 seq, std::vector<Fault> &faults) : m_ledger(ledger), m_seq(seq), m_faults(faults) {}
    void add(const QString &rule, const QString &sentence) { m_faults.push_back({m_ledger, m_seq, rule, sentence}); }
    /// `sentence` is made where it is wanted alone: of nearly every entry all is good.
    template <class Sentence>
    void unless(bool good, const char *rule, Sentence sentence)
    {
        if (!good)
            add(QString::fromLatin1(rule), sentence());
    }
    void addRefusals(const Refusals &refusals)
    {
        for (const Refusal &refusal : refusals)
            add(refusal.rule, tr("It would not have been admitted: %1").arg(refusal.sentence));
    }

private:
    LedgerId m_ledger;
    qint64 m_seq;
    std::vector<Fault> &m_faults;
};

/// What must hold of an entry whatever it says: its digest, its place in the chain, its ledger.
void checkPlace(Report &report, const Statement &said, const FoundEntry &found, const Digest &hash, const LedgerId &ledger, const Head &head)
{
    report.unless(found.hash == hash.bytes(), "ledger.hash", [&] { return tr("The digest stored beside it does not match its bytes: one of the two was changed."); });
    report.unless(said.ledger == ledger, "ledger.name", [&] { return tr("It belongs to the ledger %1.").arg(said.ledger.text()); });
    report.unless(said.seq == found.seq, "ledger.sequence", [&] { return tr("It stands at place %1 and says that it is number %2.").arg(found.seq).arg(said.seq); });
    report.unless(found.seq == head.seq + 1, "ledger.gap", [&] { return tr("The entry before it has number %1: entries are missing, or out of order.").arg(head.seq); });
    report.unless(said.prev == head.hash, "ledger.chain", [&] { return tr("It does not name the entry before it: that one was changed, removed or put in."); });
}

void checkMeaning(Report &report, const Statement &said)
{
    const Act *act = findAct(said.kind);
    report.unless(act && act->meaning == said.meaning, "ledger.meaning", [&] { return tr("The meaning \"%1\" does not belong to %2.").arg(said.meaning, said.kind); });
}

/// Checks that the author's key is the one that the entry names, and leaves the signature to `claims`.
void checkKey(Report &report, const Statement &said, const FoundEntry &found, const LedgerId &ledger, const PublicKey *key, const TakeClaim &claims)
{
    if (!key || key->fingerprint() != said.key) {
        report.add(QStringLiteral("ledger.key"), tr("The key it names is not the one that the register held for %1 at that moment.").arg(said.author.text()));
        return;
    }
    claims({ledger, found.seq, said.author, *key, found.bytes, found.signature});
}

TakeClaim atOnce(std::vector<Fault> &faults)
{
    return [&faults](SignatureClaim &&claim) {
        if (auto fault = faultOf(claim))
            faults.push_back(*std::move(fault));
    };
}

void reportUnreadable(Report &report, const Error &error)
{
    report.add(QStringLiteral("ledger.form"), error.message);
}

} // namespace

ReadEntry readEntry(FoundEntry found)
{
    json::ObjectReader objects;
    return readEntry(std::move(found), objects);
}

ReadEntry readEntry(FoundEntry found, json::ObjectReader &objects)
{
    const Digest digest = Digest::of(found.bytes);
    auto said = parseStatement(found.bytes, objects);
    return {std::move(found), digest, std::move(said)};
}

std::optional<Fault> faultOf(const SignatureClaim &claim)
{
    if (isSignedBy(claim.key, claim.bytes, claim.signature))
        return std::nullopt;
    return Fault{claim.ledger, claim.seq, QStringLiteral("ledger.signature"), tr("Its signature is not %1's over these bytes.").arg(claim.author.text())};
}

RegisterVerifier::RegisterVerifier(LedgerId ledger, TakeClaim claims) : m_ledger(std::move(ledger)), m_claims(std::move(claims)) {}

void RegisterVerifier::take(const ReadEntry &entry)
{
    const auto &[found, hash, said] = entry;
    Report report(m_ledger, found.seq, m_faults);
    if (!said) {
        reportUnreadable(report, said.error());
        // The next entry is judged against what is there, so that one damaged entry is not reported as two.
        m_register.head = {found.seq, hash};
        return;
    }
    checkPlace(report, *said, found, hash, m_ledger, m_register.head);
    checkMeaning(report, *said);
    report.unless(!said->reg && said->linked.empty(), "ledger.pin", [&] { return tr("The register's own entries pin nothing."); });
    const Person *author = m_register.person(said->author);
    const auto foundersKey = PublicKey::parse(said->body.text(u"public_key"));
    const bool founds = !m_register.root && said->kind == u"register.founded";
    const PublicKey *key = author ? &author->key : founds && foundersKey ? &*foundersKey : nullptr;
    checkKey(report, *said, found, m_ledger, key, m_claims ? m_claims : atOnce(m_faults));
    report.addRefusals(admit(m_register, draftOf(*said)));
    fold(m_register, *said, hash);
    m_register.head.seq = found.seq;
    m_entries.push_back({*said, found.bytes, hash, found.signature});
}

void JobVerifier::advanceRegister(const Statement &said)
{
    const auto &entries = m_registerLedger->entries();
    while (m_registerAt < entries.size() && said.reg && entries[m_registerAt].said.seq <= said.reg->seq) {
        const Entry &entry = entries[m_registerAt++];
        core::fold(m_register, entry.said, entry.hash);
    }
}

/// A register's entry is signed after all that the jobs hold. So an entry of a job that is later, and does not know of it, was signed
/// in another copy of the store: by somebody who was withdrawn here, perhaps.
const Entry *JobVerifier::unseenBy(const Statement &said) const
{
    const auto &entries = m_registerLedger->entries();
    const bool isUnseen = m_registerAt < entries.size() && said.at > entries[m_registerAt].said.at;
    return isUnseen ? &entries[m_registerAt] : nullptr;
}

JobVerifier::JobVerifier(LedgerId ledger, const RegisterVerifier &reg, TakeClaim claims, SeeLinked linked)
    : m_ledger(std::move(ledger)), m_registerLedger(&reg), m_claims(std::move(claims)), m_seeLinked(std::move(linked))
{
}

/// Every entry pins the jobs that it rests on, all of them and no other, so that nobody can leave out the one that they would be refused by.
template <class TheReport>
void JobVerifier::lookAtLinked(TheReport &report, const Statement &said)
{
    std::set<LedgerId> pinned;
    for (const LinkedHead &one : said.linked) {
        pinned.insert(one.ledger);
        const auto before = m_linked.find(one.ledger);
        if (before != m_linked.end() && one.head.seq < before->second.seq) {
            report.add(QStringLiteral("ledger.linked-pin"), tr("It pins entry %1 of the linked ledger %2; an entry before it pinned entry %3.").arg(one.head.seq).arg(one.ledger.text()).arg(before->second.seq));
            continue;
        }
        m_linked.insert_or_assign(one.ledger, one.head);
        if (auto other = m_seeLinked ? m_seeLinked(one) : nullptr)
            m_fold.see(one.ledger, one.head, std::move(other));
        else
            report.add(QStringLiteral("ledger.linked-pin"), tr("Entry %1 of the linked ledger %2, which it pins, is not in that ledger.").arg(one.head.seq).arg(one.ledger.text()));
    }
    report.unless(pinned == ledgersPinnedBy(m_fold.state(), said.kind, said.body), "ledger.linked", [&] { return tr("It does not pin exactly the jobs that this one is linked with."); });
}

void JobVerifier::notePins(const Statement &said)
{
    for (const LinkedHead &one : said.linked)
        m_linked.insert_or_assign(one.ledger, one.head);
}

void JobVerifier::takeIn(const Statement &said, const Digest &digest, qint64 seq)
{
    m_fold.take(said, digest);
    m_head = {seq, digest};
    if (const auto attachment = Digest::parse(said.body.text(u"sha256")))
        m_attachments.push_back(*attachment);
}

void JobVerifier::takeVerified(const ReadEntry &entry)
{
    Q_ASSERT(entry.said); // the same bytes were read when they were verified
    advanceRegister(*entry.said);
    notePins(*entry.said); // each later entry pins all of them again, and is shown them then
    takeIn(*entry.said, entry.digest, entry.found.seq);
}

void JobVerifier::take(const ReadEntry &entry)
{
    const auto &[found, hash, said] = entry;
    Report report(m_ledger, found.seq, m_faults);
    if (!said) {
        reportUnreadable(report, said.error());
        m_head = {found.seq, hash};
        return;
    }
    checkPlace(report, *said, found, hash, m_ledger, m_head);
    checkMeaning(report, *said);
    advanceRegister(*said);
    report.unless(said->reg && *said->reg == m_register.head, "ledger.pin", [&] { return tr("The register entry that it pins is not in the register, or an earlier entry pinned a later one."); });
    if (const Entry *unseen = unseenBy(*said))
        report.add(QStringLiteral("ledger.unseen"), tr("It was signed at %1 without knowing of entry %2 of the register, of %3: it comes from another copy of the store, or from a clock that was wrong.").arg(said->at.spoken()).arg(unseen->said.seq).arg(unseen->said.at.spoken()));
    lookAtLinked(report, *said);
    const Person *author = m_register.person(said->author);
    checkKey(report, *said, found, m_ledger, author ? &author->key : nullptr, m_claims ? m_claims : atOnce(m_faults));
    report.addRefusals(admit(m_fold.state(), m_register, draftOf(*said)));
    takeIn(*said, hash, found.seq);
}

} // namespace core
