// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include <algorithm>
#include <chrono>
#include <future>
#include <span>

#include "app/session/ahead.hpp"
#include "app/session/session.hpp"
#include "core/acts/act.hpp"

namespace session {

namespace {

/// Computers on one store never agree to the millisecond. So little is made up; a clock that is further behind is refused
/// by the rule, in words.
constexpr std::chrono::milliseconds clockSlack = std::chrono::seconds(2);

/// How often others may come first before we say so. With the queue of writers once is rare.
constexpr int mostTries = 8;

QString tr(const char *text) { return QCoreApplication::translate("Session", text); }

tl::unexpected<NotSigned> notSigned(const core::Error &error) { return tl::unexpected(NotSigned{error, {}}); }

tl::unexpected<NotSigned> notSigned(core::ErrorCode code, const QString &message) { return notSigned({code, message}); }

core::Error openForReadingOnly() { return {core::ErrorCode::ReadOnly, tr("The store is open for reading only. Nothing was signed.")}; }

Changes changesBy(const core::LedgerId &ledger, const std::vector<core::Entry> &entries)
{
    const bool isRegister = !entries.front().said.reg;
    return isRegister ? Changes{true, {}} : Changes{false, {ledger}};
}

tl::unexpected<NotSigned> refused(std::vector<std::pair<std::size_t, core::Refusals>> refusals)
{
    const QString first = refusals.front().second.front().sentence;
    return tl::unexpected(NotSigned{{core::ErrorCode::Refused, tr("Nothing was signed. %1").arg(first)}, std::move(refusals)});
}

core::Instant signingMoment(core::Instant now, const std::optional<core::Instant> &last)
{
    if (last && now < *last && last->milliseconds() - now.milliseconds() <= clockSlack.count())
        return *last;
    return now;
}

core::Digest keyOf(const core::Register &reg, const core::Draft &draft, const core::SigningKey &key)
{
    // Only the founder signs before anybody is enrolled. For everybody else the register names the key, and sealing
    // refuses another one.
    const core::Person *author = reg.person(draft.author);
    return author ? author->key.fingerprint() : key.publicKey().fingerprint();
}

core::Result<void> signEach(std::span<core::Entry> entries, const core::SigningKey &key)
{
    for (core::Entry &entry : entries) {
        if (auto done = core::sign(entry, key); !done)
            return done;
    }
    return {};
}

/// A signature takes longer than all the rest of an entry, so many are made on two cores.
core::Result<void> signAll(std::span<core::Entry> entries, const core::SigningKey &key)
{
    constexpr std::size_t worthAThread = 8;
    if (entries.size() < worthAThread)
        return signEach(entries, key);
    const std::size_t half = entries.size() / 2;
    auto others = std::async(std::launch::async | std::launch::deferred, [&] { return signEach(entries.subspan(half), key); });
    const auto ours = signEach(entries.first(half), key);
    const auto theirs = others.get();
    return ours ? theirs : ours;
}

/// Admits the drafts one after the other and, given a key, seals them. Every draft is asked, also after a refused one, so
/// that all that is wrong is told at once.
template <class Ahead>
tl::expected<std::vector<core::Entry>, NotSigned> sealOn(Ahead ahead, const core::LedgerId &ledger, const std::vector<core::Draft> &drafts,
                                                         core::Instant now, const core::SigningKey *key)
{
    std::vector<core::Entry> entries;
    std::vector<std::pair<std::size_t, core::Refusals>> refusals;
    const core::Instant at = signingMoment(now, ahead.lastAt());
    for (std::size_t index = 0; index < drafts.size(); ++index) {
        core::Draft draft = drafts[index];
        draft.at = at;
        if (auto no = ahead.ask(draft); !no.empty()) {
            refusals.emplace_back(index, std::move(no));
            continue;
        }
        const core::Statement said = statementOf(ahead, ledger, draft, key ? keyOf(ahead.reg(), draft, *key) : core::Digest());
        core::Digest hash;
        if (key) {
            entries.push_back(core::writtenOut(said));
            hash = entries.back().hash;
        }
        if (index + 1 < drafts.size())
            ahead.take(said, hash);
    }
    if (!refusals.empty())
        return refused(std::move(refusals));
    if (const auto done = key ? signAll(entries, *key) : core::Result<void>(); !done)
        return notSigned(done.error());
    return entries;
}

bool isForRegister(const core::Register &reg, const core::LedgerId &ledger, const core::Draft &first)
{
    if (reg.ledger)
        return *reg.ledger == ledger;
    const core::Act *act = core::findAct(first.kind);
    return act && act->ledger == core::LedgerSort::Register;
}

std::optional<core::Error> faultOf(const std::vector<core::Draft> &drafts)
{
    if (drafts.empty())
        return core::Error{core::ErrorCode::BadInput, tr("There is nothing to sign.")};
    const auto isByAnother = [&](const core::Draft &draft) { return draft.author != drafts.front().author; };
    if (std::any_of(drafts.begin(), drafts.end(), isByAnother))
        return core::Error{core::ErrorCode::BadInput, tr("One signature is one person's. Sign each person's entries apart.")};
    return std::nullopt;
}

std::vector<core::Digest> attachmentsNamedIn(const std::vector<core::Draft> &drafts)
{
    std::vector<core::Digest> named;
    for (const core::Draft &draft : drafts) {
        const core::Act *act = core::findAct(draft.kind);
        for (const core::Field &field : act ? act->fields : std::vector<core::Field>()) {
            const auto digest = field.type == core::FieldType::Digest ? core::Digest::parse(draft.body.text(QString(field.name))) : std::nullopt;
            if (digest)
                named.push_back(*digest);
        }
    }
    return named;
}

} // namespace

/// An attachment is kept before it is named: an entry that names what nobody holds could never be proved.
std::optional<core::Error> Session::missingAttachment(const std::vector<core::Draft> &drafts) const
{
    for (const core::Digest &named : attachmentsNamedIn(drafts)) {
        const auto isKept = m_store.attachments().exists(named);
        if (!isKept)
            return isKept.error();
        if (!*isKept)
            return core::Error{core::ErrorCode::NotFound, tr("The store does not hold the attachment %1. Attach the file itself, in the window. Nothing was signed.").arg(named.hex())};
    }
    return std::nullopt;
}

/// What stands in the way of any signature under these drafts, whoever gives it.
std::optional<core::Error> Session::whyNotNow(const std::vector<core::Draft> &drafts)
{
    if (const auto fault = faultOf(drafts))
        return fault;
    if (m_store.access() == db::Access::ReadOnly)
        return openForReadingOnly();
    return missingAttachment(drafts);
}

/// Brings the folds up to now, and the ledger among them when it is there already.
core::Result<void> Session::catchUp(const core::LedgerId &ledger)
{
    const auto changes = m_folds.refresh();
    if (!changes)
        return core::failure(changes.error());
    m_unseen.add(*changes);
    const auto followed = m_folds.follow(ledger);
    const bool isNew = !followed && followed.error().code == core::ErrorCode::NotFound; // the register, or a job to begin
    if (!followed && !isNew)
        return followed;
    const auto damage = m_folds.trouble(ledger);
    return damage ? core::Result<void>(core::failure(*damage)) : core::Result<void>();
}

tl::expected<Session::Sealed, NotSigned> Session::sealAll(const core::LedgerId &ledger, const std::vector<core::Draft> &drafts,
                                                          const core::SigningKey *key) const
{
    const core::JobFold fresh; // of a job that begins now
    const core::JobFold *known = m_folds.job(ledger);
    const core::JobFold *job = known ? known : &fresh;
    std::optional<core::JobFold> seeing;
    if (std::any_of(drafts.begin(), drafts.end(), [](const core::Draft &draft) { return draft.kind == u"job.linked"; })) {
        seeing = *job;
        for (const core::Draft &draft : drafts)
            showNamed(*seeing, draft);
        job = &*seeing;
    }
    const bool isRegister = isForRegister(reg(), ledger, drafts.front());
    const auto jobsLastAt = isRegister ? m_store.jobsLastAt() : core::Result<std::optional<core::Instant>>();
    if (!jobsLastAt)
        return notSigned(jobsLastAt.error());
    auto entries = isRegister ? sealOn(RegisterAhead(reg(), *jobsLastAt), ledger, drafts, m_clock(), key)
                              : sealOn(JobAhead(reg(), *job), ledger, drafts, m_clock(), key);
    if (!entries)
        return tl::unexpected(entries.error());
    return Sealed{std::move(*entries), isRegister ? reg().head : job->head()};
}

Signed Session::sealAndAppend(const core::LedgerId &ledger, const std::vector<core::Draft> &drafts, const core::SigningKey &key)
{
    for (int tries = 0; tries < mostTries; ++tries) {
        const auto turn = m_store.takeTurn();
        if (!turn)
            return notSigned(turn.error());
        if (const auto fresh = catchUp(ledger); !fresh)
            return notSigned(fresh.error());
        auto sealed = sealAll(ledger, drafts, &key);
        if (!sealed)
            return tl::unexpected(sealed.error());
        const auto appended = m_store.append(sealed->entries, sealed->seen);
        if (appended) {
            // What is written is written: trouble with taking it in is told by the next refresh.
            (void)m_folds.took(ledger, sealed->entries);
            m_unseen.add(changesBy(ledger, sealed->entries));
            return std::move(sealed->entries);
        }
        if (appended.error().code != core::ErrorCode::HeadMoved)
            return notSigned(appended.error());
    }
    return notSigned(core::ErrorCode::HeadMoved, tr("Others kept adding entries to this ledger. Nothing was signed. Try again."));
}

Signed Session::sign(const core::LedgerId &ledger, const std::vector<core::Draft> &drafts, const KeySource &key)
{
    if (const auto fault = whyNotNow(drafts))
        return notSigned(*fault);
    if (const auto fresh = catchUp(ledger); !fresh)
        return notSigned(fresh.error());
    if (auto asked = sealAll(ledger, drafts, nullptr); !asked)
        return tl::unexpected(asked.error());
    const auto unlocked = key();
    if (!unlocked)
        return notSigned(unlocked.error());
    return sealAndAppend(ledger, drafts, *unlocked);
}

Signed Session::sign(const core::LedgerId &ledger, const std::vector<core::Draft> &drafts, const core::SigningKey &key)
{
    if (const auto fault = whyNotNow(drafts))
        return notSigned(*fault);
    return sealAndAppend(ledger, drafts, key);
}

Signed Session::sign(const core::LedgerId &ledger, const std::vector<core::Draft> &drafts, const Signer &signer)
{
    const auto isByAnother = [&](const core::Draft &draft) { return draft.author != signer.person; };
    if (std::any_of(drafts.begin(), drafts.end(), isByAnother))
        return notSigned(core::ErrorCode::BadInput, tr("Nobody can sign for another."));
    auto entries = sign(ledger, drafts, [&] { return unlock(signer); });
    if (entries)
        m_identity.signedBy(signer.person);
    return entries;
}

} // namespace session
