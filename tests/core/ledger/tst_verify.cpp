// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/acts/act.hpp"
#include "core/ledger/canonical.hpp"
#include "core/ledger/seal.hpp"
#include "core/ledger/verify.hpp"
#include "tests/support/story.hpp"
#include "tests/support/world.hpp"

using namespace Qt::StringLiterals;

namespace {

core::SigningKey keyOf(const QString &person)
{
    return *core::SigningKey::fromSeed(core::Digest::of(person.toUtf8()).bytes());
}

const core::LedgerId registerLedger = *core::LedgerId::parse(u"00000000-0000-4000-8000-000000000001");
const core::LedgerId jobLedger = *core::LedgerId::parse(u"00000000-0000-4000-8000-000000000002");

core::FoundEntry found(const core::Entry &entry) { return {entry.said.seq, entry.bytes, entry.hash.bytes(), entry.signature}; }

/// Writes honest ledgers, and dishonest ones with the honest tools: whoever holds a key can seal what they like.
class Writer {
public:
    std::vector<core::Entry> reg;
    std::vector<core::Entry> job;

    core::Entry sealed(const core::Draft &draft, const core::SigningKey &key, const std::vector<core::Entry> &ledger, const core::LedgerId &id) const
    {
        const bool inRegister = id == registerLedger;
        const core::Act *act = core::findAct(draft.kind);
        const core::Statement said{id, static_cast<qint64>(ledger.size()) + 1, draft.at, draft.author, key.publicKey().fingerprint(), act->meaning, draft.kind, draft.subject, draft.body,
                                   inRegister ? std::nullopt : std::optional(reg.back().head()), ledger.empty() ? core::Digest() : ledger.back().hash};
        return *core::seal(said, key);
    }
    void addToRegister(const core::Draft &draft) { reg.push_back(sealed(draft, keyOf(draft.author.text()), reg, registerLedger)); }
    void addToJob(const core::Draft &draft) { job.push_back(sealed(draft, keyOf(draft.author.text()), job, jobLedger)); }
};

core::Draft registerDraft(const QString &kind, const QString &subject, const core::json::Object &body)
{
    return {*core::PersonId::parse(u"Root"), story::opening(), kind, subject, body};
}

Writer honest()
{
    Writer writer;
    const auto key = [](const QString &id) { return keyOf(id).publicKey().hex(); };
    writer.addToRegister(registerDraft(u"register.founded"_s, u"Root"_s, {{u"name"_s, u"Root"_s}, {u"public_key"_s, key(u"Root"_s)}, {u"organisation"_s, u"Line station"_s}}));
    for (const QString &id : {u"Ana"_s, u"Ben"_s, u"Dee"_s, u"Cho"_s})
        writer.addToRegister(registerDraft(u"person.enrolled"_s, id, {{u"name"_s, id}, {u"public_key"_s, key(id)}, {u"identity"_s, u"pass"_s}}));
    const auto grant = [&](const QString &who, const QString &authority) {
        writer.addToRegister(registerDraft(u"authorisation.granted"_s, who + u'-' + authority, {{u"person"_s, who}, {u"authority"_s, authority}, {u"from"_s, u"2026-01-01"_s}, {u"reference"_s, u"Q"_s}}));
    };
    grant(u"Ana"_s, u"work"_s);
    grant(u"Ana"_s, u"lead"_s);
    grant(u"Ben"_s, u"work"_s);
    grant(u"Cho"_s, u"inspect"_s);
    writer.addToJob({*core::PersonId::parse(u"Ana"), story::opening(), u"job.opened"_s, std::nullopt, story::openingDrafts().front().body});
    const auto say = [&](const char *who, const char *kind, const core::json::Object &body) {
        writer.addToJob({*core::PersonId::parse(QString::fromLatin1(who)), core::Instant::fromMilliseconds(story::opening().milliseconds() + static_cast<qint64>(writer.job.size())), QString::fromLatin1(kind), u"K1"_s, body});
    };
    say("Ana", "interface.listed", {{u"name"_s, u"Clamp"_s}, {u"kind"_s, u"clamp"_s}, {u"zone"_s, u"left"_s}});
    say("Ana", "interface.disconnected", {{u"tag"_s, u"1"_s}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}});
    say("Ben", "interface.reconnected", {{u"tag_recovered"_s, u"1"_s}, {u"blanks_removed"_s, 0}});
    say("Cho", "inspection.accepted", {});
    return writer;
}

/// `seq rule` of each fault of the job, joined by `; `; the register's are prefixed with `register`.
QString faultsOf(const std::vector<core::FoundEntry> &reg, const std::vector<core::FoundEntry> &job)
{
    core::RegisterVerifier registerVerifier(registerLedger);
    for (const core::FoundEntry &entry : reg)
        registerVerifier.take(entry);
    core::JobVerifier jobVerifier(jobLedger, registerVerifier);
    for (const core::FoundEntry &entry : job)
        jobVerifier.take(entry);
    QStringList lines;
    for (const core::Fault &fault : registerVerifier.faults())
        lines << u"register %1 %2"_s.arg(fault.seq).arg(fault.rule);
    for (const core::Fault &fault : jobVerifier.faults())
        lines << u"%1 %2"_s.arg(fault.seq).arg(fault.rule);
    return lines.join(u"; "_s);
}

std::vector<core::FoundEntry> foundAll(const std::vector<core::Entry> &entries)
{
    std::vector<core::FoundEntry> all;
    for (const core::Entry &entry : entries)
        all.push_back(found(entry));
    return all;
}

QByteArray withByteFlipped(QByteArray bytes, qsizetype at)
{
    bytes[at] = static_cast<char>(bytes[at] ^ 1);
    return bytes;
}

} // namespace

class TestVerify : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { QVERIFY(core::readyCryptography()); }

    void anHonestLedgerHasNoFault()
    {
        const Writer writer = honest();
        QCOMPARE(faultsOf(foundAll(writer.reg), foundAll(writer.job)), QString());
    }

    void anyByteOfAnyColumn()
    {
        const Writer writer = honest();
        const auto reg = foundAll(writer.reg);
        const auto job = foundAll(writer.job);
        const std::size_t at = 2;
        for (qsizetype byte = 0; byte < job[at].bytes.size(); ++byte) {
            auto altered = job;
            altered[at].bytes = withByteFlipped(altered[at].bytes, byte);
            QVERIFY2(faultsOf(reg, altered).startsWith(u"3 "), qPrintable(QString::number(byte)));
        }
        for (qsizetype byte = 0; byte < 32; ++byte) {
            auto altered = job;
            altered[at].hash = withByteFlipped(altered[at].hash, byte);
            QCOMPARE(faultsOf(reg, altered), u"3 ledger.hash"_s);
        }
        for (qsizetype byte = 0; byte < 64; ++byte) {
            auto altered = job;
            altered[at].signature = withByteFlipped(altered[at].signature, byte);
            QCOMPARE(faultsOf(reg, altered), u"3 ledger.signature"_s);
        }
        auto moved = job;
        moved[at].seq = 7;
        QVERIFY(faultsOf(reg, moved).startsWith(u"7 ledger.sequence"));
    }

    void removedAndSwapped()
    {
        const Writer writer = honest();
        const auto reg = foundAll(writer.reg);
        auto removed = foundAll(writer.job);
        removed.erase(removed.begin() + 2);
        QVERIFY(faultsOf(reg, removed).startsWith(u"4 ledger.gap; 4 ledger.chain"));
        auto swapped = foundAll(writer.job);
        std::swap(swapped[2], swapped[3]);
        QVERIFY(faultsOf(reg, swapped).startsWith(u"4 ledger.gap; 4 ledger.chain"));
        auto renumbered = foundAll(writer.job);
        std::swap(renumbered[2], renumbered[3]);
        std::swap(renumbered[2].seq, renumbered[3].seq);
        QVERIFY(faultsOf(reg, renumbered).startsWith(u"3 ledger.sequence; 3 ledger.chain"));
    }

    void signedByAnotherEnrolledPerson()
    {
        Writer writer = honest();
        const core::Entry &last = writer.job.back();
        // Ben's true signature under Cho's name, with Cho's key named.
        core::FoundEntry forged = found(last);
        forged.signature = *keyOf(u"Ben"_s).sign(last.bytes);
        auto job = foundAll(writer.job);
        job.back() = forged;
        QCOMPARE(faultsOf(foundAll(writer.reg), job), u"5 ledger.signature"_s);
        // The same with Ben's key named.
        core::Statement said = last.said;
        said.key = keyOf(u"Ben"_s).publicKey().fingerprint();
        job.back() = found(*core::seal(said, keyOf(u"Ben"_s)));
        QCOMPARE(faultsOf(foundAll(writer.reg), job), u"5 ledger.key"_s);
    }

    /// Signed well, chained well, and not allowed.
    void trueSignaturesOfForbiddenActs()
    {
        Writer writer = honest();
        writer.job.pop_back();
        const core::Draft ownWork{*core::PersonId::parse(u"Ben"), core::Instant::fromMilliseconds(story::opening().milliseconds() + 10), u"inspection.accepted"_s, u"K1"_s, {}};
        writer.addToJob(ownWork);
        QCOMPARE(faultsOf(foundAll(writer.reg), foundAll(writer.job)), u"5 inspection.authorised; 5 independence.own-work"_s);

        Writer backDated = honest();
        backDated.job.pop_back();
        backDated.addToJob({*core::PersonId::parse(u"Cho"), core::Instant::fromMilliseconds(story::opening().milliseconds() - 1), u"inspection.accepted"_s, u"K1"_s, {}});
        QCOMPARE(faultsOf(foundAll(backDated.reg), foundAll(backDated.job)), u"5 ledger.clock"_s);
    }

    void aWithdrawnInspectorPinningAnEarlierRegister()
    {
        Writer writer = honest();
        writer.job.pop_back();
        const auto before = writer.reg;
        core::Draft withdrawal = registerDraft(u"authorisation.withdrawn"_s, u"Cho-inspect"_s, {{u"reason"_s, u"left"_s}});
        withdrawal.at = core::Instant::fromMilliseconds(story::opening().milliseconds() + 9);
        writer.addToRegister(withdrawal);
        // An entry by Ana pins the newer head; Cho then pins the older one.
        writer.addToJob({*core::PersonId::parse(u"Ana"), core::Instant::fromMilliseconds(story::opening().milliseconds() + 10), u"photo.attached"_s, u"K1"_s,
                         {{u"sha256"_s, core::Digest::of("p").hex()}, {u"media_type"_s, u"image/png"_s}, {u"moment"_s, u"after"_s}}});
        Writer cheat = writer;
        cheat.reg = before;
        cheat.addToJob({*core::PersonId::parse(u"Cho"), core::Instant::fromMilliseconds(story::opening().milliseconds() + 20), u"inspection.accepted"_s, u"K1"_s, {}});
        QCOMPARE(faultsOf(foundAll(writer.reg), foundAll(cheat.job)), u"6 ledger.pin; 6 inspection.authorised"_s);
    }

    /// She signs in a copy that does not know of it; the row is put into the original afterwards.
    void aWithdrawnInspectorInAnOldCopy()
    {
        Writer writer = honest();
        const auto inspection = writer.job.back().said.at.milliseconds();
        const auto withdrawnAt = [&](qint64 moment) {
            Writer later = writer;
            core::Draft withdrawal = registerDraft(u"authorisation.withdrawn"_s, u"Cho-inspect"_s, {{u"reason"_s, u"left"_s}});
            withdrawal.at = core::Instant::fromMilliseconds(moment);
            later.addToRegister(withdrawal);
            return faultsOf(foundAll(later.reg), foundAll(later.job));
        };
        QCOMPARE(withdrawnAt(inspection + 1), QString());
        QCOMPARE(withdrawnAt(inspection), QString()); // the same millisecond: the inspection may have come first
        QCOMPARE(withdrawnAt(inspection - 1), u"5 ledger.unseen"_s);
    }

    void aForgedRegister()
    {
        const Writer writer = honest();
        auto reg = foundAll(writer.reg);
        // Root's name over a key of the forger's: the first entry signs itself, so only a pinned fingerprint tells; but no job
        // that pins the true register fits it.
        core::Statement said = writer.reg.front().said;
        const auto forger = *core::SigningKey::generate();
        said.key = forger.publicKey().fingerprint();
        said.body.set(u"public_key"_s, forger.publicKey().hex());
        reg.front() = found(*core::seal(said, forger));
        const QString faults = faultsOf(reg, foundAll(writer.job));
        QVERIFY(faults.contains(u"register 2 ledger.chain"));
        QVERIFY(faults.contains(u"register 2 ledger.key"));
    }

    void aJobOfAnotherLedger()
    {
        const Writer writer = honest();
        core::RegisterVerifier reg(registerLedger);
        for (const core::Entry &entry : writer.reg)
            reg.take(found(entry));
        core::JobVerifier other(*core::LedgerId::parse(u"another"), reg);
        other.take(found(writer.job.front()));
        QCOMPARE(other.faults().front().rule, u"ledger.name"_s);
    }

    void garbage()
    {
        const Writer writer = honest();
        auto job = foundAll(writer.job);
        job[1].bytes = "not an entry";
        const QString faults = faultsOf(foundAll(writer.reg), job);
        QVERIFY(faults.startsWith(u"2 ledger.form; 3 ledger.chain"));
        auto reg = foundAll(writer.reg);
        reg[1].bytes = "not an entry";
        const QString all = faultsOf(reg, foundAll(writer.job));
        QVERIFY2(all.startsWith(u"register 2 ledger.form; register 3 ledger.chain; "), qPrintable(all));
        QVERIFY(all.contains(u"; 1 ledger.key")); // Ana's enrolment is what was lost
    }

    /// A register that begins with anything but its founding, or whose founder brings no key, hangs from nothing.
    void aRegisterWithoutItsFounding()
    {
        const Writer writer = honest();
        core::Statement said = writer.reg[1].said;
        said.seq = 1;
        said.prev = {};
        QVERIFY(faultsOf({found(*core::seal(said, keyOf(u"Root"_s)))}, {}).startsWith(u"register 1 ledger.key"));
        said = writer.reg[0].said;
        said.body.remove(u"public_key");
        QVERIFY(faultsOf({found(*core::seal(said, keyOf(u"Root"_s)))}, {}).startsWith(u"register 1 ledger.key"));
        said = writer.reg[0].said;
        said.reg = core::Head{1, {}};
        QCOMPARE(faultsOf({found(*core::seal(said, keyOf(u"Root"_s)))}, {}), u"register 1 ledger.pin"_s);
        said = writer.job[0].said;
        said.reg.reset();
        QVERIFY(faultsOf(foundAll(writer.reg), {found(*core::seal(said, keyOf(u"Ana"_s)))}).startsWith(u"1 ledger.pin; 1 ledger.key"));
        said = writer.job[1].said;
        said.kind = u"interface.polished"_s;
        QVERIFY(faultsOf(foundAll(writer.reg), {found(writer.job[0]), found(*core::seal(said, keyOf(u"Ana"_s)))}).startsWith(u"2 ledger.meaning"));
    }
};

QTEST_GUILESS_MAIN(TestVerify)
#include "tst_verify.moc"
