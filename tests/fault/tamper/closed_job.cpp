// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/tamper/closed_job.hpp"

#include <chrono>

#include "app/package/package_writer.hpp"
#include "app/session/people.hpp"
#include "app/session/session.hpp"
#include "resources/resources.hpp"

namespace battery {

namespace {

using namespace Qt::StringLiterals;
using core::json::Object;

constexpr qint64 begin = 1'772'438'400'000; // 2026-03-02T08:00:00Z

/// One pixel, so that the first bytes are those of the format (PNG 1.2, section 3.1).
const QByteArray photo = QByteArray::fromBase64("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");
const QByteArray paper = "%PDF-1.4\n% a certificate, as a scanner left it\n";

class Teller {
public:
    Teller(ClosedJob &told, db::Store &store) : m_told(told), m_store(store), m_session(store, [this] { return m_now; }, core::leastCost) {}

    core::Result<void> tell()
    {
        for (auto part : {&Teller::people, &Teller::beginBoth, &Teller::work, &Teller::close}) {
            (this->*part)();
            if (m_trouble)
                return core::failure(*m_trouble);
        }
        return {};
    }

private:
    void say(const core::LedgerId &ledger, const char *author, const QString &kind, const std::optional<QString> &subject, Object body)
    {
        m_now = core::Instant::fromMilliseconds(m_now.milliseconds() + 60'000);
        const core::PersonId by = person(author);
        const auto said = m_session.sign(ledger, {core::Draft{by, m_now, kind, subject, std::move(body)}}, m_told.keys.at(by));
        if (!said && !m_trouble)
            m_trouble = core::Error{said.error().error.code, kind + u": "_s + said.error().error.message, {}};
    }
    void keep(const char *id, int number)
    {
        const core::SigningKey key = keyOf(number);
        m_told.keys.insert_or_assign(person(id), key);
        m_told.byFingerprint.insert_or_assign(key.publicKey().fingerprint(), key);
        const auto wrapped = core::wrap(key, person(id), QString::fromLatin1(id) + u"-secret"_s, station(), core::leastCost);
        if (const auto kept = m_store.credentials().put(person(id), key.publicKey().fingerprint(), *wrapped, db::Credentials::Others::Keep); !kept)
            m_trouble = kept.error();
    }
    void grant(const char *id, core::Authority authority)
    {
        const session::Grant one{.id = session::nextAuthorisation(m_session.reg()), .person = person(id), .authority = authority, .kinds = {}, .aircraftTypes = {},
                                 .from = QDate(2026, 1, 1), .until = {}, .reference = u"Letter"_s};
        const core::Draft draft = session::grantDraft(person("root"), one);
        say(registerLedger(), "root", draft.kind, draft.subject, draft.body);
    }

    void people()
    {
        int number = 1;
        keep("root", number);
        say(registerLedger(), "root", u"register.founded"_s, u"root"_s,
            {{u"organisation"_s, u"Hangar"_s}, {u"name"_s, u"Root"_s}, {u"public_key"_s, m_told.keys.at(person("root")).publicKey().hex()}});
        for (const char *id : {"lead", "tech", "insp", "insq", "idle"}) {
            keep(id, ++number);
            say(registerLedger(), "root", u"person.enrolled"_s, QString::fromLatin1(id),
                {{u"name"_s, QString::fromLatin1(id).toUpper()}, {u"public_key"_s, m_told.keys.at(person(id)).publicKey().hex()}, {u"identity"_s, u"Seen"_s}});
        }
        grant("lead", core::Authority::Lead);
        grant("lead", core::Authority::Work);
        grant("tech", core::Authority::Work);
        grant("insp", core::Authority::Inspect);
        grant("insp", core::Authority::Release);
        grant("insq", core::Authority::Inspect);
    }

    void open(const core::LedgerId &ledger, const QString &workOrder, const QString &title, const std::vector<QString> &items)
    {
        say(ledger, "lead", u"job.opened"_s, std::nullopt,
            {{u"title"_s, title}, {u"work_order"_s, workOrder}, {u"aircraft"_s, u"No. 07"_s}, {u"aircraft_type"_s, u"Ostrel 40F"_s}, {u"maintenance_data"_s, u"Manual"_s},
             {u"revision"_s, u"14"_s}, {u"unit"_s, u"Engine"_s}, {u"outgoing_serial"_s, u"A"_s}, {u"incoming_serial"_s, u"B"_s}, {u"lead"_s, u"lead"_s},
             {u"crew"_s, core::json::arrayOf({u"lead"_s, u"tech"_s})}, {u"zones"_s, core::json::Array{core::json::Value(Object{{u"name"_s, u"Left"_s}})}}});
        for (const QString &id : items)
            say(ledger, "lead", u"interface.listed"_s, id, {{u"name"_s, u"Clamp"_s}, {u"kind"_s, u"clamp"_s}, {u"zone"_s, u"Left"_s}});
    }
    void beginBoth()
    {
        open(jobLedger(), u"WO-1"_s, u"Engine change"_s, {u"E1"_s, u"E2"_s, u"E3"_s});
        open(shopLedger(), u"WO-2"_s, u"Build-up"_s, {u"S1"_s});
        say(jobLedger(), "lead", u"job.linked"_s, std::nullopt, {{u"ledger"_s, shopLedger().text()}, {u"work_order"_s, u"WO-2"_s}});
        say(shopLedger(), "lead", u"job.linked"_s, std::nullopt, {{u"ledger"_s, jobLedger().text()}, {u"work_order"_s, u"WO-1"_s}});
    }

    void takeOff(const core::LedgerId &job, const char *who, const QString &id, const QString &tag)
    {
        say(job, who, u"interface.disconnected"_s, id, {{u"tag"_s, tag}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}});
    }
    void putBack(const core::LedgerId &job, const char *who, const QString &id, const QString &tag)
    {
        say(job, who, u"interface.reconnected"_s, id, {{u"tag_recovered"_s, tag}, {u"blanks_removed"_s, 0}});
    }
    void attach(const QString &id, const QByteArray &bytes, const QString &type, const QString &moment)
    {
        const auto digest = m_store.attachments().put(bytes, type);
        say(jobLedger(), "tech", u"photo.attached"_s, id, {{u"sha256"_s, digest->hex()}, {u"media_type"_s, type}, {u"caption"_s, u"As it was"_s}, {u"moment"_s, moment}});
    }
    void work()
    {
        takeOff(jobLedger(), "tech", u"E1"_s, u"1"_s);
        attach(u"E1"_s, photo, u"image/png"_s, u"before"_s);
        takeOff(shopLedger(), "lead", u"S1"_s, u"1"_s);
        takeOff(jobLedger(), "lead", u"E2"_s, u"2"_s);
        // From here on the technician signs with another key.
        const core::SigningKey second = keyOf(20);
        say(registerLedger(), "root", u"key.replaced"_s, u"tech"_s, {{u"public_key"_s, second.publicKey().hex()}, {u"reason"_s, u"PIN forgotten"_s}});
        keep("tech", 20);
        putBack(jobLedger(), "tech", u"E1"_s, u"1"_s);
        attach(u"E1"_s, paper, u"application/pdf"_s, u"after"_s);
        putBack(jobLedger(), "lead", u"E2"_s, u"2"_s);
        putBack(shopLedger(), "lead", u"S1"_s, u"1"_s);
    }
    void close()
    {
        const Object seen{{u"seen"_s, u"paint whole"_s}};
        say(jobLedger(), "insp", u"inspection.accepted"_s, u"E1"_s, {});
        say(jobLedger(), "insq", u"inspection.accepted"_s, u"E2"_s, {});
        say(jobLedger(), "insp", u"interface.undisturbed"_s, u"E3"_s, seen);
        say(shopLedger(), "insp", u"inspection.accepted"_s, u"S1"_s, {});
        for (const core::LedgerId &ledger : {jobLedger(), shopLedger()})
            say(ledger, "insp", u"job.closed"_s, std::nullopt, {{u"statement"_s, u"Complete"_s}});
    }

    ClosedJob &m_told;
    db::Store &m_store;
    core::Instant m_now = core::Instant::fromMilliseconds(begin);
    session::Session m_session;
    std::optional<core::Error> m_trouble;
};

} // namespace

core::PersonId person(const char *id) { return *core::PersonId::parse(QString::fromLatin1(id)); }
core::LedgerId registerLedger() { return *core::LedgerId::parse(u"00000000-0000-4000-8000-000000000001"); }
core::LedgerId jobLedger() { return *core::LedgerId::parse(u"00000000-0000-4000-8000-000000000002"); }
core::LedgerId shopLedger() { return *core::LedgerId::parse(u"00000000-0000-4000-8000-000000000003"); }

const core::SecondKey &station()
{
    static const core::SecondKey made = *core::SecondKey::ofStation(QByteArray(core::SecondKey::size, 's'));
    return made;
}

core::SigningKey keyOf(int number)
{
    auto key = core::SigningKey::fromSeed(QByteArray(32, static_cast<char>(number)));
    if (!key)
        qFatal("no key");
    return *std::move(key);
}

core::Result<std::unique_ptr<ClosedJob>> makeClosedJob()
{
    const auto ready = core::readyCryptography();
    auto kinds = resources::loadKinds();
    if (!ready || !kinds)
        return core::failure(!ready ? ready.error() : kinds.error());
    auto told = std::make_unique<ClosedJob>(ClosedJob{{}, *std::move(kinds), {}, {}});
    told->store = told->folder.filePath(u"job.remate"_s);
    told->package = told->folder.filePath(u"job.zip"_s);
    auto store = db::Store::create(told->store);
    if (!store)
        return core::failure(store.error());
    if (const auto done = Teller(*told, **store).tell(); !done)
        return core::failure(done.error());
    const auto packed = package::writePackage(**store, jobLedger(), told->kinds, told->package);
    if (!packed)
        return core::failure(packed.error());
    if (const auto closed = (*store)->close(); !closed)
        return core::failure(closed.error());
    return told;
}

} // namespace battery
