// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/desktop/bench.hpp"

#include <QFile>

#include "app/session/people.hpp"
#include "resources/resources.hpp"

using namespace Qt::StringLiterals;

namespace {

core::PersonId person(const QString &id) { return *core::PersonId::parse(id); }

core::Kinds kindsOrNone()
{
    auto kinds = resources::loadKinds();
    Q_ASSERT(kinds);
    return *std::move(kinds);
}

QString whyNot(const session::NotSigned &no)
{
    QStringList lines{no.error.message};
    for (const auto &[index, refusals] : no.refusals) {
        for (const core::Refusal &refusal : refusals)
            lines << refusal.rule + u": "_s + refusal.sentence;
    }
    return lines.join(u'\n');
}

} // namespace

Bench::Bench() : m_kinds(kindsOrNone()), m_now(std::make_shared<qint64>(core::Instant::parse(u"2026-03-02T08:00:00Z")->milliseconds()))
{
    if (const auto ready = core::readyCryptography(); !ready)
        m_trouble = ready.error().message;
    else
        furnish();
}

session::Clock Bench::clock() const
{
    return [now = m_now] { return core::Instant::fromMilliseconds(*now += 1); };
}

QString Bench::file(const QString &name, const QByteArray &bytes) const
{
    QFile file(m_folder.filePath(name));
    if (file.open(QIODevice::WriteOnly))
        file.write(bytes);
    return file.fileName();
}

std::unique_ptr<session::Session> Bench::another()
{
    auto store = db::Store::open(path(), db::Access::ReadWrite);
    if (!store)
        return nullptr;
    m_stores.push_back(*std::move(store));
    auto session = std::make_unique<session::Session>(*m_stores.back(), clock(), core::leastCost);
    return session->refresh() ? std::move(session) : nullptr;
}

QString Bench::say(session::Session &session, const core::LedgerId &ledger, const QString &who, const QString &kind,
                   const std::optional<QString> &subject, core::json::Object body)
{
    const auto done = session.sign(ledger, {{person(who), session.now(), kind, subject, std::move(body)}}, {person(who), pinOf(who)});
    return done ? QString() : whyNot(done.error());
}

void Bench::furnish()
{
    auto made = db::Store::create(path());
    if (!made) {
        m_trouble = made.error().message;
        return;
    }
    session::Session session(**made, clock(), core::leastCost);
    const auto must = [this](const session::Signed &done) {
        if (!done && m_trouble.isEmpty())
            m_trouble = whyNot(done.error());
    };
    if (const auto read = session.refresh(); !read)
        m_trouble = read.error().message;
    must(session::found(session, u"Northfield Hangar"_s, {person(u"ana"_s), u"Ana Sol"_s, pinOf(u"ana"_s), {}}));
    const session::Signer ana{person(u"ana"_s), pinOf(u"ana"_s)};
    const std::pair<const char *, const char *> others[] = {{"ben", "Ben Orr"}, {"cho", "Cho Lim"}, {"dara", "Dara Voss"}};
    for (const auto &[id, name] : others)
        must(session::enrol(session, {person(QString::fromLatin1(id)), QString::fromLatin1(name), pinOf(QString::fromLatin1(id)), u"badge"_s}, ana));
    const std::pair<const char *, core::Authority> grants[] = {{"ana", core::Authority::Work},    {"ana", core::Authority::Lead},
                                                               {"ben", core::Authority::Work},    {"ben", core::Authority::Lead},
                                                               {"cho", core::Authority::Inspect}, {"dara", core::Authority::Release}};
    for (const auto &[id, authority] : grants)
        must(session.sign(*session.reg().ledger, {session::grantDraft(ana.person, {session::nextAuthorisation(session.reg()), person(QString::fromLatin1(id)), authority, {}, {}, QDate(2026, 1, 1), {}, u"QM 4"_s})}, ana));
    const auto tool = [&](const char *id, const char *name, const char *min, const char *max, QStringView unit) {
        const auto toolId = *core::ToolId::parse(QString::fromLatin1(id));
        core::Tool registered{toolId, QString::fromLatin1(name), core::Quantity::parse(QString::fromLatin1(min), unit), core::Quantity::parse(QString::fromLatin1(max), unit), {}, std::nullopt};
        registered.graduation = core::Quantity::parse(u"0.5", unit);
        registered.deviation = core::Decimal::parse(u"4");
        if (unit == u"N·m") {
            registered.length = core::Quantity::parse(u"320", u"mm");
            registered.torqueType = core::TorqueToolType::Indicating;
        }
        must(session.sign(*session.reg().ledger, {session::toolDraft(ana.person, registered)}, ana));
        must(session.sign(*session.reg().ledger, {session::calibrationDraft(ana.person, toolId, {QDate(2026, 1, 10), QDate(2026, 12, 31), u"C-100"_s, std::nullopt})}, ana));
    };
    tool("TW1", "Torque wrench", "5", "100", u"N·m");
    tool("BM1", "Bonding meter", "0.1", "1000", u"mΩ");
    if (const auto closed = (*made)->close(); !closed && m_trouble.isEmpty())
        m_trouble = closed.error().message;
}

std::optional<core::LedgerId> Bench::openJob(session::Session &session, const core::json::Object &more)
{
    const core::json::Array zones{core::json::Object{{u"name"_s, u"Left"_s}, {u"technician"_s, u"ana"_s}}, core::json::Object{{u"name"_s, u"Right"_s}}};
    core::json::Object body{{u"title"_s, u"Engine change, left"_s}, {u"work_order"_s, u"WO-1"_s}, {u"aircraft"_s, u"Freighter 07"_s},
                            {u"aircraft_type"_s, u"Ostrel 40F"_s}, {u"maintenance_data"_s, u"MM 71-00"_s}, {u"revision"_s, u"14"_s},
                            {u"unit"_s, u"Engine no. 1"_s}, {u"outgoing_serial"_s, u"K-1"_s}, {u"incoming_serial"_s, u"K-2"_s},
                            {u"lead"_s, u"ana"_s}, {u"crew"_s, core::json::arrayOf({u"ana"_s, u"ben"_s})}, {u"zones"_s, zones}};
    for (const auto &[name, value] : more.members())
        body.set(name, value);
    const auto done = session.newJob({person(u"ana"_s), session.now(), u"job.opened"_s, {}, std::move(body)}, {person(u"ana"_s), pinOf(u"ana"_s)});
    if (done)
        return done->front().said.ledger;
    m_trouble = whyNot(done.error());
    return std::nullopt;
}

QByteArray benchList()
{
    return "id,name,kind,zone,requirements,torque_fasteners,torque_min,torque_max,torque_unit,bonding_max,bonding_unit,seal_part,safetying,aircraft_half,unit_half\r\n"
           "D1,\"Bleed duct, forward\",duct,Left,torque,2,20,25,N·m,,,,,,\r\n"
           "C1,Harness connector,harness_connector,Left,mate,,,,,,,,,P101,J101\r\n"
           "B1,Bonding lead,bonding_lead,Right,bonding,,,,,2.5,mΩ,,,,\r\n"
           "F1,Fuel feed line,fuel_line,Right,seal|safetying,,,,,,,S-77,lockwire,,\r\n";
}
